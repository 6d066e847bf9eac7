import { airDensity } from '../handbook/air.ts'
import { CORRECTIONS, type CorrectionRule, referenceSpeed } from '../handbook/power-correction.ts'
import { studentT } from '../handbook/student-t.ts'
import type { LinerLetter, Trial, TrialRun } from '../part/trial.ts'
import { airOf, correctionOf } from './air-of-runs.ts'
import { differenceOf, fittingsOf, meanOf } from './fitted.ts'
import { MEASURES } from './measures.ts'

/** What a rule of correction makes of the trial: beside the verdict, never in its place. */
export type Corrected = {
  readonly rule: CorrectionRule
  readonly source: string
  /** Least and most factor of the runs, and what the rule is good for. */
  readonly least: number
  readonly most: number
  readonly from: number
  readonly upTo: number
  readonly within: boolean
  readonly differences: readonly {
    readonly liner: LinerLetter
    /** Shares of the old liner's corrected power. */
    readonly difference: number
    readonly half: number
  }[]
  /** rpm on this load in the air of reference, by how steeply the engine's power goes with speed. */
  readonly referenceSpeeds?: readonly { readonly liner: LinerLetter; readonly flat: number; readonly steep: number }[]
}

/** 25 °C and 990 hPa, dry: the air of reference of SAE J1349. */
const REFERENCE = airDensity.value({ p: 99_000, p_v: 0, t: 25 })

export function correctedOf(trial: Trial, runs: readonly TrialRun[]): Corrected | undefined {
  const rule = trial.correction
  if (rule === undefined) return undefined
  const read = runs.flatMap(run => {
    const [correction, air] = [correctionOf(run, rule), airOf(run)]
    const power =
      trial.verdict === 'power' ? MEASURES.find(({ name }) => name === 'power')?.of(run, trial) : run.speed ** 3
    if (!correction || !air || power === undefined) return []
    const inAir = trial.load.kind === 'propeller' ? air.density : 1
    return [{ run, value: correction.factor * inAir * power, correction, air }]
  })
  if (read.length < runs.length) return undefined
  const fittings = fittingsOf(read)
  const old = meanOf(fittings.filter(({ liner }) => liner === 'A').map(({ mean }) => mean))
  const confidence = 1 - 0.05 / (trial.liners.length - 1)
  const factors = read.map(({ correction }) => correction.factor)
  const { source, from, upTo } = CORRECTIONS[rule]
  const speedAt = (q: number, letter: LinerLetter): number =>
    meanOf(
      read
        .filter(({ run }) => run.liner === letter)
        .map(({ run, correction, air }) =>
          referenceSpeed.value({
            n: run.speed,
            CF: correction.factor,
            r: trial.load.kind === 'propeller' ? air.density / REFERENCE : 1,
            q,
          }),
        ),
    )
  return {
    rule,
    source,
    least: Math.min(...factors),
    most: Math.max(...factors),
    from,
    upTo,
    within: read.every(({ correction }) => correction.within),
    differences: trial.liners.flatMap(({ letter }) => {
      const estimate = letter === 'A' ? undefined : differenceOf(fittings, letter)
      if (!estimate) return []
      const half = (studentT((1 + confidence) / 2, estimate.freedom) * estimate.se) / old
      return [{ liner: letter, difference: estimate.value / old, half }]
    }),
    ...(trial.verdict === 'speed' && {
      referenceSpeeds: trial.liners.map(({ letter }) => ({
        liner: letter,
        flat: speedAt(0, letter),
        steep: speedAt(1, letter),
      })),
    }),
  }
}
