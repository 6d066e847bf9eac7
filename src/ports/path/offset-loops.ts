import { EndType, inflatePathsD, JoinType, simplifyPathD } from 'clipper2-ts'
import type { Millimetre } from '../../units.ts'
import { ARC_TOLERANCE, apart, distanceTo, type Flat, type Loop } from './closed-line.ts'
import { inwardLine } from './inward-line.ts'

/** Decimal places of the polygon library's fixed-point numbers. */
const PLACES = 6
/** The lines that lie a distance inside an outline: none where it is too narrow, several where a neck closes. */
export function inside(outline: Loop, distance: Millimetre): readonly Loop[] {
  if (outline.length < 3 || isNarrow(outline, distance)) return []
  const inward = inwardLine(outline, distance)
  if (inward) return inward
  const path = outline.map(({ x, y }) => ({ x, y }))
  return inflatePathsD([path], -distance, JoinType.Round, EndType.Polygon, 2, PLACES, ARC_TOLERANCE).map(loop =>
    loop.map(({ x, y }) => ({ x, y })),
  )
}

/** Whether there is any line a distance inside an outline: of most their width or their middle tells at once. */
export function hasInside(outline: Loop, distance: Millimetre): boolean {
  if (isNarrow(outline, distance)) return false
  const { left, right, low, high } = extentOf(outline)
  const middle = { x: (left + right) / 2, y: (low + high) / 2 }
  const roomy = surrounds(outline, middle) && distanceTo(outline, middle) > distance + ARC_TOLERANCE
  return roomy || inside(outline, distance).length > 0
}

const isNarrow = (outline: Loop, distance: Millimetre): boolean => {
  const { left, right, low, high } = extentOf(outline)
  return Math.min(right - left, high - low) <= 2 * distance
}

function extentOf(outline: Loop) {
  const xs = outline.map(({ x }) => x)
  const ys = outline.map(({ y }) => y)
  return { left: Math.min(...xs), right: Math.max(...xs), low: Math.min(...ys), high: Math.max(...ys) }
}

/** Whether a place lies within a closed line: a ray from it crosses the line an odd number of times. */
function surrounds(outline: Loop, { x, y }: Flat): boolean {
  const crossed = outline.filter((from, i) => {
    const to = outline[(i + 1) % outline.length] ?? from
    return from.y > y !== to.y > y && x < from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x)
  })
  return crossed.length % 2 === 1
}

/** The lines that lie a distance outside a closed line, its hollows rounded. */
export const outside = (loop: Loop, distance: Millimetre): readonly Loop[] =>
  inflatePathsD(
    [loop.map(({ x, y }) => ({ x, y }))],
    distance,
    JoinType.Round,
    EndType.Polygon,
    2,
    PLACES,
    ARC_TOLERANCE,
  ).map(grown => grown.map(({ x, y }) => ({ x, y })))

/**
 * The loop with the points left out that lie within a tolerance of the line between their neighbours, and others put in so
 * that no stretch is longer than a limit: a long straight stretch would leave the curved wall.
 */
export function respaced(loop: Loop, tolerance: Millimetre, longest: Millimetre): Loop {
  const path = loop.map(({ x, y }) => ({ x, y }))
  const kept = simplifyPathD(path, tolerance, true).map(({ x, y }) => ({ x, y }))
  return kept.flatMap((from, i) => {
    const to = kept[(i + 1) % kept.length] ?? from
    const parts = Math.max(1, Math.ceil(apart(from, to) / longest))
    return Array.from({ length: parts }, (_, part) => ({
      x: from.x + ((to.x - from.x) * part) / parts,
      y: from.y + ((to.y - from.y) * part) / parts,
    }))
  })
}

/**
 * The loop from its point beside a place, the nearer of the two at the same X: on a side of the window, never on the edge
 * that times the port.
 */
export function startingBeside<T extends Flat>(loop: readonly T[], place: Flat): readonly T[] {
  const off = loop.map(({ x, y }) => SIDEWAYS * Math.abs(x - place.x) + Math.abs(y - place.y))
  const first = off.indexOf(Math.min(...off))
  return [...loop.slice(first), ...loop.slice(0, first)]
}

/** How much more a difference in X counts than one in Y. */
const SIDEWAYS = 20

/** Unit vectors outward at each point: across the line between its neighbours. */
export function outwardNormals(loop: Loop): readonly Flat[] {
  return loop.map((at, i) => {
    const before = loop[(i + loop.length - 1) % loop.length] ?? at
    const after = loop[(i + 1) % loop.length] ?? at
    const length = apart(before, after) || 1
    return { x: (after.y - before.y) / length, y: -(after.x - before.x) / length }
  })
}
