import { micrometre } from '../figures.ts'
import type { Place } from '../finding.ts'
import { materialOf } from '../handbook/materials.ts'
import { EXPANSION } from '../handbook/thermal-expansion.ts'
import type { Characteristic } from '../inspection/characteristic.ts'
import { BOW, type GaugeUsed, type Reading } from '../part/results.ts'
import { HARDENING_PROCESSES } from '../process.ts'
import { type Millimetre, micrometres } from '../units.ts'
import { sizeByMaster, sizeByScale } from './at-twenty.ts'
import { characteristicOf, type PlanToJudge } from './characteristic-of.ts'
import { formOf, type LocalSize, type SurfaceForm } from './places-measured.ts'
import { chanceInLimits, distanceToLimit, judge, meanUncertainty, type Verdict, worst } from './verdict.ts'

/** One characteristic of one piece, judged by all that was read of it. */
export type Judged = {
  readonly serial: string
  readonly characteristic: number
  readonly name: string
  readonly feature: string
  readonly unit: string
  readonly after: number
  readonly lower?: number
  readonly upper?: number
  /** At 20 °C. */
  readonly sizes: readonly LocalSize[]
  readonly form: SurfaceForm
  /** Added to what was read, mm; absent where no temperature was given. */
  readonly corrected?: Millimetre
  readonly gauge: string
  readonly uncertainty: number
  readonly repeatability?: number
  readonly guard: number
  readonly places: number
  /** Whoever made it must prove it in limits. */
  readonly verdict: Verdict
  /** Of a firm's work: what we must prove to send it back. The same zones, read the other way. */
  readonly received?: 'accept' | 'in doubt: no reason to send back' | 'send back' | 'not as expected'
  /** That the worst place lies within the limits. */
  readonly chance: number
  /** What would settle a doubt, best first. */
  readonly settle: readonly string[]
  readonly dates: readonly string[]
  readonly at: Place
}

/** Expansion of what gauges are made of, 1/K. */
const STEEL = EXPANSION['heat-treatable steel'] * 1e-6

/** Gauges of the works, the finest first: one of them may settle a doubt. */
export type FinerGauge = { readonly name: string; readonly uncertainty: Millimetre }

/**
 * Judges readings by the plan as issued: every local size by the limits and the guard band of the gauge used, at 20 °C where
 * temperatures are given. Later readings of the same place with the same gauge enter the mean; none is dropped.
 */
export function judgeResults(
  plan: PlanToJudge,
  readings: readonly Reading[],
  gaugesFor: (characteristic: Characteristic) => readonly FinerGauge[] = () => [],
): readonly Judged[] {
  const groups = new Map<string, { readonly of: Characteristic; readonly read: Reading[] }>()
  for (const reading of readings) {
    if (reading.of === BOW) continue
    const of = characteristicOf(plan, reading)
    if (!of) continue
    const key = `${reading.serial}\n${of.number}`
    const group = groups.get(key)
    if (group) group.read.push(reading)
    else groups.set(key, { of, read: [reading] })
  }
  return [...groups.values()].map(({ of, read }) => judgeGroup(plan, of, read, gaugesFor))
}

function judgeGroup(
  plan: PlanToJudge,
  of: Characteristic,
  read: readonly Reading[],
  gaugesFor: (characteristic: Characteristic) => readonly FinerGauge[],
): Judged {
  const [first] = read
  if (!first) throw new Error('a group of readings has one at the least')
  const used = read.findLast(({ gauge }) => gauge?.uncertainty !== undefined || gauge?.gauge !== undefined)?.gauge
  const sizes = localMeans(plan, of, read)
  const { uncertainty, guard } = bandOf(of, used, Math.floor(read.length / sizes.length))
  const form = formOf(sizes)
  const zone = { ...limitsOf(of), guard }
  // What is not a diameter at places is judged by its worst reading too.
  const verdicts = sizes.map(({ value }) => judge(value, zone))
  const verdict = worst(verdicts)
  const at = verdicts.indexOf(verdict)
  const decides = sizes[at]?.value ?? form.mean
  const corrected = correctionOf(plan, of, read)
  const operation = plan.operations.find(({ number }) => number === (first.after ?? of.operation))
  // What comes back from hardening is as large as it grew: nobody asked for a size.
  const expected = operation !== undefined && HARDENING_PROCESSES.has(operation.process)
  const outside = operation?.place === 'outside' && !expected
  return {
    serial: first.serial,
    characteristic: of.number,
    name: of.name,
    feature: of.feature,
    unit: of.unit,
    after: first.after ?? of.operation,
    ...limitsOf(of),
    sizes,
    form,
    ...(corrected !== undefined && { corrected }),
    gauge: used?.gauge ?? of.gauge,
    uncertainty,
    ...(used?.repeatability !== undefined && { repeatability: used.repeatability }),
    guard,
    places: of.places,
    verdict,
    ...(outside && { received: RECEIVED[verdict] }),
    ...(expected && verdict === 'out' && { received: 'not as expected' as const }),
    chance: chanceInLimits(decides, uncertainty / 2, zone),
    settle: verdict === 'in doubt' ? settledBy(distanceToLimit(decides, zone), uncertainty, gaugesFor(of)) : [],
    dates: [...new Set(read.flatMap(({ date }) => (date === undefined ? [] : [date])))],
    at: first.at,
  }
}

