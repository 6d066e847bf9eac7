import { sidePerRotary } from '../handbook/pick-up.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import {
  allTiltsEach,
  batchEachTilt,
  clearanceError,
  DOWEL,
  flatWidth,
  TIMING_DATUMS,
  type TimingDatum,
  touchError,
} from '../handbook/timing-datums.ts'
import { fromHandbook, fromPart, told, worked } from '../known.ts'
import { headSense } from '../machine-frame.ts'
import { clockPosition } from '../ports/clock-position.ts'
import { type OrderedWindow, orderedWindows, windowName } from '../ports/window-order.ts'
import { onHand, setting } from '../shop/origin.ts'
import type { Degree, Millimetre, Minute } from '../units.ts'
import type { CuttingTask } from './cutting-task.ts'

/** Whether a piece goes through all tilts in one clamping, or the batch once for each tilt; and what then brings azimuth 0 back. */
export type Clocking = {
  readonly way: 'one tilt' | 'all tilts a piece' | 'the batch at each tilt'
  /** How often every piece is loaded. */
  readonly passes: number
  readonly tilts: number
  readonly minutes: {
    readonly load: Minute
    readonly change: Minute
    readonly allTilts: Minute
    /** Both absent without a datum. */
    readonly clock?: Minute
    readonly eachTilt?: Minute
  }
  /** Of the part file, or the one that the planner proposes. */
  readonly datum?: ClockingDatum
}

export type ClockingDatum = {
  readonly kind: TimingDatum
  /** Band, or window, that carries it. */
  readonly on: string
  readonly drawn: boolean
  readonly at: Degree
  /** Seen from the head, azimuth 0 at 12. */
  readonly clock: string
  readonly depth?: Millimetre
  /** Of a flat. */
  readonly width?: Millimetre
  /** Where it is milled: rotary at tilt 0, and Z of its floor. A dowel hole is drilled before. */
  readonly rotary?: Degree
  readonly floor?: Millimetre
  /** Azimuth of one loading, and between the ports of two. */
  readonly angle: Degree
  readonly between: Degree
  /** Of the side edges round the bore between two loadings. Rotation about its own axis leaves heights and timing. */
  readonly side: Millimetre
}

const PRACTICE = fromHandbook('common practice, no source')

/** Minutes of a tilt set by the machine's own axis. Common practice, no source. */
const POWERED: Minute = 0.2

export function planClocking(task: CuttingTask): Clocking {
  const { shop, machine, start, notebook, operation } = task
  const ordered = orderedWindows(task.ports)
  const tilts = new Set(ordered.map(({ window }) => window.tilt)).size
  const change = shop.ncWords?.tiltAxis === undefined ? shop.habits.tiltChange : POWERED
  const load = machine.handling
  const about = { operation: operation.number, about: 'tilts' }
  const counted = {
    ...told(worked('pieces started, and tilts of the ports'), { n: start, t: Math.max(1, tilts) }),
    ...told(onHand(shop, 'machines', machine.name), { load }),
    ...told(shop.ncWords?.tiltAxis === undefined ? setting(shop, 'habits', 'tilt-change') : PRACTICE, { change }),
  }
  const allTilts = notebook.use(allTiltsEach, counted, about)
  if (tilts < 2) return { way: 'one tilt', passes: 1, tilts, minutes: { load, change, allTilts } }
  const datum = datumOf(task, ordered)
  if (!datum) return { way: 'all tilts a piece', passes: 1, tilts, minutes: { load, change, allTilts } }
  const clock = TIMING_DATUMS[datum.kind].minutes
  const eachTilt = notebook.use(batchEachTilt, { ...counted, ...told(PRACTICE, { clock }) }, about)
  const cheaper = eachTilt < allTilts
  return {
    way: cheaper ? 'the batch at each tilt' : 'all tilts a piece',
    passes: cheaper ? tilts : 1,
    tilts,
    minutes: { load, change, clock, allTilts, eachTilt },
    datum,
  }
}

