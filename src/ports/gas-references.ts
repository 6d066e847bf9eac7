import {
  BLOWDOWN_TIME_AREA,
  BRIDGED_EXHAUST_WIDTH,
  BRIDGED_WINDOW_WIDTH,
  EXHAUST_WIDTH,
  MEETING_TARGET,
  TIME_AREA_TARGETS,
  TRAPPED_RATIO,
} from '../handbook/time-area-targets.ts'
import { type Band, TIMING_CLASSES_SOURCE, type TimingClass, timingClasses } from '../handbook/timing-classes.ts'
import type { Engine, PortRole } from '../part/part.ts'
import type { Millimetre } from '../units.ts'
import type { GasExchange, Reference } from './gas-exchange.ts'
import type { PlannedPort } from './port.ts'
import type { TimedPort } from './timed-port.ts'

/** What books and workshops name beside the plan's own figures: ranges in use, none of them a limit. */
export function referencesOf(
  engine: Engine,
  exchange: Omit<GasExchange, 'references'>,
  bore: Millimetre,
  timed: readonly TimedPort[],
): readonly Reference[] {
  const { blowdown, areas, together, streams, trappedRatio } = exchange
  const opens = (role: PortRole): number | undefined => {
    const all = timed.filter(({ planned }) => planned.role === role).map(({ planned }) => planned.opens)
    return all.length === 0 ? undefined : Math.min(...all)
  }
  const [exhaust, transfer, boost] = [opens('exhaust'), opens('transfer'), opens('boost')]
  const delay = boost === undefined || transfer === undefined ? undefined : boost - transfer
  return [
    ...inClass(engine, 'exhaust opening', exhaust, row => row.exhaust),
    ...inClass(engine, 'transfer opening', transfer, row => row.transfer),
    ...inClass(engine, 'boost after transfer', delay, row => row.boostDelay),
    ...inClass(engine, 'blowdown', blowdown?.angle, row => row.blowdown),
    ...one('specific time-area, blowdown', blowdown?.specificTimeArea, 's/m', BLOWDOWN_TIME_AREA),
    ...TIME_AREA_TARGETS.flatMap(({ port, from, to, source, note }) => {
      const both = together.find(({ roles }) => roles.includes(port))
      const [what, area] = both ? [both.roles.join(' and '), both] : [port, areas.find(({ role }) => role === port)]
      const range = { from, to, source: `${source}; ${note}` }
      return one(`time-area by mean area, ${what}`, area?.meanAreaTimeArea, 's/m', range)
    }),
    ...one('trapped compression ratio', trappedRatio, '', TRAPPED_RATIO),
    ...timed.filter(({ planned: { role } }) => role === 'exhaust').flatMap(({ planned }) => widthsOf(planned, bore)),
    ...streams.flatMap(({ port, fraction }) => one(`meeting of the streams, ${port}`, fraction, '', MEETING_TARGET)),
  ]
}

/** A bridged exhaust is held against bridged ones: the whole of it, and its widest window. */
function widthsOf({ name, windows, width }: PlannedPort, bore: Millimetre): readonly Reference[] {
  if (windows.length < 2) return one(`width by bore, ${name}`, width / bore, '', EXHAUST_WIDTH)
  const widest = Math.max(...windows.map(window => window.width))
  return [
    ...one(`width by bore with its bridge, ${name}`, width / bore, '', BRIDGED_EXHAUST_WIDTH),
    ...one(`widest window by bore, ${name}`, widest / bore, '', BRIDGED_WINDOW_WIDTH),
  ]
}

type Range = Pick<Reference, 'from' | 'to' | 'source'>

const one = (
  what: string,
  value: number | undefined,
  unit: string,
  { from, to, source }: Range,
): readonly Reference[] => (value === undefined ? [] : [{ what, value, unit, from, to, source }])

/** One row for each class that the engine may be counted to, by its speed and by its mean piston speed. */
function inClass(
  { speed, stroke }: Engine,
  what: string,
  value: number | undefined,
  bandOf: (row: TimingClass) => Band,
): readonly Reference[] {
  const classes = speed === undefined ? [] : timingClasses(speed, stroke)
  return classes.flatMap(row => {
    const [from, to] = bandOf(row)
    return one(`${what}, ${row.name} engines`, value, 'deg', { from, to, source: TIMING_CLASSES_SOURCE })
  })
}
