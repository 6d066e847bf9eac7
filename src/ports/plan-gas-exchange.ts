import { meetingBehindAxis } from '../handbook/loop-scavenging.ts'
import {
  blowdownTimeAt,
  geometricRatio,
  meanAreaTimeArea,
  meanPistonSpeed,
  specificTimeArea,
  sweptVolume,
  trappedRatio,
  trappedVolume,
} from '../handbook/port-area.ts'
import { fromPart, type Told, told, worked } from '../known.ts'
import type { Engine, PortRole } from '../part/part.ts'
import { isExhaust } from '../part/port-role.ts'
import { cubicMillimetres, type Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'
import type { GasExchange } from './gas-exchange.ts'
import { referencesOf } from './gas-references.ts'
import type { PlannedPort } from './port.ts'
import { meetingPoint } from './streams.ts'
import { curveOf, type TimedPort } from './timed-port.ts'
import type { Crank } from './timing.ts'
import { angleArea } from './uncovered-area.ts'

/** A decompressor is shut while the engine runs. */
const ROLES: readonly PortRole[] = ['exhaust', 'aux exhaust', 'transfer', 'boost', 'other']
/** What flows the same way at the same time, and is held against one target. */
const FLOWS: readonly (readonly PortRole[])[] = [
  ['exhaust', 'aux exhaust'],
  ['transfer', 'boost'],
]
const ABOUT = { about: 'gas exchange' }

const BORE = fromPart('/body/bore')
const HEAD = fromPart('/engine/head-volume')
const SUMMED = worked('area uncovered, summed over the crank angle')

/** Areas, time-areas and streams of all ports together. */
export function planGasExchange({
  engine,
  crank,
  bore,
  timed,
  notebook,
}: {
  readonly engine: Engine
  readonly crank: Crank
  readonly bore: Millimetre
  readonly timed: readonly TimedPort[]
  readonly notebook: Notebook
}): GasExchange {
  const { N } = engine.speed === undefined ? {} : told(fromPart('/engine/speed'), { N: engine.speed })
  const S = told(fromPart('/engine/stroke'), { S: engine.stroke })
  const V_s = notebook.use(sweptVolume, { ...told(BORE, { B: bore }), ...S }, ABOUT)
  const specific = (AA: number, about: string): number | undefined =>
    N === undefined ? undefined : notebook.use(specificTimeArea, { ...told(SUMMED, { AA }), N, V_s }, { about })
  const ofRole = (role: PortRole): readonly TimedPort[] => timed.filter(({ planned }) => planned.role === role)
  const areas = ROLES.flatMap(role => {
    const ports = ofRole(role)
    if (ports.length === 0) return []
    const total = sum(ports.map(({ planned, area }) => angleArea(area, planned.opens, planned.closes)))
    const specificArea = specific(total, role)
    const byTime = specificArea === undefined ? {} : { specificTimeArea: specificArea }
    const byMean =
      N === undefined ? {} : { meanAreaTimeArea: meanArea({ ports, engine, crank, given: { N, V_s }, notebook }) }
    return [{ role, angleArea: total, ...byTime, ...byMean, uncovered: curveOf(ports) }]
  })
  const exhaustTop = Math.min(...timed.flatMap(({ planned }) => (isExhaust(planned.role) ? [planned.top] : [])))
  const blowdown = blowdownOf(timed, N, specific, notebook)
  const streams = timed.flatMap(({ planned }) => streamOf(planned, bore, notebook))
  const speed = N === undefined ? {} : { meanPistonSpeed: notebook.use(meanPistonSpeed, { ...S, N }, ABOUT) }
  const exchange: Omit<GasExchange, 'references'> = {
    sweptVolume: V_s,
    bottomDeadCentre: crank.downstroke,
    ...compressionOf({ engine, bore, exhaustTop, V_s, notebook }),
    ...speed,
    ...(blowdown ? { blowdown } : {}),
    areas,
    together: FLOWS.flatMap(roles => togetherOf(areas.filter(({ role }) => roles.includes(role)))),
    streams,
  }
  return { ...exchange, references: referencesOf(engine, exchange, bore, timed) }
}

/** The sums over roles that share a flow; nothing where one role has it all. */
function togetherOf(areas: GasExchange['areas']): GasExchange['together'] {
  if (areas.length < 2) return []
  const total = (key: 'specificTimeArea' | 'meanAreaTimeArea'): { readonly [K in typeof key]?: number } => {
    const values = areas.flatMap(area => area[key] ?? [])
    return values.length < areas.length ? {} : { [key]: sum(values) }
  }
  return [
    {
      roles: areas.map(({ role }) => role),
      angleArea: sum(areas.map(({ angleArea }) => angleArea)),
      ...total('specificTimeArea'),
      ...total('meanAreaTimeArea'),
    },
  ]
}

/** What is compressed, and how far where the part gives the head's volume. */
function compressionOf({
  engine: { crownBelowTop, headVolume },
  bore,
  exhaustTop,
  V_s,
  notebook,
}: {
  readonly engine: Engine
  readonly bore: Millimetre
  readonly exhaustTop: Millimetre
  readonly V_s: number
  readonly notebook: Notebook
}): Pick<GasExchange, 'trappedVolume' | 'headVolume' | 'trappedRatio' | 'geometricRatio'> {
  const V_c = headVolume === undefined ? undefined : cubicMillimetres(headVolume)
  const V_ts = Number.isFinite(exhaustTop)
    ? notebook.use(
        trappedVolume,
        {
          ...told(BORE, { B: bore }),
          ...told(worked('top edge of the exhaust, below the crown'), { x_E: exhaustTop - crownBelowTop }),
        },
        ABOUT,
      )
    : undefined
  return {
    ...(V_ts === undefined ? {} : { trappedVolume: V_ts }),
    ...(V_c === undefined
      ? {}
      : { headVolume: V_c, geometricRatio: notebook.use(geometricRatio, { V_s, ...told(HEAD, { V_c }) }, ABOUT) }),
    ...(V_ts === undefined || V_c === undefined
      ? {}
      : { trappedRatio: notebook.use(trappedRatio, { V_ts, ...told(HEAD, { V_c }) }, ABOUT) }),
  }
}

/** The area open half-way from opening to full opening counts for the whole time; summed over the ports of a role. */
function meanArea({
  ports,
  engine: { crownBelowTop, stroke },
  crank,
  given,
  notebook,
}: {
  readonly ports: readonly TimedPort[]
  readonly engine: Engine
  readonly crank: Crank
  readonly given: { readonly N: Told; readonly V_s: number }
  readonly notebook: Notebook
}): number {
  return sum(
    ports.map(({ planned: { name, opens, closes, bottom }, area }) => {
      const about = { about: name }
      const open = bottom - crownBelowTop < stroke ? crank.opensAt(bottom, about) : crank.downstroke
      return notebook.use(
        meanAreaTimeArea,
        {
          ...told(worked('open half-way between opening and full opening'), { A: area((opens + open) / 2) }),
          ...told(worked('closing less opening'), { dtheta: closes - opens }),
          ...given,
        },
        about,
      )
    }),
  )
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

/** From the first exhaust opening to the first transfer opening, on the way down. */
function blowdownOf(
  timed: readonly TimedPort[],
  N: Told | undefined,
  specific: (AA: number, about: string) => number | undefined,
  notebook: Notebook,
): GasExchange['blowdown'] {
  const opens = (of: (role: PortRole) => boolean): number =>
    Math.min(...timed.flatMap(({ planned }) => (of(planned.role) ? [planned.opens] : [])))
  const [from, to] = [opens(isExhaust), opens(role => role === 'transfer')]
  if (!(Number.isFinite(from) && Number.isFinite(to) && to > from)) return undefined
  const exhausts = timed.filter(({ planned }) => isExhaust(planned.role) && planned.opens < to)
  const AA = sum(exhausts.map(({ planned, area }) => angleArea(area, planned.opens, to)))
  const specificArea = specific(AA, 'blowdown')
  return {
    angle: to - from,
    from,
    to,
    angleArea: AA,
    ...(N === undefined
      ? {}
      : {
          time: notebook.use(
            blowdownTimeAt,
            { ...told(worked('from the exhaust to the first transfer'), { dtheta: to - from }), N },
            { about: 'blowdown' },
          ),
        }),
    ...(specificArea === undefined ? {} : { specificTimeArea: specificArea }),
  }
}

function streamOf(planned: PlannedPort, bore: Millimetre, notebook: Notebook): GasExchange['streams'] {
  const { role, at, back, name } = planned
  if (role !== 'transfer' || at <= 0 || at === 180) return []
  const meeting = meetingPoint(at, back, bore / 2)
  if (meeting.behind !== undefined) {
    notebook.use(
      meetingBehindAxis,
      {
        ...told(BORE, { r: bore / 2 }),
        ...told(fromPart(`${name}, at`), { phi: at }),
        ...told(fromPart(`${name}, back`), { psi: back }),
      },
      { about: name },
    )
  }
  return [{ port: name, ...meeting }]
}
