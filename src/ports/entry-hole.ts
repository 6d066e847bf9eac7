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
 * Where the hole is drilled, in machine X and Y about the rotary's centre line: as near to it as there is room, where the
 * outside slopes least, and out of the middle, so that the slot round the window begins beside it and what lies inside stays in
 * one piece. A window that reaches over the centre line has it there, by the edge that times nothing (`away` from the timing
 * edge, along X); another by its nearer side. A window with less room has it where there is most.
 */
export function entryPlace(
  outline: readonly Flat[],
  middle: Flat & { readonly room: Millimetre },
  radius: Millimetre,
  { side, away }: { readonly side: -1 | 0 | 1; readonly away: -1 | 1 },
): Flat & { readonly room: Millimetre } {
  const hasRoom = (at: Flat): boolean => distanceTo(outline, at) >= radius + ENTRY_WALL
  const on = { x: middle.x, y: 0 }
  if (isInside(outline, on) && hasRoom(on)) {
    const xs = outline.map(({ x }) => x)
    const edge = away > 0 ? Math.max(...xs) : Math.min(...xs)
    const x = lastWithRoom(x => hasRoom({ x, y: 0 }), on.x, edge)
    const at = { x: away > 0 ? Math.floor(x * PLACES) / PLACES : Math.ceil(x * PLACES) / PLACES, y: 0 }
    return { ...at, room: distanceTo(outline, at) }
  }
  if (!hasRoom(middle)) return middle
  const ys = outline.map(({ y }) => y)
  const sides = [Math.min(...ys), Math.max(...ys)].map(edge =>
    Number(lastWithRoom(y => hasRoom({ x: middle.x, y }), middle.y, edge).toFixed(4)),
  )
  // Of two as near, by the side that the port is on: a pair stays a pair.
  const nearness = (y: Millimetre): number => Math.abs(y) - (side < 0 ? -1 : 1) * Math.sign(y) * ALIKE
  const nearest = sides.toSorted((a, b) => nearness(a) - nearness(b))[0] ?? middle.y
  // Away from zero alike on both sides, so that the holes of a pair stay mirror images.
  const at = { x: middle.x, y: (Math.sign(nearest) * Math.round(Math.abs(nearest) * PLACES)) / PLACES + 0 }
  return { ...at, room: distanceTo(outline, at) }
}

/** Halvings: from the size of a window to a millionth of a millimetre. */
const HALVINGS = 26

/** From a place that has room on toward one that has none, the last that has. */
function lastWithRoom(hasRoom: (at: Millimetre) => boolean, from: Millimetre, to: Millimetre): Millimetre {
  let [within, beyond] = [from, to]
  for (let i = 0; i < HALVINGS; i++) {
    const half = (within + beyond) / 2
    if (hasRoom(half)) within = half
    else beyond = half
  }
  return within
}

/** Whether a ray from the point along +Y meets the outline an odd number of times. */
function isInside(outline: readonly Flat[], { x, y }: Flat): boolean {
  const meets = outline.filter((a, i) => {
    const b = outline[(i + 1) % outline.length] ?? a
    return a.x > x !== b.x > x && a.y + ((x - a.x) / (b.x - a.x)) * (b.y - a.y) > y
  })
  return meets.length % 2 === 1
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
