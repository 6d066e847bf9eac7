import polylabel from 'polylabel'
import type { Millimetre } from '../units.ts'
import type { PlanePoint } from './cut-frame.ts'

/** Where a circle has most room in a window, and how much. */
export type Roomiest = PlanePoint & { readonly room: Millimetre }

/** Wall left between the drilled hole and the finished contour. Common practice, no source. */
export const ENTRY_WALL: Millimetre = 0.2
/** The hole is larger than the cutter by at least this much. Common practice, no source: 2.1 to 2.3 for a 2 mm cutter. */
export const ENTRY_CLEARANCE: Millimetre = 0.1

/**
 * The point of an outline farthest from it, to 0.001 mm. Windows on the left (`side` -1) are looked for in the mirror, so
 * that the holes of a pair are mirror images to the last digit.
 */
export function roomiest(outline: readonly PlanePoint[], side: -1 | 0 | 1): Roomiest {
  const mirror = side < 0 ? -1 : 1
  const ring = outline.map(({ l, b }): [number, number] => [mirror * l, b])
  const [l, b] = polylabel([mirror < 0 ? ring.toReversed() : ring], 0.001)
  const room = Math.min(...outline.map((from, i) => distanceToChord({ l: mirror * l, b }, from, outline, i)))
  return { l: mirror * l, b, room }
}

function distanceToChord(at: PlanePoint, from: PlanePoint, outline: readonly PlanePoint[], index: number): Millimetre {
  const to = outline[(index + 1) % outline.length] ?? from
  const [dl, db] = [to.l - from.l, to.b - from.b]
  const length = dl ** 2 + db ** 2
  const along = length === 0 ? 0 : ((at.l - from.l) * dl + (at.b - from.b) * db) / length
  const t = Math.min(1, Math.max(0, along))
  return Math.hypot(at.l - from.l - t * dl, at.b - from.b - t * db)
}
