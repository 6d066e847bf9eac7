import { allTiltsEach, batchEachTilt } from '../handbook/timing-datums.ts'
import { fromHandbook, told, worked } from '../known.ts'
import { orderedWindows } from '../ports/window-order.ts'
import { onHand, setting } from '../shop/origin.ts'
import type { Minute } from '../units.ts'
import { type ClockingDatum, clockingMinutes, datumOf } from './clocking-datum.ts'
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
  if (tilts < 2) {
    const own = task.part.datum && ordered.length > 0 ? datumOf(task, ordered) : undefined
    return { way: 'one tilt', passes: 1, tilts, minutes: { load, change, allTilts }, ...(own && { datum: own }) }
  }
  const datum = datumOf(task, ordered)
  if (!datum) return { way: 'all tilts a piece', passes: 1, tilts, minutes: { load, change, allTilts } }
  const clock = clockingMinutes(datum)
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
  // A clamping of its own is one more loading.
  const making = datum?.clamping === 'of its own' ? minutes.load : 0
  const { load, change, clock = 0 } = minutes
  if (way === 'one tilt') return { each: making, setup: 0 }
  return way === 'all tilts a piece'
    ? { each: making + tilts * change, setup: 0 }
    : { each: making + tilts * (load + clock) - load, setup: tilts * change }
}
