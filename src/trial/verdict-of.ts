import { fixed } from '../figures.ts'
import type { LinerLetter } from '../part/trial.ts'
import type { Budget } from './budget.ts'

/** What a trial shows, of power: never that two liners are equal. */
export type TrialVerdict = {
  readonly outcome: 'more' | 'less' | 'alike' | 'not shown'
  /** A difference, or that it lies within what matters, is shown. */
  readonly shown: boolean
  readonly says: string
}

const percent = (share: number): string => `${share < 0 ? '−' : share > 0 ? '+' : ''}${fixed(Math.abs(100 * share), 2)}`
const plain = (share: number): string => String(Number((100 * share).toFixed(2)))

/** `delta` and `worthwhile` are shares of power; the first row that fits, from the strictest down. */
export function verdictOf({
  letter,
  delta,
  budget,
  worthwhile,
  confidence,
}: {
  readonly letter: LinerLetter
  readonly delta: number
  readonly budget: Budget
  readonly worthwhile: number
  readonly confidence: number
}): TrialVerdict {
  const half = budget.half(confidence)
  const [from, to] = [delta - half, delta + half]
  if (from > 0 || to < 0) {
    const outcome = delta > 0 ? 'more' : 'less'
    const [near, far] = delta > 0 ? [from, to] : [-to, -from]
    const small = far < worthwhile ? `, but less than the ${plain(worthwhile)} % that matters` : ''
    return {
      outcome,
      shown: true,
      says: `${letter} gives ${outcome} power than A: between ${fixed(100 * near, 2)} and ${fixed(100 * far, 2)} %${small}`,
    }
  }
  // Two one-sided tests at 5 %, so that the interval is the narrower one.
  const narrow = budget.half(1 - 2 * (1 - confidence))
  if (delta - narrow > -worthwhile && delta + narrow < worthwhile)
    return { outcome: 'alike', shown: true, says: `${letter} and A are alike within ±${plain(worthwhile)} % of power` }
  return {
    outcome: 'not shown',
    shown: false,
    says: `${letter} is not shown to differ from A: it may be anything from ${percent(from)} to ${percent(to)} % of power`,
  }
}