const RECEIVED = {
  'in limits': 'accept',
  'in doubt': 'in doubt: no reason to send back',
  out: 'send back',
} as const

const limitsOf = ({ lower, upper }: Characteristic): { readonly lower?: number; readonly upper?: number } => ({
  ...(lower !== undefined && { lower }),
  ...(upper !== undefined && { upper }),
})

/** The guard band of the plan, drawn with the uncertainty of the gauge that was used. */
function bandOf(
  of: Characteristic,
  used: GaugeUsed | undefined,
  repeats: number,
): { readonly uncertainty: number; readonly guard: number } {
  const planned =
    of.accept.lower !== undefined && of.lower !== undefined
      ? of.accept.lower - of.lower
      : of.accept.upper !== undefined && of.upper !== undefined
        ? of.upper - of.accept.upper
        : 0
  const single = used?.uncertainty ?? of.uncertainty
  const uncertainty = ofMean(single, used?.repeatability, repeats)
  const share = of.uncertainty > 0 ? planned / of.uncertainty : 1
  return { uncertainty, guard: uncertainty * share }
}

/** Of the mean of several readings of a place: what repeats goes down, what the master brings stays. */
function ofMean(expanded: number, repeatability: number | undefined, repeats: number): number {
  if (repeatability === undefined || repeats < 2) return expanded
  const systematic = Math.sqrt(Math.max(0, (expanded / 2) ** 2 - repeatability ** 2))
  return 2 * meanUncertainty(repeatability, systematic, repeats)
}

/** Readings of one place as their mean, at 20 °C. */
function localMeans(plan: PlanToJudge, of: Characteristic, read: readonly Reading[]): readonly LocalSize[] {
  const places = new Map<string, { readonly place: Omit<LocalSize, 'value'>; readonly values: number[] }>()
  for (const reading of read) {
    const { depth, direction } = reading
    const key = `${depth ?? ''} ${direction ?? ''}`
    const value = of.unit === 'mm' ? atTwenty(plan, reading) : inUnitOf(of, reading)
    const known = places.get(key)
    if (known) known.values.push(value)
    else
      places.set(key, {
        place: { ...(depth !== undefined && { depth }), ...(direction !== undefined && { direction }) },
        values: [value],
      })
  }
  return [...places.values()].map(({ place, values }) => ({
    ...place,
    value: values.reduce((sum, value) => sum + value, 0) / values.length,
  }))
}

/** A roughness is judged in µm, whatever length it was written in. */
const inUnitOf = (of: Characteristic, { value, unit }: Reading): number =>
  unit === 'mm' && of.unit === 'µm' ? Number(micrometres(value).toFixed(6)) : value

function correctionOf(plan: PlanToJudge, of: Characteristic, read: readonly Reading[]): Millimetre | undefined {
  const warm = read.find(({ temperature }) => temperature !== undefined)
  return warm && of.unit === 'mm' ? atTwenty(plan, warm) - warm.value : undefined
}

/** As read with an instrument of steel that has a scale of its own, or set on a master of steel. */
function atTwenty(plan: PlanToJudge, { value, temperature, gaugeTemperature, gauge }: Reading): Millimetre {
  if (temperature === undefined) return value
  const group = materialOf(plan.material.grade)?.group
  const expansion = group ? EXPANSION[group] * 1e-6 : STEEL
  const scale = { temperature: gaugeTemperature ?? temperature, expansion: STEEL }
  const part = { temperature, expansion }
  return gauge?.setOn === undefined
    ? sizeByScale(value, scale, part)
    : sizeByMaster({ master: gauge.setOn, deviation: value - gauge.setOn }, scale, part)
}

/** A finer gauge, the mean of several readings, the customer's word: in that order, and never reading until one passes. */
function settledBy(distance: number, uncertainty: number, gauges: readonly FinerGauge[]): readonly string[] {
  const finer = gauges.find(gauge => gauge.uncertainty < distance && gauge.uncertainty < uncertainty)
  return [
    ...(finer ? [`measure with ${finer.name}, uncertain by ${micrometre(finer.uncertainty, 1)} µm`] : []),
    'the mean of five readings, where repeating is what makes this gauge uncertain',
    'a concession of the customer in writing',
  ]
}
