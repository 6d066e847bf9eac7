import { noncentralTBelowOf } from '../handbook/noncentral-t.ts'
import { studentT } from '../handbook/student-t.ts'
import { budgetOf, type Share } from './budget.ts'

/** More fittings of one liner nobody will do. */
const MOST = 60

/** Degrees of freedom that a trial of `liners` leaves, each fitted n times, with a mean and a drift for each block. */
const freedomOf = (n: number, liners = 2, blocks = 1): number => liners * n - (liners - 1) - 2 * blocks

/**
 * Least number of fittings each after which the interval is so short that the trial must show either a difference or that all of
 * it lies within what matters: its half is no longer than half of that. `s` is the spread of a fitting's mean. Nothing where no
 * number does, since the rest of the budget alone is too wide.
 */
export function fittingsToSettle({
  s,
  worthwhile,
  others = [],
  liners = 2,
  blocks = 1,
  confidence = 0.95,
}: {
  readonly s: number
  readonly worthwhile: number
  readonly others?: readonly Share[]
  readonly liners?: number
  readonly blocks?: number
  readonly confidence?: number
}): number | undefined {
  for (let n = 2; n <= MOST; n++) {
    const freedom = freedomOf(n, liners, blocks)
    if (freedom < 1) continue
    const budget = budgetOf([{ what: 'fittings', u: s * Math.sqrt(2 / n), freedom }, ...others])
    if (budget.half(confidence) <= worthwhile / 2) return n
  }
  return undefined
}

/** Smallest difference that n fittings each show at 5 % with that chance, in units of the spread of a fitting's mean. */
export function smallestShown(n: number, chance: number): number {
  const freedom = freedomOf(n)
  const t = studentT(0.975, freedom)
  const below = noncentralTBelowOf(freedom)
  const shown = (delta: number) => 1 - below(t, delta) + below(-t, delta)
  let [low, high] = [0, 40]
  for (let round = 0; round < 50; round++) {
    const middle = (low + high) / 2
    if (shown(middle) < chance) low = middle
    else high = middle
  }
  return low * Math.sqrt(2 / n)
}

/** Half of the 95 % interval in the same units. */
export const halfInterval = (n: number): number => studentT(0.975, freedomOf(n)) * Math.sqrt(2 / n)
