import polylabel from 'polylabel'
import type { Millimetre } from '../units.ts'
import type { PlanePoint } from './cut-frame.ts'

/** Where a circle has most room in a window, and how much. */
export type Roomiest = PlanePoint & { readonly room: Millimetre }

/** Wall left between the drilled hole and the finished contour. Common practice, no source. */
export const ENTRY_WALL: Millimetre = 0.2
/** The hole is larger than the cutter by at least this much. Common practice, no source: 2.1 to 2.3 for a 2 mm cutter. */
export const ENTRY_CLEARANCE: Millimetre = 0.1

const SEARCH: Millimetre = 0.01

/**
 * The point of an outline farthest from it, to 0.01 mm of the room there. Windows on the left (`side` -1) are looked for in the mirror, so
 * that the holes of a pair are mirror images to the last digit.
 */
export function roomiest(outline: readonly PlanePoint[], side: -1 | 0 | 1): Roomiest {
  const mirror = side < 0 ? -1 : 1
  const [l, b] = polylabel([fromLowest(outline, mirror)], SEARCH)
  const room = Math.min(...outline.map((from, i) => distanceToChord({ l: mirror * l, b }, from, outline, i)))
  return { l: mirror * l, b, room }
}

/** The ring counter-clockwise from its lowest point, rounded, so that equal outlines are searched in equal steps. */
function fromLowest(outline: readonly PlanePoint[], mirror: 1 | -1): [number, number][] {
  const rounded = (value: number): number => Math.round(value * 1e7) / 1e7
  const ring = outline.map(({ l, b }): [number, number] => [rounded(mirror * l), rounded(b)])
  if (mirror < 0) ring.reverse()
  const lowest = ring.reduce((best, at, i) => (isLower(at, ring[best] ?? at) ? i : best), 0)
  return [...ring.slice(lowest), ...ring.slice(0, lowest)]
}

const isLower = (a: readonly [number, number], b: readonly [number, number]): boolean =>
  a[1] < b[1] || (a[1] === b[1] && a[0] < b[0])

function distanceToChord(at: PlanePoint, from: PlanePoint, outline: readonly PlanePoint[], index: number): Millimetre {
  const to = outline[(index + 1) % outline.length] ?? from
  const [dl, db] = [to.l - from.l, to.b - from.b]
  const length = dl ** 2 + db ** 2
  const along = length === 0 ? 0 : ((at.l - from.l) * dl + (at.b - from.b) * db) / length
  const t = Math.min(1, Math.max(0, along))
  return Math.hypot(at.l - from.l - t * dl, at.b - from.b - t * db)
}
