import { normalBelow } from '../handbook/normal.ts'
import { studentT } from '../handbook/student-t.ts'
import { meanOf, spreadOf } from './learnt-growth.ts'

/** Pieces in the order of their making. */
export type RunChart = {
  readonly mean: number
  /** Mean of the steps from piece to piece, and the spread within the process that they tell of. */
  readonly meanStep: number
  readonly spread: number
  readonly lower: number
  readonly upper: number
  readonly mostStep: number
}

/** Control limits of single values from the steps between neighbours; nothing of fewer than eight. Constants: derived from d₂ = 1.128. */
export function runChart(values: readonly number[]): RunChart | undefined {
  if (values.length < 8) return undefined
  const meanStep = meanOf(stepsOf(values))
  const mean = meanOf(values)
  return {
    mean,
    meanStep,
    spread: meanStep / 1.128,
    lower: mean - 2.659 * meanStep,
    upper: mean + 2.659 * meanStep,
    mostStep: 3.267 * meanStep,
  }
}

const stepsOf = (values: readonly number[]): readonly number[] =>
  values.slice(1).map((value, index) => Math.abs(value - (values[index] ?? value)))

export type Trend = {
  /** Mann-Kendall: rises less falls over all pairs. */
  readonly S: number
  /** Chance of a run that leans as much or more, were there no trend. */
  readonly chance: number
  /** Theil-Sen: median slope a piece. */
  readonly slope: number
}

const rising = (values: readonly number[]): number => {
  let sum = 0
  for (let i = 0; i < values.length; i++)
    for (let j = i + 1; j < values.length; j++) sum += Math.sign((values[j] ?? 0) - (values[i] ?? 0))
  return sum
}

/** Does a run lean? Exact up to twenty pieces without ties, by the normal approximation beyond. Range: five pieces or more. */
export function trendOf(values: readonly number[]): Trend | undefined {
  const lean = leanOf(values)
  return lean && { ...lean, slope: theilSen(values) }
}

/** The same without its slope, which takes every pair of pieces in order. */
export function leanOf(values: readonly number[]): Omit<Trend, 'slope'> | undefined {
  const n = values.length
  if (n < 5) return undefined
  const S = rising(values)
  const groups = new Map<number, number>()
  for (const value of values) groups.set(value, (groups.get(value) ?? 0) + 1)
  const ties = [...groups.values()].filter(count => count > 1)
  const chance = n > 20 || ties.length > 0 ? chanceByNormal(S, n, ties) : exactChance(S, n)
  return { S, chance }
}

const varianceOfS = (n: number, ties: readonly number[]): number =>
  (n * (n - 1) * (2 * n + 5) - ties.reduce((sum, t) => sum + t * (t - 1) * (2 * t + 5), 0)) / 18

/** Standard normal of S, drawn in by one. */
export const trendZ = (S: number, n: number, ties: readonly number[] = []): number =>
  (S - Math.sign(S)) / Math.sqrt(varianceOfS(n, ties))

const chanceByNormal = (S: number, n: number, ties: readonly number[]): number =>
  2 * normalBelow(-Math.abs(trendZ(S, n, ties)))

/** Share of all orders of n pieces that lean as much, either way: orders counted by their inversions. */
export function exactChance(S: number, n: number): number {
  let counts = [1]
  for (let pieces = 2; pieces <= n; pieces++) {
    const before = counts
    counts = Array.from({ length: before.length + pieces - 1 }, (_, k) => {
      let sum = 0
      for (let j = Math.max(0, k - pieces + 1); j <= Math.min(k, before.length - 1); j++) sum += before[j] ?? 0
      return sum
    })
  }
  const pairs = (n * (n - 1)) / 2
  const all = counts.reduce((sum, count) => sum + count, 0)
  const asMuch = counts.reduce((sum, count, k) => (Math.abs(pairs - 2 * k) >= Math.abs(S) ? sum + count : sum), 0)
  return asMuch / all
}

function theilSen(values: readonly number[]): number {
  const slopes = values.flatMap((one, i) => values.slice(i + 1).map((other, j) => (other - one) / (j + 1)))
  const sorted = slopes.toSorted((one, other) => one - other)
  const middle = sorted.length / 2
  return ((sorted[Math.ceil(middle) - 1] ?? 0) + (sorted[Math.floor(middle)] ?? 0)) / 2
}

/** A value to measure again: the one furthest off, where it passes Grubbs' limit. It is never dropped by this. */
export function askAgain(values: readonly number[]): { readonly index: number; readonly spreads: number } | undefined {
  const n = values.length
  if (n < 5) return undefined
  const [mean, spread] = [meanOf(values), spreadOf(values)]
  if (spread === 0) return undefined
  const off = values.map(value => Math.abs(value - mean) / spread)
  const spreads = Math.max(...off)
  return spreads > grubbs(n) ? { index: off.indexOf(spreads), spreads } : undefined
}

/** Grubbs' limit to both sides at 5 %. */
export function grubbs(n: number): number {
  const t = studentT(1 - 0.05 / (2 * n), n - 2)
  return ((n - 1) / Math.sqrt(n)) * Math.sqrt(t ** 2 / (n - 2 + t ** 2))
}
