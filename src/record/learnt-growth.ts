import { studentT } from '../handbook/student-t.ts'
import type { Millimetre } from '../units.ts'

/** Of one piece, by its serial: level means at the same marked places, at 20 °C, before and after. */
export type Pair = { readonly serial: string; readonly before: Millimetre; readonly after: Millimetre }

export type LearntGrowth = {
  readonly pieces: number
  /** Per side, positive where metal grows. */
  readonly mean: Millimetre
  readonly spread: Millimetre
  /** Half widths at 95 %: of the mean, of one more piece of the load, of all of so many more. */
  readonly ofMean: Millimetre
  readonly ofNext: Millimetre
  readonly ofAll: Millimetre
  /** What the mean would stand at, were before and after two lists without serials. */
  readonly unpaired: Millimetre
  /** Spread without what the gauge puts in, where its repeatability is known. */
  readonly own?: Millimetre
  /** Two serials that look exchanged. */
  readonly exchanged?: readonly [string, string]
}

const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0)
export const meanOf = (values: readonly number[]): number => total(values) / values.length
export const spreadOf = (values: readonly number[]): number => {
  const middle = meanOf(values)
  return Math.sqrt(total(values.map(value => (value - middle) ** 2)) / (values.length - 1))
}

/** A side, positive where metal grows: an outside becomes larger, a bore smaller. */
export const grownBy = (kind: 'outside' | 'bore', { before, after }: Omit<Pair, 'serial'>): Millimetre =>
  (kind === 'outside' ? 0.5 : -0.5) * (after - before)

/** What hardening did to one surface of one load, from the same pieces before and after. Range: two pieces or more; `more` from 1. */
export function learnGrowth({
  kind,
  pairs,
  more,
  repeatability,
}: {
  readonly kind: 'outside' | 'bore'
  readonly pairs: readonly Pair[]
  readonly more: number
  /** Of one mean diameter. */
  readonly repeatability?: Millimetre | undefined
}): LearntGrowth {
  const sign = kind === 'outside' ? 0.5 : -0.5
  const growth = pairs.map(pair => grownBy(kind, pair))
  const n = growth.length
  const spread = spreadOf(growth)
  const one = spread * Math.sqrt(1 + 1 / n)
  const exchanged = exchangedSerials(pairs, sign)
  return {
    pieces: n,
    mean: meanOf(growth),
    spread,
    ofMean: (studentT(0.975, n - 1) * spread) / Math.sqrt(n),
    ofNext: studentT(0.975, n - 1) * one,
    ofAll: studentT(1 - 0.025 / more, n - 1) * one,
    unpaired: unpairedHalfWidth(pairs),
    ...(repeatability !== undefined && { own: withoutGaugeNoise(spread, repeatability) }),
    ...(exchanged && { exchanged }),
  }
}

/** A pair that treats before and after as two lists, at 95 %: what it would cost not to know the serials. Welch. */
function unpairedHalfWidth(pairs: readonly Pair[]): Millimetre {
  const [v1, v2] = [pairs.map(({ before }) => before), pairs.map(({ after }) => after)].map(
    list => spreadOf(list) ** 2 / list.length,
  ) as [number, number]
  const nu = (v1 + v2) ** 2 / ((v1 ** 2 + v2 ** 2) / (pairs.length - 1))
  return (studentT(0.975, nu) * Math.sqrt(v1 + v2)) / 2
}

/** Spread of the growth itself: what the repeatability of a mean diameter put in is taken out. */
const withoutGaugeNoise = (spread: Millimetre, repeatability: Millimetre): Millimetre =>
  Math.sqrt(Math.max(0, spread ** 2 - repeatability ** 2 / 2))

/** A deviation is far where it passes three times the spread that the median deviation tells of. */
const FAR = 3 * 1.4826

const median = (values: readonly number[]): number => {
  const sorted = values.toSorted((one, other) => one - other)
  const middle = sorted.length / 2
  const [low, high] = [sorted[Math.ceil(middle) - 1], sorted[Math.floor(middle)]]
  return ((low ?? 0) + (high ?? 0)) / 2
}

/** Two pieces far off to opposite sides, which exchanging their later sizes brings both back. */
function exchangedSerials(pairs: readonly Pair[], sign: number): readonly [string, string] | undefined {
  const growth = pairs.map(({ before, after }) => sign * (after - before))
  const middle = median(growth)
  const far = FAR * median(growth.map(value => Math.abs(value - middle)))
  const near = (value: number) => Math.abs(value - middle) <= far
  const off = pairs.filter((_, index) => !near(growth[index] ?? middle))
  const [one, other] = off
  if (!one || !other || off.length !== 2) return undefined
  const swapped = [other.after - one.before, one.after - other.before].map(difference => sign * difference)
  return swapped.every(near) ? [one.serial, other.serial] : undefined
}
