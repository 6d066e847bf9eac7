import type { Millimetre } from '../../units.ts'
import type { PortWindow } from '../port.ts'
import {
  closed,
  entryOf,
  FINISH_TOLERANCE,
  type WallLine,
  type WallPlace,
  wallLoops,
  withNormals,
} from './along-wall.ts'
import { apart, distanceTo, type Flat, farFrom, type Loop } from './closed-line.ts'
import { coarse, LONGEST } from './floors.ts'
import { inside, respaced, startingBeside } from './offset-loops.ts'
import { remembered } from './remembered.ts'
import type { TimingSide } from './tool-path.ts'

/** What a larger cutter has done: its diameter, and the radius that it left in the corners. */
export type Rounded = { readonly after: Millimetre; readonly rounded: Millimetre }

/** Metal left by less is none: a tenth of the least tolerance of an edge. Common practice, no source. */
const LEFT: Millimetre = 0.003
/** The small cutter runs on along the wall that the large one finished, so that the two blend. Common practice, no source. */
const BLEND: Millimetre = 0.4
/** Places along the wall stand no farther apart, so that a stretch ends where it should. */
const FINE: Millimetre = 0.2
/** A place on a straight stretch makes the way longer by less. */
const STRAIGHT: Millimetre = 1e-6
/** Outward normals of the top or bottom edge point along X by at least this. */
const ALONG_X = 0.7

/** Thickest metal that is left in a corner. */
export const mostLeft = (window: PortWindow, { after, rounded }: Rounded): Millimetre =>
  remembered(window, `most left by ${after} ${rounded}`, () => {
    const done = wallLoops(window, after, rounded)
    return Math.max(0, ...coarse(window).map(at => offFrom(done, at) - after / 2))
  })

/**
 * Where a cutter is to go along the wall, or a stock off it, for what a larger one has left in the corners: from before each
 * to past it. The edge that times the port is passed from one corner to the next, without a mark on it.
 */
export function cornerLines(
  window: PortWindow,
  cutter: Millimetre,
  { after, rounded, stock = 0, timing }: Rounded & { readonly stock?: Millimetre; readonly timing?: TimingSide },
): readonly WallLine[] {
  return remembered(window, `corners ${cutter} ${after} ${rounded} ${stock} ${timing}`, () => {
    const done = doneBy(window, { after, rounded })
    const loops = stock === 0 ? wallLoops(window, cutter) : inside(coarse(window), cutter / 2 + stock)
    return loops.flatMap(loop => {
      const line = startingBeside(withNormals(respaced(loop, FINISH_TOLERANCE, FINE)), entryOf(window))
      const isBeyond = farFrom(done, after / 2 + LEFT)
      const isLeft = line.map(({ x, y, normal }) =>
        isBeyond({ x: x + (cutter / 2) * normal.x, y: y + (cutter / 2) * normal.y }),
      )
      return stretches(line, stock === 0 ? blended(line, isLeft) : isLeft, timing).map(thinned)
    })
  })
}

/** Where the middle of the larger cutter went, the same for every stock. */
const doneBy = (window: PortWindow, { after, rounded }: Rounded): readonly Loop[] =>
  remembered(window, `done by ${after} ${rounded}`, () =>
    wallLoops(window, after, rounded).map(loop => respaced(loop, FINISH_TOLERANCE, Number.POSITIVE_INFINITY)),
  )

const offFrom = (loops: readonly Loop[], at: Flat): Millimetre => Math.min(...loops.map(loop => distanceTo(loop, at)))

/** The same with the places before and after by as much as the cutters blend over. */
function blended(line: WallLine, isLeft: readonly boolean[]): readonly boolean[] {
  const grown = [...isLeft]
  for (const way of [1, -1]) {
    let run = Number.POSITIVE_INFINITY
    for (let turn = 0; turn < 2 * line.length; turn++) {
      const at = (line.length + ((way * turn) % line.length)) % line.length
      const before = (line.length + at - way) % line.length
      const [here, last] = [line[at], line[before]]
      run = isLeft[at] || !here || !last ? 0 : run + apart(here, last)
      if (run <= BLEND) grown[at] = true
    }
  }
  return grown
}

/** Runs of the closed line, in its order; two with only the timing edge between them are one. */
function stretches(line: WallLine, chosen: readonly boolean[], timing?: TimingSide): readonly WallLine[] {
  const count = line.length
  const starts = chosen.flatMap((here, i) => (here && !chosen[(i + count - 1) % count] ? [i] : []))
  if (starts.length === 0) return chosen[0] ? [closed(line)] : []
  const runs = starts.map(start => {
    let length = 0
    while (length < count && chosen[(start + length) % count]) length++
    return { start, length }
  })
  const at = (i: number): WallPlace[] => line.slice(i % count, (i % count) + 1)
  const joined = runs.filter(({ start }, i) => {
    const before = runs[(i + runs.length - 1) % runs.length]
    if (!before) return true
    const gap = (start - before.start - before.length + count) % count
    const middle = line[(before.start + before.length + Math.floor(gap / 2)) % count]
    return !(middle && times(middle, timing))
  })
  if (joined.length === 0) return [closed(line)]
  return joined.map(({ start }, i) => {
    const next = joined[(i + 1) % joined.length]?.start ?? start
    // Of the runs before the next stretch the last: all up to its end, with what lies between.
    const room = (next - start + count) % count || count
    const ends = runs.map(run => ({ off: (run.start - start + count) % count, length: run.length }))
    const length = Math.max(...ends.flatMap(run => (run.off < room ? [run.off + run.length] : [])))
    return Array.from({ length }, (_, step) => at(start + step)).flat()
  })
}

/** Without the places that stand on a straight stretch, as far as it may be long. */
function thinned(line: WallLine): WallLine {
  const kept: WallPlace[] = []
  for (const [i, at] of line.entries()) {
    const [from, next] = [kept.at(-1), line[i + 1]]
    const onTheWay =
      from && next && apart(from, next) < LONGEST && apart(from, at) + apart(at, next) - apart(from, next) < STRAIGHT
    if (!onTheWay) kept.push(at)
  }
  return kept
}

const times = ({ normal }: WallPlace, timing: TimingSide | undefined): boolean =>
  timing !== undefined && (timing === '+X' ? normal.x : -normal.x) > ALONG_X
