import { meetingBehindAxis } from '../handbook/loop-scavenging.ts'
import { blowdownTimeAt, meanPistonSpeed, specificTimeArea, sweptVolume, trappedVolume } from '../handbook/port-area.ts'
import { MEETING_TARGET, TIME_AREA_TARGETS } from '../handbook/time-area-targets.ts'
import { TIMING_CLASSES_SOURCE, timingClasses } from '../handbook/timing-classes.ts'
import type { Engine, PortRole } from '../part/part.ts'
import type { Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'
import type { GasExchange, Reference } from './gas-exchange.ts'
import type { PlannedPort } from './port.ts'
import { meetingPoint } from './streams.ts'
import { curveOf, type TimedPort } from './timed-port.ts'
import type { Crank } from './timing.ts'
import { angleArea } from './uncovered-area.ts'

const ROLES: readonly PortRole[] = ['exhaust', 'transfer', 'boost', 'other']
const ABOUT = { about: 'gas exchange' }

/** Areas, time-areas and streams of all ports together. */
export function planGasExchange(
  engine: Engine,
  { downstroke }: Pick<Crank, 'downstroke'>,
  bore: Millimetre,
  timed: readonly TimedPort[],
  notebook: Notebook,
): GasExchange {
  const N = engine.speed
  const V_s = notebook.use(sweptVolume, { B: bore, S: engine.stroke }, ABOUT)
  const specific = (AA: number, about: string): number | undefined =>
    N === undefined ? undefined : notebook.use(specificTimeArea, { AA, N, V_s }, { about })
  const ofRole = (role: PortRole): readonly TimedPort[] => timed.filter(({ planned }) => planned.role === role)
  const areas = ROLES.flatMap(role => {
    const ports = ofRole(role)
    if (ports.length === 0) return []
    const total = sum(ports.map(({ planned, area }) => angleArea(area, planned.opens, planned.closes)))
    const specificArea = specific(total, role)
    const byTime = specificArea === undefined ? {} : { specificTimeArea: specificArea }
    return [{ role, angleArea: total, ...byTime, uncovered: curveOf(ports) }]
  })
  const exhaustTop = Math.min(...ofRole('exhaust').map(({ planned }) => planned.top))
  const blowdown = blowdownOf(timed, N, specific, notebook)
  const streams = timed.flatMap(({ planned }) => streamOf(planned, bore, notebook))
  const speed =
    N === undefined ? {} : { meanPistonSpeed: notebook.use(meanPistonSpeed, { S: engine.stroke, N }, ABOUT) }
  const exchange: Omit<GasExchange, 'references'> = {
    sweptVolume: V_s,
    bottomDeadCentre: downstroke,
    ...(Number.isFinite(exhaustTop)
      ? { trappedVolume: notebook.use(trappedVolume, { B: bore, x_E: exhaustTop - engine.crownBelowTop }, ABOUT) }
      : {}),
    ...speed,
    ...(blowdown ? { blowdown } : {}),
    areas,
    streams,
  }
  return { ...exchange, references: referencesOf(engine, exchange) }
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

/** From the first exhaust opening to the first transfer opening, on the way down. */
function blowdownOf(
  timed: readonly TimedPort[],
  N: number | undefined,
  specific: (AA: number, about: string) => number | undefined,
  notebook: Notebook,
): GasExchange['blowdown'] {
  const opens = (role: PortRole): number =>
    Math.min(...timed.filter(({ planned }) => planned.role === role).map(({ planned }) => planned.opens))
  const [from, to] = [opens('exhaust'), opens('transfer')]
  if (!(Number.isFinite(from) && Number.isFinite(to) && to > from)) return undefined
  const exhausts = timed.filter(({ planned }) => planned.role === 'exhaust' && planned.opens < to)
  const AA = sum(exhausts.map(({ planned, area }) => angleArea(area, planned.opens, to)))
  const specificArea = specific(AA, 'blowdown')
  return {
    angle: to - from,
    from,
    to,
    angleArea: AA,
    ...(N === undefined ? {} : { time: notebook.use(blowdownTimeAt, { dtheta: to - from, N }, { about: 'blowdown' }) }),
    ...(specificArea === undefined ? {} : { specificTimeArea: specificArea }),
  }
}

function streamOf(planned: PlannedPort, bore: Millimetre, notebook: Notebook): GasExchange['streams'] {
  const { role, at, back, name } = planned
  if (role !== 'transfer' || at <= 0 || at === 180) return []
  const meeting = meetingPoint(at, back, bore / 2)
  if (meeting.behind !== undefined) {
    notebook.use(meetingBehindAxis, { r: bore / 2, phi: at, psi: back }, { about: name })
  }
  return [{ port: name, ...meeting }]
}

function referencesOf(engine: Engine, exchange: Omit<GasExchange, 'references'>): readonly Reference[] {
  const classes = engine.speed === undefined ? [] : timingClasses(engine.speed, engine.stroke)
  const { blowdown, areas, streams } = exchange
  return [
    ...(blowdown
      ? classes.map(({ name, blowdown: [from, to] }) => ({
          what: `blowdown, ${name} engines`,
          value: blowdown.angle,
          unit: 'deg',
          from,
          to,
          source: TIMING_CLASSES_SOURCE,
        }))
      : []),
    ...areas.flatMap(({ role, specificTimeArea }) =>
      TIME_AREA_TARGETS.filter(({ port }) => port === role).flatMap(({ from, to, source, note }) =>
        specificTimeArea === undefined
          ? []
          : [
              {
                what: `specific time-area, ${role}`,
                value: specificTimeArea,
                unit: 's/m',
                from,
                to,
                source: `${source}; ${note}`,
              },
            ],
      ),
    ),
    ...streams.flatMap(({ port, fraction }) =>
      fraction === undefined
        ? []
        : [{ what: `meeting of the streams, ${port}`, value: fraction, unit: '', ...MEETING_TARGET }],
    ),
  ]
}