/** Minutes on top of one loading, by piece and for the batch, that the way of working takes. */
export function clockingTime({ way, tilts, minutes, datum }: Clocking): {
  readonly each: Minute
  readonly setup: Minute
} {
  const making = datum?.drawn === true && datum.rotary !== undefined ? SHOP_TIMES.datum : 0
  const { load, change, clock = 0 } = minutes
  if (way === 'one tilt') return { each: making, setup: 0 }
  return way === 'all tilts a piece'
    ? { each: making + tilts * change, setup: 0 }
    : { each: making + tilts * (load + clock) - load, setup: tilts * change }
}

/** Drawn, or a key in the widest window that is milled level and straight at the axis: it is there after the first tilt. */
function datumOf(task: CuttingTask, ordered: readonly OrderedWindow[]): ClockingDatum | undefined {
  const radius = ordered[0]?.window.walls.finished ?? 0
  const { datum } = task.part
  if (datum) return drawn(task, datum, radius)
  const level = ordered
    .filter(({ port, window }) => window.tilt === 0 && ordered[0]?.window.tilt === 0 && port.back === 0)
    .toSorted((a, b) => b.window.width - a.window.width)[0]
  if (!level) return undefined
  const { window } = level
  const angle = errorOf(task, 'window key', window.walls.bore)
  return {
    kind: 'window key',
    on: windowName(level),
    drawn: false,
    at: window.at,
    clock: clockPosition(window.at),
    width: window.width,
    ...errors(task, angle, radius),
  }
}

function drawn(task: CuttingTask, datum: NonNullable<CuttingTask['part']['datum']>, bore: Millimetre): ClockingDatum {
  const { shop, after, notebook, operation } = task
  const band = after.outside.find(({ name }) => name === datum.on) ?? after.outside.at(-1)
  const diameter = band?.diameter ?? 0
  const { kind, on, at, depth } = datum
  const radius = kind === 'dowel hole' ? diameter / 2 - DOWEL : diameter / 2 - depth / 2
  const upright = 0 - headSense(shop.fixture) * at
  const about = { operation: operation.number, about: on }
  return {
    kind,
    on,
    drawn: true,
    at,
    clock: clockPosition(at),
    depth,
    ...(kind === 'flat'
      ? {
          width: notebook.use(
            flatWidth,
            { ...told(worked('band as it stands'), { D: diameter }), ...told(fromPart('/datum/depth'), { h: depth }) },
            about,
          ),
        }
      : {}),
    ...(kind === 'dowel hole'
      ? {}
      : {
          rotary: (shop.fixture.positiveRotary === 'Y to Z' ? upright : 0 - upright) + 0,
          floor: shop.fixture.pivotHeight + diameter / 2 - depth,
        }),
    ...errors(task, errorOf(task, kind, radius), bore),
  }
}

function errorOf({ notebook, operation }: CuttingTask, kind: TimingDatum, r: Millimetre): Degree {
  const { clearance, touch } = TIMING_DATUMS[kind]
  const about = { operation: operation.number, about: kind }
  return touch
    ? notebook.use(touchError, told(PRACTICE, { e: touch.reading, w: touch.along }), about)
    : notebook.use(
        clearanceError,
        { ...told(PRACTICE, { c: clearance ?? 0 }), ...told(worked('radius that the datum stands on'), { r }) },
        about,
      )
}

/** Two loadings are each off by as much, either way and apart from each other. */
function errors(
  { notebook, operation }: CuttingTask,
  angle: Degree,
  r: Millimetre,
): Pick<ClockingDatum, 'angle' | 'between' | 'side'> {
  const between = Math.SQRT2 * angle
  const about = { operation: operation.number, about: 'clocking' }
  const given = {
    ...told(worked('bore, finished'), { r }),
    ...told(worked('two loadings, each off by as much'), { dA: between }),
  }
  return { angle, between, side: notebook.use(sidePerRotary, given, about) }
}
