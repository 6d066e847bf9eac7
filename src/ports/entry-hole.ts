import polylabel from 'polylabel'
import type { Millimetre } from '../units.ts'
import type { PlanePoint } from './cut-frame.ts'
import { distanceTo, type Flat } from './path/closed-line.ts'

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
  const flat = outline.map((point): Flat => ({ x: point.l, y: point.b }))
  return { l: mirror * l, b, room: distanceTo(flat, { x: mirror * l, y: b }) }
}

/** Two sides that differ by less are as near. */
const ALIKE: Millimetre = 0.001
/** A hole is placed to a hundredth. */
const PLACES = 100

/**
 * Where the hole is drilled, in machine X and Y about the rotary's centre line: on the side of the window that lies nearer to
 * it, where the outside slopes least, with a circle's room to the wall. The slot round the window then begins beside it, and
 * what lies inside stays in one piece. A window with less room has it where there is most.
 */
export function entryPlace(
  outline: readonly Flat[],
  middle: Flat & { readonly room: Millimetre },
  radius: Millimetre,
  side: -1 | 0 | 1,
): Flat & { readonly room: Millimetre } {
  const sides = sidesWithRoom(outline, middle, radius + ENTRY_WALL)
  // Of two as near, by the side that the port is on: a pair stays a pair.
  const nearness = (y: Millimetre): number => Math.abs(y) - (side < 0 ? -1 : 1) * Math.sign(y) * ALIKE
  const nearest = sides.toSorted((a, b) => nearness(a) - nearness(b))[0]
  if (nearest === undefined) return middle
  // Away from zero alike on both sides, so that the holes of a pair stay mirror images.
  const at = { x: middle.x, y: (Math.sign(nearest) * Math.round(Math.abs(nearest) * PLACES)) / PLACES + 0 }
  return { ...at, room: distanceTo(outline, at) }
}

/** Halvings: from the size of a window to a millionth of a millimetre. */
const HALVINGS = 26

/** On the line of one X through the middle, the last Y either way that has room to the outline; none where the middle has not. */
function sidesWithRoom(outline: readonly Flat[], middle: Flat, room: Millimetre): readonly Millimetre[] {
  const hasRoom = (y: Millimetre): boolean => distanceTo(outline, { x: middle.x, y }) >= room
  if (!hasRoom(middle.y)) return []
  const ys = outline.map(({ y }) => y)
  return [Math.min(...ys), Math.max(...ys)].map(edge => {
    let [within, beyond] = [middle.y, edge]
    for (let i = 0; i < HALVINGS; i++) {
      const half = (within + beyond) / 2
      if (hasRoom(half)) within = half
      else beyond = half
    }
    return Number(within.toFixed(4))
  })
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
