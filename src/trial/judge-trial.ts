import { byPlace, type Finding } from '../finding.ts'
import type { LinerLetter, Trial, TrialRun } from '../part/trial.ts'
import { type AirMoved, airMoved, MOVED_ENOUGH } from './air-of-runs.ts'
import { checkRuns, doubtsOf } from './check-runs.ts'
import { type Compared, comparedOf } from './compared.ts'
import { type Corrected, correctedOf } from './corrected.ts'
import { driftOf, type Fitting, fittingsOf, type ReadRun, spreadOfRuns } from './fitted.ts'
import { MEASURES, type MeasureName } from './measures.ts'
import { type Steady, steadyOf } from './steady.ts'

export type JudgedRun = {
  readonly number: number
  readonly fitting: number
  readonly liner: LinerLetter
  readonly block: string
  /** Of the main measure. */
  readonly value: number
  /** What speaks against it; it counts all the same. */
  readonly doubts: readonly string[]
  /** Why it does not count: written before its speed was looked at. */
  readonly rejected?: string
}

export type MeasureResult = {
  readonly measure: MeasureName
  readonly unit: string
  readonly places: number
  readonly fittings: readonly Fitting[]
  /** What a fitting more adds by itself, in each block. */
  readonly drift: readonly { readonly block: string; readonly each: number }[]
  /** Spread of runs of one fitting, where fittings have several. */
  readonly spreadOfRuns?: number
  readonly differences: readonly Compared[]
}

export type TrialResult = {
  readonly runs: readonly JudgedRun[]
  /** The one measure that is judged. */
  readonly main: MeasureResult
  /** What else was read: intervals, no verdict. */
  readonly others: readonly MeasureResult[]
  /** The main measure again without the runs that something speaks against. */
  readonly withoutDoubtful?: MeasureResult
  readonly steady: readonly Steady[]
  readonly air?: AirMoved
  readonly corrected?: Corrected
  readonly findings: readonly Finding[]
}

/** Judges a trial by its fittings. Nothing but findings where it cannot be judged. */
export function judgeTrial(trial: Trial): { readonly result?: TrialResult; readonly findings: readonly Finding[] } {
  const counted = trial.runs.filter(({ rejected }) => rejected === undefined)
  const main = measured(trial, counted, trial.verdict)
  if (!main || main.differences.length < trial.liners.length - 1) {
    const message =
      trial.runs.length === 0
        ? 'there are no runs yet'
        : `${fittingsSaid(trial, counted)}: too few to take a drift out and still tell how sure the difference is`
    const hint = trial.runs.length === 0 ? '--plan says how to run it' : 'fit every liner at least twice, as in ABBA'
    return { findings: [{ code: 'trial/too-few', severity: 'error', message, hint, at: trial.at }] }
  }
  const doubts = new Map(trial.runs.map(run => [run.number, doubtsOf(run, trial)]))
  const sure = counted.filter(({ number }) => (doubts.get(number) ?? []).length === 0)
  const withoutDoubtful = sure.length < counted.length ? measured(trial, sure, trial.verdict) : undefined
  const air = airMoved(counted)
  const corrected =
    trial.correction !== undefined && air && air.moved > MOVED_ENOUGH ? correctedOf(trial, counted) : undefined
  const result = {
    runs: trial.runs.map(run => judgedRun(run, trial, doubts.get(run.number) ?? [])),
    main,
    others: MEASURES.filter(({ name }) => name !== trial.verdict).flatMap(
      ({ name }) => measured(trial, counted, name) ?? [],
    ),
    ...(withoutDoubtful && withoutDoubtful.differences.length === main.differences.length && { withoutDoubtful }),
    steady: trial.runs.flatMap(run => steadyOf(run, trial) ?? []),
    ...(air && { air }),
    ...(corrected && { corrected }),
  }
  const findings = byPlace(checkRuns(trial, result))
  return { result: { ...result, findings }, findings }
}

function judgedRun(run: TrialRun, trial: Trial, doubts: readonly string[]): JudgedRun {
  const { number, fitting, liner, block, rejected, speed } = run
  const value = MEASURES.find(({ name }) => name === trial.verdict)?.of(run, trial) ?? speed
  return { number, fitting, liner, block, value, doubts, ...(rejected !== undefined && { rejected }) }
}

/** One measure over the runs; nothing where it was not read at every one of them. */
function measured(trial: Trial, runs: readonly TrialRun[], name: MeasureName): MeasureResult | undefined {
  const measure = MEASURES.find(one => one.name === name)
  const read = runs.flatMap((run): readonly ReadRun[] => {
    const value = measure?.of(run, trial)
    return value === undefined ? [] : [{ run, value }]
  })
  if (!measure || read.length < runs.length || read.length === 0) return undefined
  const fittings = fittingsOf(read)
  const spread = spreadOfRuns(read)
  return {
    measure: name,
    unit: measure.unit,
    places: measure.places,
    fittings,
    drift: driftOf(fittings),
    ...(spread !== undefined && { spreadOfRuns: spread }),
    differences: trial.liners
      .filter(({ letter }) => letter !== 'A')
      .flatMap(
        ({ letter }) => comparedOf(trial, { fittings, letter, spread, main: name === trial.verdict, read }) ?? [],
      ),
  }
}

function fittingsSaid({ liners }: Trial, runs: readonly TrialRun[]): string {
  const fittings = fittingsOf(runs.map(run => ({ run, value: run.speed })))
  return liners
    .map(({ letter }) => `${letter} has ${fittings.filter(({ liner }) => liner === letter).length}`)
    .join(' and ')
    .concat(' fittings that count')
}
