import { type Millimetre, type MillimetrePerMinute, type Minute, radians } from '../../units.ts'
import { BREAK_THROUGH } from '../plan-window.ts'
import type { PortWindow } from '../port.ts'
import { drilledTo, highestUnder, lowestUnder } from './drill-depth.ts'
import type { Floor } from './floors.ts'
import { cornerShares, distance, passAt } from './pass.ts'
import { remembered } from './remembered.ts'
import { rampStart, roughing } from './roughing.ts'
import type { CutPath, CutShape, TipPlace, Visit } from './tool-path.ts'
import { type AlongWall, wallFloors } from './wall-floor.ts'
import { windowWalls } from './window-walls.ts'

/** Feed begins this far above the work. Common practice, no source. */
const CLEARANCE: Millimetre = 1
/** Depth of a flat beyond its low side. Common practice, no source. */
const FLAT_BEYOND: Millimetre = 0.1
/** A helix goes round at least so far out. */
const LEAST_TURN: Millimetre = 0.05
/** Straight moves for each turn of a helix: within 0.02 of its radius. */
const CHORDS = 16

/**
 * The way of one cut through a window, as its program writes it: where it begins, and its moves one by one to whoever follows,
 * since a program has tens of thousands.
 */
export function cutPath(window: PortWindow, shape: CutShape): CutPath {
  const { entry, from, top } = startOf(window, shape)
  return { entry, from, follow: visit => follow(window, shape, top, visit) }
}

/** `down`: from the tip's first place on the way to its last. */
export type MeasuredPath = { readonly length: Millimetre; readonly time: Minute; readonly down: Millimetre }

/**
 * Length cut, and time at a feed: a share of it takes as much longer. Measured on the very way that the program goes, once for
 * the choice of a cutter and for the step.
 */
export const measuredPath = (window: PortWindow, shape: CutShape, feed: MillimetrePerMinute): MeasuredPath =>
  remembered(window, `measured ${feed} ${JSON.stringify(shape)}`, () => measured(window, shape, feed))

function measured(window: PortWindow, shape: CutShape, feed: MillimetrePerMinute): MeasuredPath {
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
  const ramped = 'down' in shape && shape.down ? rampStart(window, shape) : undefined
  const entry = ramped ?? { x: window.entryHole.x, y: window.entryHole.y }
  const top = highestUnder(windowWalls(window), entry, shape.kind === 'flat' ? shape.hole : shape.cutter)
  return { entry: { x: entry.x, y: entry.y }, top, from: top + CLEARANCE }
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
    default:
      for (const floor of wallFloors(window, shape)) downTheWall(floor, shape, visit)
  }
}

/** All levels of one way. In a corner the cutter stays there between them. */
function downTheWall(floor: Floor, shape: AlongWall, visit: Visit): void {
  const corners = cornerShares(floor.loop, shape.cutter / 2)
  const stays = shape.kind !== 'finish' && shape.kind !== 'spring'
  for (let level = 1; level <= shape.levels; level++) {
    const lead = stays && level > 1 ? [] : floor.lead
    const back = stays && level < shape.levels ? [] : floor.back
    passAt(
      { floor: { lead, loop: floor.loop, back }, corners },
      level / shape.levels,
      { ...shape, entryShare: shape.clearShare },
      visit,
    )
  }
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
