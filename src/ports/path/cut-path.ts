import { type Millimetre, type MillimetrePerMinute, type Minute, radians } from '../../units.ts'
import { BREAK_THROUGH } from '../plan-window.ts'
import type { PortWindow } from '../port.ts'
import { drilledTo, highestUnder, lowestUnder } from './drill-depth.ts'
import { type Floor, type FloorPlace, finishFloors, lastFloors, roughFloors } from './floors.ts'
import type { CutPath, CutShape, FeedMove, TipPlace } from './tool-path.ts'
import { windowWalls } from './window-walls.ts'

/** Feed begins this far above the work. Common practice, no source. */
const CLEARANCE: Millimetre = 1
/** Depth of a flat beyond its low side. Common practice, no source. */
const FLAT_BEYOND: Millimetre = 0.1
/** The control slows no further in a corner. */
const LEAST_CORNER_SHARE = 0.1
/** A helix goes round at least so far out. */
const LEAST_TURN: Millimetre = 0.05
/** Straight moves for each turn of a helix: within 0.02 of its radius. */
const CHORDS = 16

/** The way of one cut through a window: what the program writes, and what its time and length are measured on. */
export function cutPath(window: PortWindow, shape: CutShape): CutPath {
  const entry = { x: window.entryHole.x, y: window.entryHole.y }
  const top = highestUnder(windowWalls(window), entry, shape.kind === 'flat' ? shape.hole : shape.cutter)
  return { entry, from: top + CLEARANCE, moves: movesOf(window, shape, top) }
}

function movesOf(window: PortWindow, shape: CutShape, top: Millimetre): readonly FeedMove[] {
  switch (shape.kind) {
    case 'flat':
    case 'wind down':
      return helix(window, shape, top)
    case 'drill':
      return drilling(window, shape, top)
    case 'rough':
    case 'cut through':
      return roughing(window, shape)
    case 'finish':
    case 'spring': {
      const floors = finishFloors(window, shape.cutter)
      const rules = { downShare: shape.downShare, open: true, cornerOf: shape.cutter / 2 }
      return Array.from({ length: shape.levels }, (_, level) =>
        floors.flatMap(floor => passAt(floor, (level + 1) / shape.levels, rules)),
      ).flat()
    }
  }
}

type Rules = {
  readonly downShare: number
  /** The way down is clear: the slot is there already. */
  readonly open: boolean
  /** Radius of a cutter whose rim, not its centre, keeps the feed in corners. */
  readonly cornerOf?: Millimetre
}

function roughing(window: PortWindow, shape: CutShape & { kind: 'rough' | 'cut through' }): readonly FeedMove[] {
  const { cutter, wallStock, slug, levels, throughLevels, downShare } = shape
  const floors = roughFloors(window, cutter, wallStock, slug)
  const roughed = levels - throughLevels
  const rules = { downShare, open: shape.kind === 'cut through' }
  const [first, count] = shape.kind === 'rough' ? [1, roughed] : [roughed + 1, throughLevels]
  const passes = Array.from({ length: count }, (_, level) =>
    floors.flatMap(floor => passAt(floor, (first + level) / levels, rules)),
  ).flat()
  if (shape.kind === 'rough' || slug === 'kept') return passes
  return [...passes, ...lastFloors(window, cutter, wallStock).flatMap(floor => passAt(floor, 1, rules))]
}

/** Down in the entry hole, across to the pass, round it, and back. `part`: how much of the way down is cut. */
function passAt({ lead, loop }: Floor, part: number, { downShare, open, cornerOf }: Rules): readonly FeedMove[] {
  const at = ({ x, y, z, top }: FloorPlace): TipPlace => ({ x, y, z: top - (top - z) * part })
  const [first, ...way] = [...lead, ...loop].map(at)
  if (!first) return []
  const corners = cornerOf === undefined ? [] : cornerShares(loop, cornerOf)
  let from = first
  const round = way.map((to, i): FeedMove => {
    const corner = corners[i - lead.length] ?? 1
    const dive = Math.min(1, downShare / Math.max(1e-9, (from.z - to.z) / distance(from, to)))
    from = to
    return { ...to, share: Math.min(corner, dive) }
  })
  const back = lead.map(at).toReversed()
  return [
    { ...first, share: open ? 1 : downShare, clear: true },
    ...round,
    // Over what has just been cut.
    ...back.map((place): FeedMove => ({ ...place, share: 1, clear: true })),
  ]
}

