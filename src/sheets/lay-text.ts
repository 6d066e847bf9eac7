import type { Point } from '../pictures/picture.ts'
import type { Item, Tag } from './display-list.ts'
import { type Line, RING_WIDTH } from './set-lines.ts'
import type { Slice } from './slice.ts'
import { BASELINE, LINE_HEIGHT, TYPE } from './theme.ts'

const ORIGIN = { x: 0, y: 0 }

export type Align = 'left' | 'right' | 'middle'

/** A line with type of the largest size takes two lines of the grid and stands on the lower one. */
const heightOf = (line: Line): Point =>
  line.pieces.some(({ style }) => style.size >= TYPE.page) ? 2 * LINE_HEIGHT : LINE_HEIGHT

/** A line of text in a room that begins at `at`, in most places the origin. */
export function lineItems({
  line,
  width,
  align,
  tag,
  at = ORIGIN,
}: {
  readonly line: Line
  readonly width: Point
  readonly align: Align
  readonly tag: Tag | undefined
  readonly at?: { readonly x: Point; readonly y: Point } | undefined
}): readonly Item[] {
  const baseline = at.y + heightOf(line) - LINE_HEIGHT + BASELINE
  const left = at.x + (align === 'left' ? 0 : (width - line.width) / (align === 'right' ? 1 : 2))
  const tagged = tag && { tag }
  return line.pieces.map(({ text, style: { size, bold, ring }, x }): Item => {
    if (!ring) return { kind: 'text', x: left + x, y: baseline, text, size, bold, ...tagged }
    const radius = RING_WIDTH / 2 - 0.6
    return { kind: 'ring', x: left + x + RING_WIDTH / 2, y: at.y + LINE_HEIGHT / 2, radius, text, size, ...tagged }
  })
}

/** A paragraph, a slice a line: its first two lines stay together and so do its last two. */
export function paragraph(
  lines: readonly Line[],
  width: Point,
  tag: Tag,
  { align = 'left', indent = 0 }: { readonly align?: Align; readonly indent?: Point } = {},
): readonly Slice[] {
  return lines.map((line, index) => ({
    height: heightOf(line),
    gap: 0,
    items: lineItems({ line, width: width - indent, align, tag, at: { x: indent, y: 0 } }),
    keep: lines.length > 1 && (index === 0 || index === lines.length - 2),
  }))
}
