import type { Point } from '../pictures/picture.ts'

/** What a column asks for: the width of its widest word, and of its longest line. */
export type ColumnNeed = {
  readonly least: Point
  readonly most: Point
  /** Given by the template. */
  readonly fixed?: Point
  /** Room to write: takes what is left over. */
  readonly writes: boolean
}

/**
 * Widths of a table's columns, `gap` between them. Where all lines fit, columns that are written in share the rest, else
 * all but the narrowest do; where they do not fit, what is beyond the widest words is shared in proportion.
 */
export function columnWidths(
  needs: readonly ColumnNeed[],
  width: Point,
  gap: Point,
  stretch: boolean,
): readonly Point[] {
  const room = width - gap * (needs.length - 1)
  const least = needs.map(({ least, fixed }) => fixed ?? least)
  const most = needs.map(({ most, fixed }) => fixed ?? most)
  const sum = (widths: readonly Point[]) => widths.reduce((total, each) => total + each, 0)
  const spare = room - sum(most)
  if (spare >= 0) {
    if (!stretch) return most
    const takes = sharers(needs)
    return most.map((each, index) => (takes.includes(index) ? each + spare / takes.length : each))
  }
  const asked = sum(most) - sum(least)
  const free = room - sum(least)
  if (free <= 0) return tightened(needs, least, -free)
  return least.map((each, index) => each + (((most[index] ?? each) - each) * free) / asked)
}

/** What a template gives a column beyond its widest word goes before a word is cut: a limit broken in two misleads. */
function tightened(needs: readonly ColumnNeed[], widths: readonly Point[], short: Point): readonly Point[] {
  const room = needs.map(({ least }, index) => (widths[index] ?? least) - least)
  const given = room.reduce((total, each) => total + each, 0)
  if (given > 0 && given >= short) return widths.map((each, index) => each - ((room[index] ?? 0) * short) / given)
  const words = needs.reduce((total, { least }) => total + least, 0)
  // Columns without a word have nothing to give; more of them than the sheet has room for have no width.
  const share = words > 0 ? Math.max(0, words + given - short) / words : 0
  return needs.map(({ least }) => least * share)
}

function sharers(needs: readonly ColumnNeed[]): readonly number[] {
  const free = needs.flatMap(({ fixed }, index) => (fixed === undefined ? [index] : []))
  const writing = free.filter(index => needs[index]?.writes)
  if (writing.length > 0) return writing
  return free.length > 0 ? free : needs.map((_, index) => index)
}