/**
 * Share of the feed on each stretch of a loop, so that the rim and not the centre of the cutter keeps it: ρ/(ρ + r), with ρ
 * the radius that the centre goes round and r the cutter's. Source: derived, geometry.
 */
function cornerShares(loop: readonly TipPlace[], r: Millimetre): readonly number[] {
  const stretches = loop.slice(1).map((to, i) => {
    const from = loop[i] ?? to
    return { length: Math.hypot(to.x - from.x, to.y - from.y), heading: Math.atan2(to.y - from.y, to.x - from.x) }
  })
  const turnInto = (i: number): number => {
    const here = stretches[i % stretches.length]
    const before = stretches[(i + stretches.length - 1) % stretches.length]
    if (!here || !before) return 0
    const turn = here.heading - before.heading
    return Math.max(0, Math.atan2(Math.sin(turn), Math.cos(turn)))
  }
  return stretches.map(({ length }, i) => {
    const bend = Math.max(turnInto(i), turnInto(i + 1))
    const radius = bend === 0 ? Number.POSITIVE_INFINITY : length / bend
    return radius === Number.POSITIVE_INFINITY ? 1 : Math.max(LEAST_CORNER_SHARE, radius / (radius + r))
  })
}

/** Round and down at the ramp, then once round on the floor. */
function helix(
  window: PortWindow,
  { kind, cutter, hole, ramp }: CutShape & { kind: 'flat' | 'wind down' },
  top: Millimetre,
): readonly FeedMove[] {
  const walls = windowWalls(window)
  const { x, y } = window.entryHole
  const floor =
    kind === 'flat'
      ? lowestUnder(walls.outside, { x, y }, hole) - FLAT_BEYOND
      : lowestUnder(walls.bore, { x, y }, hole) - BREAK_THROUGH
  const radius = Math.max(LEAST_TURN, (hole - cutter) / 2)
  const drop = (2 * Math.PI * radius * Math.tan(radians(ramp))) / CHORDS
  const chords = Math.max(1, Math.ceil((top - floor) / drop))
  return [
    { x: x + radius, y, z: top, share: 1 },
    ...Array.from({ length: chords + CHORDS }, (_, i): FeedMove => {
      const turn = (2 * Math.PI * (i + 1)) / CHORDS
      const down = Math.min(1, (i + 1) / chords)
      return {
        x: x + radius * Math.cos(turn),
        y: y + radius * Math.sin(turn),
        z: top - (top - floor) * down,
        share: 1,
      }
    }),
  ]
}

/** Slow until the drill is in, and again where it breaks through. */
function drilling(
  window: PortWindow,
  { slowIn, slowOut }: CutShape & { kind: 'drill' },
  top: Millimetre,
): readonly FeedMove[] {
  const { x, y } = window.entryHole
  const to = drilledTo(windowWalls(window), window.entryHole)
  const breaks = to + slowOut.length
  const inAt = Math.max(breaks, top - slowIn.length)
  return [
    ...(slowIn.length > 0 ? [{ x, y, z: inAt, share: slowIn.share }] : []),
    { x, y, z: breaks, share: 1 },
    { x, y, z: to, share: slowOut.share },
  ]
}

const distance = (a: TipPlace, b: TipPlace): Millimetre => Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z)

/** Length cut, and time at a feed: a share of it takes as much longer. */
export function measured(
  { entry, from, moves }: CutPath,
  feed: MillimetrePerMinute,
): { readonly length: Millimetre; readonly time: Minute } {
  let [length, time] = [0, 0]
  let at: TipPlace = { ...entry, z: from }
  for (const move of moves) {
    const stretch = distance(at, move)
    if (!move.clear) length += stretch
    time += stretch / (feed * move.share)
    at = move
  }
  return { length, time }
}
