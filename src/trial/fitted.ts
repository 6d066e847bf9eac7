import type { LinerLetter, TrialRun } from '../part/trial.ts'
import { type Estimate, estimateOf } from './least-squares.ts'

/** One fitting: a liner put in, run and taken out. It is what is repeated, not the reading. */
export type Fitting = {
  readonly number: number
  readonly liner: LinerLetter
  readonly block: string
  readonly runs: number
  readonly mean: number
}

export type ReadRun = { readonly run: TrialRun; readonly value: number }

/** The means of the fittings, in order. */
export function fittingsOf(read: readonly ReadRun[]): readonly Fitting[] {
  const numbers = [...new Set(read.map(({ run }) => run.fitting))]
  return numbers.flatMap(number => {
    const own = read.filter(({ run }) => run.fitting === number)
    const [first] = own
    return first
      ? [
          {
            number,
            liner: first.run.liner,
            block: first.run.block,
            runs: own.length,
            mean: meanOf(own.map(({ value }) => value)),
          },
        ]
      : []
  })
}

export const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length

/** Columns of the fit beside that of one liner: a mean and a drift for each block, and the other liners. */
export function columnsBeside(fittings: readonly Fitting[], letter: LinerLetter): readonly (readonly number[])[] {
  const liners = [...new Set(fittings.map(({ liner }) => liner))].filter(liner => liner !== 'A' && liner !== letter)
  return [...blockColumns(fittings), ...liners.map(liner => markOf(fittings, liner))]
}

export const markOf = (fittings: readonly Fitting[], letter: LinerLetter): readonly number[] =>
  fittings.map(({ liner }) => (liner === letter ? 1 : 0))

const meansOfBlocks = (fittings: readonly Fitting[]): readonly (readonly number[])[] =>
  blocksOf(fittings).map(block => fittings.map(fitting => (fitting.block === block ? 1 : 0)))

export const blocksOf = (fittings: readonly Fitting[]): readonly string[] => [
  ...new Set(fittings.map(({ block }) => block)),
]

const driftsOfBlocks = (fittings: readonly Fitting[]): readonly (readonly number[])[] =>
  blocksOf(fittings).map(block => {
    const middle = meanOf(fittings.filter(fitting => fitting.block === block).map(({ number }) => number))
    return fittings.map(fitting => (fitting.block === block ? fitting.number - middle : 0))
  })

const blockColumns = (fittings: readonly Fitting[]) => [...meansOfBlocks(fittings), ...driftsOfBlocks(fittings)]

/** Difference of a liner from the old one, drift taken out. */
export const differenceOf = (fittings: readonly Fitting[], letter: LinerLetter): Estimate | undefined =>
  estimateOf(
    fittings.map(({ mean }) => mean),
    markOf(fittings, letter),
    columnsBeside(fittings, letter),
  )

/** How much a fitting more adds by itself, in each block. */
export function driftOf(fittings: readonly Fitting[]): readonly { readonly block: string; readonly each: number }[] {
  const drifts = driftsOfBlocks(fittings)
  const liners = [...new Set(fittings.map(({ liner }) => liner))].filter(liner => liner !== 'A')
  const marks = liners.map(liner => markOf(fittings, liner))
  return blocksOf(fittings).flatMap((block, index) => {
    const column = drifts[index]
    const others = [...meansOfBlocks(fittings), ...drifts.filter((_, i) => i !== index), ...marks]
    const estimate =
      column &&
      estimateOf(
        fittings.map(({ mean }) => mean),
        column,
        others,
      )
    return estimate ? [{ block, each: estimate.value }] : []
  })
}

/** Spread of the runs about the mean of their fitting, all fittings together. */
export function spreadOfRuns(read: readonly ReadRun[]): number | undefined {
  const fittings = fittingsOf(read)
  const freedom = read.length - fittings.length
  if (freedom < 1) return undefined
  const about = new Map(fittings.map(({ number, mean }) => [number, mean]))
  const sum = read.reduce((total, { run, value }) => total + (value - (about.get(run.fitting) ?? value)) ** 2, 0)
  return Math.sqrt(sum / freedom)
}

/** Half width of the 95 % interval that drift left in as noise would give; Welch. */
export function withoutDrift(
  fittings: readonly Fitting[],
  letter: LinerLetter,
): { readonly difference: number; readonly se: number; readonly freedom: number } | undefined {
  const groups = (['A', letter] as const).map(liner =>
    fittings.filter(fitting => fitting.liner === liner).map(({ mean }) => mean),
  )
  const parts = groups.map(values => {
    const mean = meanOf(values)
    const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1) / values.length
    return { mean, variance, freedom: values.length - 1 }
  })
  const [a, b] = parts
  if (!a || !b || a.freedom < 1 || b.freedom < 1) return undefined
  const variance = a.variance + b.variance
  if (variance === 0) return undefined
  const freedom = variance ** 2 / (a.variance ** 2 / a.freedom + b.variance ** 2 / b.freedom)
  return { difference: b.mean - a.mean, se: Math.sqrt(variance), freedom }
}
