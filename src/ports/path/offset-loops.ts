import { EndType, inflatePathsD, JoinType, simplifyPathD } from 'clipper2-ts'
import type { Millimetre } from '../../units.ts'

export type Flat = { readonly x: Millimetre; readonly y: Millimetre }

/** A closed line, counter-clockwise, its first point not repeated. */
export type Loop = readonly Flat[]

/** Decimal places of the polygon library's fixed-point numbers. */
const PLACES = 6
/** Widest gap between a rounded offset and its chords. */
const ARC_TOLERANCE: Millimetre = 0.001

/** The lines that lie a distance inside an outline: none where it is too narrow, several where a neck closes. */
export function inside(outline: Loop, distance: Millimetre): readonly Loop[] {
  if (outline.length < 3) return []
  const shrunk = withEveryEdge(outline, distance)
  if (shrunk) return [shrunk]
  const path = outline.map(({ x, y }) => ({ x, y }))
  return inflatePathsD([path], -distance, JoinType.Round, EndType.Polygon, 2, PLACES, ARC_TOLERANCE).map(loop =>
    loop.map(({ x, y }) => ({ x, y })),
  )
}

/** Whether there is any line a distance inside an outline: of most their width or their middle tells at once. */
export function hasInside(outline: Loop, distance: Millimetre): boolean {
  const xs = outline.map(({ x }) => x)
  const ys = outline.map(({ y }) => y)
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]
  if (Math.min(right - left, high - low) <= 2 * distance) return false
  const middle = { x: (left + right) / 2, y: (low + high) / 2 }
  const roomy = surrounds(outline, middle) && distanceTo(outline, middle) > distance + ARC_TOLERANCE
  return roomy || inside(outline, distance).length > 0
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

/** Corners turn so little that a round and a sharp offset differ by less than a tenth of the arcs' own tolerance. */
const LEAST_COSINE = 1 - ARC_TOLERANCE / 20
const NEAR: Millimetre = 1e-6
const NECK = 4

/**
 * The line a distance inside an outline of which every edge is still there, as most windows have it: each edge is moved
 * square to itself and met with its neighbours. Nothing where an edge has gone, a corner is sharp, or the line comes nearer to
 * the outline than it should: such an outline is the polygon library's.
 */
function withEveryEdge(outline: Loop, distance: Millimetre): Loop | undefined {
  const edges = outline.map((from, i) => {
    const to = outline[(i + 1) % outline.length] ?? from
    const length = Math.hypot(to.x - from.x, to.y - from.y)
    return { from, length, dx: (to.x - from.x) / length, dy: (to.y - from.y) / length }
  })
  const moved: Flat[] = []
  for (const [i, edge] of edges.entries()) {
    const before = edges[(i + edges.length - 1) % edges.length] ?? edge
    const cosine = edge.dx * before.dx + edge.dy * before.dy
    if (!(edge.length > NEAR && cosine > 0)) return undefined
    const hollow = before.dx * edge.dy - before.dy * edge.dx < 0
    if (hollow && Math.sqrt((1 + cosine) / 2) < LEAST_COSINE) return undefined
    // Along the bisector of the two normals, so far that both edges lie at the distance.
    const reach = distance / (1 + cosine)
    moved.push({
      x: edge.from.x - reach * (before.dy + edge.dy),
      y: edge.from.y + reach * (before.dx + edge.dx),
    })
  }
  for (const [i, { dx, dy }] of edges.entries()) {
    const [from, to] = [moved[i], moved[(i + 1) % moved.length]]
    if (!from || !to || (to.x - from.x) * dx + (to.y - from.y) * dy <= 0) return undefined
  }
  // A neck is longer than a few places of a curve that is drawn to a thousandth.
  const asked = moved.filter((_, i) => i % NECK === 0)
  return asked.every(at => distanceTo(outline, at) > distance - ARC_TOLERANCE) ? moved : undefined
}

/** From a place to the nearest of a closed line's stretches. */
export function distanceTo(outline: Loop, at: Flat): Millimetre {
  let nearest = Number.POSITIVE_INFINITY
  let from = outline.at(-1)
  for (const to of outline) {
    if (from) nearest = Math.min(nearest, squareToStretch(at, from, to))
    from = to
  }
  return Math.sqrt(nearest)
}

/** Whether a place is farther than a distance from a closed line: the first stretch that is not tells. */
export function isBeyond(outline: Loop, at: Flat, distance: Millimetre): boolean {
  const square = distance * distance
  let from = outline.at(-1)
  for (const to of outline) {
    if (from && squareToStretch(at, from, to) <= square) return false
    from = to
  }
  return true
}

function squareToStretch(at: Flat, from: Flat, to: Flat): number {
  const dx = to.x - from.x
  const dy = to.y - from.y
  const square = dx * dx + dy * dy
  const along = square === 0 ? 0 : ((at.x - from.x) * dx + (at.y - from.y) * dy) / square
  const t = Math.min(1, Math.max(0, along))
  const x = at.x - from.x - t * dx
  const y = at.y - from.y - t * dy
  return x * x + y * y
}

/**
 * The loop with the points left out that lie within a tolerance of the line between their neighbours, and others put in so
 * that no stretch is longer than a limit: a long straight stretch would leave the curved wall.
 */
export function respaced(loop: Loop, tolerance: Millimetre, longest: Millimetre): Loop {
  const path = loop.map(({ x, y }) => ({ x, y }))
  const kept = simplifyPathD(path, tolerance, true).map(({ x, y }) => ({ x, y }))
  return kept.flatMap((from, i) => {
    const to = kept[(i + 1) % kept.length] ?? from
    const parts = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / longest))
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
    const length = Math.hypot(after.x - before.x, after.y - before.y) || 1
    return { x: (after.y - before.y) / length, y: -(after.x - before.x) / length }
  })
}
