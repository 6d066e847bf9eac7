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

/** Is told every move of a cut in turn; `clear`: nothing is cut on it. */
type Visit = (at: TipPlace, share: number, clear: boolean) => void

/** The way of one cut through a window, as its program writes it. */
export function cutPath(window: PortWindow, shape: CutShape): CutPath {
  const moves: FeedMove[] = []
  const start = startOf(window, shape)
  follow(window, shape, start.top, (at, share, clear) => {
    moves.push({ ...at, share, ...(clear && { clear }) })
  })
  return { entry: start.entry, from: start.from, moves }
}

/** `down`: from the tip's first place on the way to its last. */
export type MeasuredPath = { readonly length: Millimetre; readonly time: Minute; readonly down: Millimetre }

/** Length cut, and time at a feed: a share of it takes as much longer. Measured on the very way that the program goes. */
export function measuredPath(window: PortWindow, shape: CutShape, feed: MillimetrePerMinute): MeasuredPath {
  const { entry, from, top } = startOf(window, shape)
  let [length, time] = [0, 0]
  let [first, last]: [TipPlace | undefined, TipPlace] = [undefined, { ...entry, z: from }]
  follow(window, shape, top, (at, share, clear) => {
    const stretch = distance(last, at)
    if (!clear) length += stretch
    time += stretch / (feed * share)
    first ??= at
    last = at
  })
  return { length, time, down: (first ?? last).z - last.z }
}

function startOf(window: PortWindow, shape: CutShape) {
  const entry = { x: window.entryHole.x, y: window.entryHole.y }
  const top = highestUnder(windowWalls(window), entry, shape.kind === 'flat' ? shape.hole : shape.cutter)
  return { entry, top, from: top + CLEARANCE }
}

function follow(window: PortWindow, shape: CutShape, top: Millimetre, visit: Visit): void {
  switch (shape.kind) {
    case 'flat':
    case 'wind down':
      helix(window, shape, top, visit)
      break
    case 'drill':
      drilling(window, shape, top, visit)
      break
    case 'rough':
    case 'cut through':
      roughing(window, shape, visit)
      break
    case 'finish':
    case 'spring': {
      const passes = finishFloors(window, shape.cutter).map(floor => ({
        floor,
        corners: cornerShares(floor.loop, shape.cutter / 2),
      }))
      const rules = { downShare: shape.downShare, open: true }
      for (let level = 1; level <= shape.levels; level++)
        for (const pass of passes) passAt(pass, level / shape.levels, rules, visit)
    }
  }
}

type Rules = {
  readonly downShare: number
  /** The way down is clear: the slot is there already. */
  readonly open: boolean
}

/** A way round; `corners`: the share of the feed on each of its stretches, where its corners are slowed. */
type Pass = { readonly floor: Floor; readonly corners?: readonly number[] }

function roughing(window: PortWindow, shape: CutShape & { kind: 'rough' | 'cut through' }, visit: Visit): void {
  const { cutter, wallStock, slug, levels, throughLevels, downShare } = shape
  const floors = roughFloors(window, cutter, wallStock, slug)
  const roughed = levels - throughLevels
  const rules = { downShare, open: shape.kind === 'cut through' }
  const [first, last] = shape.kind === 'rough' ? [1, roughed] : [roughed + 1, levels]
  for (let level = first; level <= last; level++)
    for (const floor of floors) passAt({ floor }, level / levels, rules, visit)
  if (shape.kind === 'rough' || slug === 'kept') return
  for (const floor of lastFloors(window, cutter, wallStock)) passAt({ floor }, 1, rules, visit)
}

/** Down in the entry hole, across to the pass, round it, and back. `part`: how much of the way down is cut. */
function passAt(
  { floor: { lead, loop }, corners }: Pass,
  part: number,
  { downShare, open }: Rules,
  visit: Visit,
): void {
  const atDepth = ({ x, y, z, top }: FloorPlace): TipPlace => ({ x, y, z: top - (top - z) * part })
  let from: TipPlace | undefined
  for (const [i, place] of [...lead, ...loop].entries()) {
    const to = atDepth(place)
    if (!from) visit(to, open ? 1 : downShare, true)
    else {
      const dive = Math.min(1, downShare / Math.max(1e-9, (from.z - to.z) / distance(from, to)))
      visit(to, Math.min(corners?.[i - 1 - lead.length] ?? 1, dive), false)
    }
    from = to
  }
  // Over what has just been cut.
  for (const place of lead.toReversed()) visit(atDepth(place), 1, true)
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
  visit: Visit,
): void {
  const walls = windowWalls(window)
  const { x, y } = window.entryHole
  const floor =
    kind === 'flat'
      ? lowestUnder(walls.outside, { x, y }, hole) - FLAT_BEYOND
      : lowestUnder(walls.bore, { x, y }, hole) - BREAK_THROUGH
  const radius = Math.max(LEAST_TURN, (hole - cutter) / 2)
  const drop = (2 * Math.PI * radius * Math.tan(radians(ramp))) / CHORDS
  const chords = Math.max(1, Math.ceil((top - floor) / drop))
  visit({ x: x + radius, y, z: top }, 1, false)
  for (let i = 1; i <= chords + CHORDS; i++) {
    const turn = (2 * Math.PI * i) / CHORDS
    const down = Math.min(1, i / chords)
    const at = { x: x + radius * Math.cos(turn), y: y + radius * Math.sin(turn), z: top - (top - floor) * down }
    visit(at, 1, false)
  }
}

/** Slow until the drill is in, and again where it breaks through. */
function drilling(
  window: PortWindow,
  { slowIn, slowOut }: CutShape & { kind: 'drill' },
  top: Millimetre,
  visit: Visit,
): void {
  const { x, y } = window.entryHole
  const to = drilledTo(windowWalls(window), window.entryHole)
  const breaks = to + slowOut.length
  if (slowIn.length > 0) visit({ x, y, z: Math.max(breaks, top - slowIn.length) }, slowIn.share, false)
  visit({ x, y, z: breaks }, 1, false)
  visit({ x, y, z: to }, slowOut.share, false)
}

const distance = (a: TipPlace, b: TipPlace): Millimetre =>
  Math.sqrt((a.x - b.x) ** 2 + (a.y - b.y) ** 2 + (a.z - b.z) ** 2)
