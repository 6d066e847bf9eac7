import { studentT } from '../handbook/student-t.ts'

/** One share of the doubt, standard uncertainty with its degrees of freedom. */
export type Share = { readonly what: string; readonly u: number; readonly freedom: number }

export type Budget = {
  readonly shares: readonly Share[]
  /** Combined standard uncertainty. */
  readonly u: number
  /** Degrees of freedom that it is worth, rounded down. */
  readonly freedom: number
  /** Half width of the interval at the confidence asked. */
  readonly half: (confidence: number) => number
}

/** Combined as in JCGM 100:2008, G.4 (Welch and Satterthwaite). */
export function budgetOf(shares: readonly Share[]): Budget {
  const u = Math.sqrt(shares.reduce((sum, share) => sum + share.u ** 2, 0))
  const weight = shares.reduce((sum, share) => sum + share.u ** 4 / share.freedom, 0)
  // Without the last digits a budget of one share would lose a whole degree to rounding.
  const freedom = weight === 0 ? 1 : Math.max(1, Math.floor(u ** 4 / weight + 1e-9))
  return { shares, u, freedom, half: confidence => studentT((1 + confidence) / 2, freedom) * u }
}
