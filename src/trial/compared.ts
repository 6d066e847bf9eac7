import { betaShare, studentT } from '../handbook/student-t.ts'
import type { LinerLetter, Trial } from '../part/trial.ts'
import { airOf } from './air-of-runs.ts'
import { type Budget, budgetOf, type Share } from './budget.ts'
import {
  blocksOf,
  columnsBeside,
  differenceOf,
  type Fitting,
  markOf,
  meanOf,
  type ReadRun,
  withoutDrift,
} from './fitted.ts'
import { fittingsToSettle } from './fittings-needed.ts'
import { type Permutation, permutationOf } from './permutation.ts'
import { type TrialVerdict, verdictOf } from './verdict-of.ts'

/** One liner against the old one, in one measure. */
export type Compared = {
  readonly liner: LinerLetter
  /** Mean of the fittings of A. */
  readonly old: number
  /** In the unit of the measure, drift taken out. */
  readonly difference: number
  readonly se: number
  /** Spread of the mean of a fitting that the fit leaves. */
  readonly s: number
  readonly freedom: number
  /** Half of the interval. */
  readonly half: number
  /** That of each interval: two of them are each held closer, so that both hold together at 95 %. */
  readonly confidence: number
  /** Chance of as large a t were there no difference. */
  readonly p: number
  /** Of the fittings themselves, the spread of runs taken out. */
  readonly ofFittings?: number
  /** The drift left in as noise. */
  readonly withoutDrift?: { readonly difference: number; readonly half: number }
  /** Of the measure that is judged. */
  readonly power?: PowerCompared
}

export type PowerCompared = {
  /** Share of the old liner's power. */
  readonly difference: number
  readonly half: number
  /** How power goes with the measure: its cube, or itself. */
  readonly exponent: number
  /** Density of the air with this liner by that with the old one: a propeller's load goes with it. */
  readonly densityRatio?: number
  readonly budget: Omit<Budget, 'half'>
  readonly verdict: TrialVerdict
  readonly permutation?: Permutation
  /** Fittings of each liner that would settle it, where it is not settled. */
  readonly fittingsToSettle?: number
}

export function comparedOf(
  trial: Trial,
  of: {
    readonly fittings: readonly Fitting[]
    readonly letter: LinerLetter
    readonly spread: number | undefined
    readonly main: boolean
    readonly read: readonly ReadRun[]
  },
): Compared | undefined {
  const { fittings, letter, spread, main } = of
  const estimate = differenceOf(fittings, letter)
  if (!estimate) return undefined
  const { value: difference, se, s, freedom } = estimate
  const confidence = 1 - 0.05 / (trial.liners.length - 1)
  const old = meanOf(fittings.filter(({ liner }) => liner === 'A').map(({ mean }) => mean))
  const noisy = withoutDrift(fittings, letter)
  const runs = fittings.reduce((sum, one) => sum + one.runs, 0) / fittings.length
  return {
    liner: letter,
    old,
    difference,
    se,
    s,
    freedom,
    confidence,
    half: studentT((1 + confidence) / 2, freedom) * se,
    p: se === 0 ? 0 : betaShare(freedom / 2, 0.5, freedom / (freedom + (difference / se) ** 2)),
    ...(spread !== undefined && { ofFittings: Math.sqrt(Math.max(0, s ** 2 - spread ** 2 / runs)) }),
    ...(noisy && {
      withoutDrift: { difference: noisy.difference, half: studentT((1 + confidence) / 2, noisy.freedom) * noisy.se },
    }),
    ...(main && { power: powerOf(trial, of, { difference, se, s, freedom, old, confidence }) }),
  }
}

type Fit = Pick<Compared, 'difference' | 'se' | 's' | 'freedom' | 'old' | 'confidence'>

function powerOf(
  trial: Trial,
  { fittings, letter, read }: { fittings: readonly Fitting[]; letter: LinerLetter; read: readonly ReadRun[] },
  { difference, se, s, freedom, old, confidence }: Fit,
): PowerCompared {
  const exponent = trial.verdict === 'speed' ? 3 : 1
  const densityRatio = trial.load.kind === 'propeller' ? densitiesOf(read, letter) : undefined
  const share = (densityRatio ?? 1) * (1 + difference / old) ** exponent - 1
  const scale = exponent / old
  const others: readonly Share[] = trial.budget
  const budget = budgetOf([{ what: 'fittings', u: scale * se, freedom }, ...others])
  const verdict = verdictOf({ letter, delta: share, budget, worthwhile: trial.worthwhile, confidence })
  const blocks = blocksOf(fittings)
  const needed = verdict.shown
    ? undefined
    : fittingsToSettle({
        s: scale * s,
        worthwhile: trial.worthwhile,
        others,
        liners: trial.liners.length,
        blocks: blocks.length,
        confidence,
      })
  const permutation = permutationOf({
    y: fittings.map(({ mean }) => mean),
    isNew: markOf(fittings, letter).map(mark => mark === 1),
    among: fittings.map(({ liner }) => liner === letter || liner === 'A'),
    blocks: fittings.map(({ block }) => block),
    others: columnsBeside(fittings, letter),
  })
  return {
    difference: share,
    half: budget.half(confidence),
    exponent,
    ...(densityRatio !== undefined && { densityRatio }),
    budget: { shares: budget.shares, u: budget.u, freedom: budget.freedom },
    verdict,
    ...(permutation && { permutation }),
    ...(needed !== undefined && { fittingsToSettle: needed }),
  }
}

function densitiesOf(read: readonly ReadRun[], letter: LinerLetter): number | undefined {
  const densities = (liner: LinerLetter) =>
    read.filter(({ run }) => run.liner === liner).map(({ run }) => airOf(run)?.density)
  const [own, old] = [densities(letter), densities('A')]
  const known = (list: readonly (number | undefined)[]) => list.filter(value => value !== undefined)
  if (known(own).length < own.length || known(old).length < old.length || own.length === 0) return undefined
  return meanOf(known(own)) / meanOf(known(old))
}
