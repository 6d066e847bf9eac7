import type { Millimetre } from '../../units.ts'
import { ARC_TOLERANCE, apart, distanceTo, type Flat, type Loop } from './closed-line.ts'

/** The corners that a round hollow is drawn with stand out of the round by no more. */
const STANDS_OUT = ARC_TOLERANCE / 2
/** Edges that turn back on each other meet nowhere near. */
const SHARPEST = 0.02
const NEAR: Millimetre = 1e-6
const NECK = 4

type Direction = { readonly dx: number; readonly dy: number; readonly length: Millimetre }

/** An edge on its way inward, square to itself, between the two that are its neighbours there. */
class Edge {
  readonly from: Flat
  readonly dx: number
  readonly dy: number
  before: Edge = this
  after: Edge = this
  /** Where its line meets those of its neighbours at the outset: as lengths along it, the first also as a place. */
  start: Millimetre = 0
  end: Millimetre
  corner: Flat
  /** How far that corner goes along it for each millimetre inward: tangent of half the turn. */
  drift = 0
  /** How far inward nothing is left of it. */
  gone: Millimetre = Number.POSITIVE_INFINITY

  constructor(from: Flat, { dx, dy, length }: Direction) {
    this.from = from
    this.corner = from
    this.dx = dx
    this.dy = dy
    this.end = length
  }
}

/**
 * The line a distance inside an outline: each edge is moved square to itself and met with its neighbours, hollow corners are
 * rounded, the first edge to be used up is left out, and so on. None where the whole outline is used up. Undefined where the line
 * comes nearer to the outline than it should, as at a neck: such an outline is the polygon library's.
 */
export function inwardLine(outline: Loop, distance: Millimetre): readonly Loop[] | undefined {
  const ring = ringOf(outline, distance)
  if (!ring) return undefined
  const left = usedUp(ring, distance)
  if (!left) return undefined
  if (left.length < 3) return ring.some(({ drift }) => drift < 0) ? undefined : []
  const moved = left.map(({ corner, dx, dy, before }) => {
    // Along the bisector of the two normals, so far that both edges lie at the distance.
    const reach = distance / (1 + dx * before.dx + dy * before.dy)
    return { x: corner.x - reach * (before.dy + dy), y: corner.y + reach * (before.dx + dx) }
  })
  // A neck is longer than a few places of a curve that is drawn to a thousandth.
  const asked = left.length < ring.length ? moved : moved.filter((_, i) => i % NECK === 0)
  return asked.every(at => distanceTo(outline, at) > distance - ARC_TOLERANCE) ? [moved] : undefined
}

function ringOf(outline: Loop, distance: Millimetre): readonly Edge[] | undefined {
  const ways = outline.map((from, i): Direction => {
    const to = outline[(i + 1) % outline.length] ?? from
    const length = apart(from, to)
    return { dx: (to.x - from.x) / length, dy: (to.y - from.y) / length, length }
  })
  const most = 2 * Math.acos(1 / (1 + STANDS_OUT / distance))
  const ring = outline.flatMap((from, i) => {
    const [before, way] = [ways.at(i - 1), ways[i]]
    return before && way ? [...roundTheHollow(from, before, way, most), new Edge(from, way)] : []
  })
  for (const [i, edge] of ring.entries()) {
    const before = ring.at(i - 1) ?? edge
    edge.before = before
    before.after = edge
    if (!turned(edge)) return undefined
  }
  if (ways.some(({ length }) => !(length > NEAR))) return undefined
  for (const edge of ring) edge.gone = goneAt(edge)
  return ring
}

/** Edges without a length in a hollow corner, so that none turns by more than a limit. */
function roundTheHollow(at: Flat, before: Direction, { dx, dy }: Direction, most: number): readonly Edge[] {
  const turn = before.dx * dy - before.dy * dx
  if (turn >= 0) return []
  const angle = Math.atan2(turn, dx * before.dx + dy * before.dy)
  const parts = Math.ceil(-angle / most)
  return Array.from({ length: parts - 1 }, (_, i) => {
    const [cos, sin] = [Math.cos((angle * (i + 1)) / parts), Math.sin((angle * (i + 1)) / parts)]
    return new Edge(at, { dx: before.dx * cos - before.dy * sin, dy: before.dx * sin + before.dy * cos, length: 0 })
  })
}

/** How far its corner drifts; not where the edge turns back. */
function turned(edge: Edge): boolean {
  const { dx, dy, before } = edge
  const cosine = dx * before.dx + dy * before.dy
  edge.drift = (before.dx * dy - before.dy * dx) / (1 + cosine)
  return cosine > SHARPEST - 1
}

function goneAt({ start, end, drift, after }: Edge): Millimetre {
  const closing = drift + after.drift
  return closing > 0 ? (end - start) / closing : Number.POSITIVE_INFINITY
}

/** The edges that are left at a distance; nothing where two meet nowhere near. */
function usedUp(ring: readonly Edge[], distance: Millimetre): readonly Edge[] | undefined {
  const left = [...ring]
  while (left.length >= 3) {
    let first = 0
    for (let i = 1; i < left.length; i++) if ((left[i]?.gone ?? 0) < (left[first]?.gone ?? 0)) first = i
    const next = left[first]
    if (!next || next.gone > distance) break
    const { before, after } = next
    before.after = after
    after.before = before
    if (!meet(after)) return undefined
    before.gone = goneAt(before)
    after.gone = goneAt(after)
    left.splice(first, 1)
  }
  return left
}

/** An edge with the one that has come to be before it. */
function meet(edge: Edge): boolean {
  if (!turned(edge) || edge.drift <= 0) return false
  const { from, dx, dy, before } = edge
  const [x, y] = [from.x - before.from.x, from.y - before.from.y]
  const turn = before.dx * dy - before.dy * dx
  before.end = (x * dy - y * dx) / turn
  edge.start = (x * before.dy - y * before.dx) / turn
  edge.corner = { x: from.x + edge.start * dx, y: from.y + edge.start * dy }
  return true
}
