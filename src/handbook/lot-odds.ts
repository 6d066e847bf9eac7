import { type Formula, formula, type Input } from '../formula.ts'

const pieces = (meaning: string, from: number): Input<'pieces'> => ({
  meaning,
  unit: 'pieces',
  from,
  upTo: 1000,
  whole: true,
})

/**
 * The hypergeometric sum: exact for a lot that is finite, as every lot of a small works is. The binomial distribution,
 * right for a long series, is too kind to a small lot's sample.
 */
export const chanceOfAcceptance: Formula<{ N: 'pieces'; D: 'pieces'; n: 'pieces'; Ac: 'pieces' }, ''> = formula({
  symbol: 'P_a',
  meaning: 'chance that the sample passes the lot',
  unit: '',
  expression:
    'sum(map(max(0, n + D - N):min(Ac, D, n), found(k) = combinations(D, k) * combinations(N - D, n - k) / combinations(N, n)))',
  inputs: {
    N: pieces('pieces in the lot', 1),
    D: pieces('nonconforming pieces among them', 0),
    n: pieces('pieces in the sample', 1),
    Ac: { ...pieces('nonconforming pieces in the sample that still pass the lot', 0), upTo: 30 },
  },
  source: 'derived: hypergeometric distribution',
  example: { given: { N: 40, D: 4, n: 5, Ac: 0 }, gives: 0.5729 },
  value: ({ N, D, n, Ac }) => {
    if (D > N || n > N) throw new RangeError(`P_a: D and n must be up to N = ${N}, got ${D} and ${n}`)
    let sum = 0
    for (let found = Math.max(0, n + D - N); found <= Math.min(Ac, D, n); found++) {
      sum += Math.exp(logChoose(D, found) + logChoose(N - D, n - found) - logChoose(N, n))
    }
    return Math.min(1, sum)
  },
})

/** Logarithm of the number of ways to choose, as a sum: the factorials of a large lot overflow. */
function logChoose(from: number, choose: number): number {
  let sum = 0
  for (let i = 1; i <= Math.min(choose, from - choose); i++) sum += Math.log((from - i + 1) / i)
  return sum
}

export const rejectableCount: Formula<{ q: ''; N: 'pieces' }, 'pieces'> = formula({
  symbol: 'D',
  meaning: 'nonconforming pieces in a lot that should not pass',
  unit: 'pieces',
  // A hundredth of a millionth off, since a share of the lot that is whole must stay whole in binary.
  expression: 'ceil(q * N - 1e-8)',
  inputs: {
    q: { meaning: 'share of nonconforming pieces that should not pass', unit: '', over: 0, upTo: 1 },
    N: pieces('pieces in the lot', 1),
  },
  source: 'derived: the next whole piece',
  example: { given: { q: 0.07, N: 100 }, gives: 7 },
  value: ({ q, N }) => Math.ceil(q * N - 1e-8),
})

/**
 * Smallest sample that, accepted on no nonconforming piece, passes a lot with `bad` of them with a chance of 1 − confidence
 * at the most.
 *
 * Range:   1 ≤ bad ≤ lot ≤ 1000; 0 < confidence < 1.
 * Source:  derived: hypergeometric distribution.
 *
 * @example zeroAcceptanceSize(25, 3, 0.95) // 16
 */
export function zeroAcceptanceSize(lot: number, bad: number, confidence: number): number {
  for (let n = 1; n < lot; n++) {
    if (chanceOfAcceptance.value({ N: lot, D: bad, n, Ac: 0 }) <= 1 - confidence + 1e-12) return n
  }
  return lot
}
