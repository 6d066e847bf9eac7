import { chiSquare, quantileOf } from '../handbook/chi-square.ts'
import { noncentralTBelowOf, toleranceFactor } from '../handbook/noncentral-t.ts'
import { meanOf, spreadOf } from './learnt-growth.ts'

export type Capability = {
  readonly pieces: number
  readonly mean: number
  readonly spread: number
  /** 95 % of the process lies there, with a confidence of 95 %. */
  readonly holds: { readonly from: number; readonly to: number }
  /** Of two limits: how often the spread goes into the tolerance, with its limits at 95 %. */
  readonly Pp?: { readonly value: number; readonly from: number; readonly to: number }
  /** To the nearer limit, with the limit that it passes with a confidence of 95 %. */
  readonly Ppk: { readonly value: number; readonly from: number; readonly by: 'lower' | 'upper' }
}

/** Fewer say nothing. */
const LEAST = 5
/** Of the process, and of confidence. */
export const SHARE = 0.95

/**
 * Capability of what was measured, with its lower limit: an index alone of fewer than 25 pieces is printed by nobody who has to stand
 * by it. `factor` is the tolerance factor of so many pieces where it is known. Absent for fewer than five pieces and where they are all alike. Source: textbook statistics; ISO 22514 for the names (memory).
 */
export function capability(
  values: readonly number[],
  { lower, upper }: { readonly lower?: number; readonly upper?: number },
  factor?: number,
): Capability | undefined {
  const n = values.length
  if (n < LEAST) return undefined
  const [mean, spread] = [meanOf(values), spreadOf(values)]
  if (spread === 0) return undefined
  const sides = [
    ...(lower === undefined ? [] : [{ by: 'lower' as const, value: (mean - lower) / (3 * spread) }]),
    ...(upper === undefined ? [] : [{ by: 'upper' as const, value: (upper - mean) / (3 * spread) }]),
  ]
  const [side] = sides.toSorted((one, other) => one.value - other.value)
  if (!side) return undefined
  const Pp = lower !== undefined && upper !== undefined ? (upper - lower) / (6 * spread) : undefined
  const ofPp = (q: number) => (Pp ?? 0) * Math.sqrt(chiSquare(q, n - 1) / (n - 1))
  return {
    pieces: n,
    mean,
    spread,
    holds: holdsOf(mean, spread, factor ?? toleranceFactor(n, SHARE, SHARE)),
    ...(Pp !== undefined && { Pp: { value: Pp, from: ofPp(0.025), to: ofPp(0.975) } }),
    Ppk: { ...side, from: surely(side.value, n) },
  }
}

const holdsOf = (mean: number, spread: number, factor: number) => ({
  from: mean - factor * spread,
  to: mean + factor * spread,
})

/** Exact lower limit at 95 % of an index to one side: the noncentrality at which the one seen is seen or passed once in twenty. */
export function surely(index: number, n: number): number {
  const t = 3 * Math.sqrt(n) * index
  const below = noncentralTBelowOf(n - 1)
  // The chance falls with delta: turned over, so that it rises.
  const delta = quantileOf(d => 1 - below(t, d), 0.05, -40)
  return delta / (3 * Math.sqrt(n))
}
