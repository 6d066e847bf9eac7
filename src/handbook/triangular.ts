import { type Formula, formula } from '../formula.ts'

type Ends = { a: ''; c: ''; b: '' }
const ENDS = {
  a: { meaning: 'least', unit: '', from: 0, upTo: 1e9 },
  c: { meaning: 'most likely', unit: '', from: 0, upTo: 1e9 },
  b: { meaning: 'most', unit: '', from: 0, upTo: 1e9 },
} as const

export const triangularMean: Formula<Ends, ''> = formula({
  symbol: 'mu_t',
  meaning: 'mean of what lies between a least and a most, likeliest at one place',
  unit: '',
  expression: '(a + c + b) / 3',
  inputs: ENDS,
  source: 'textbook: triangular distribution',
  example: { given: { a: 2, c: 3, b: 7 }, gives: 4 },
  value: ({ a, c, b }) => (a + c + b) / 3,
})

export const triangularVariance: Formula<Ends, ''> = formula({
  symbol: 'V_t',
  meaning: 'variance of what lies between a least and a most, likeliest at one place',
  unit: '',
  expression: '(a^2 + b^2 + c^2 - a * b - a * c - b * c) / 18',
  inputs: ENDS,
  source: 'textbook: triangular distribution',
  example: { given: { a: 0, c: 3, b: 3 }, gives: 0.5 },
  value: ({ a, c, b }) => (a ** 2 + b ** 2 + c ** 2 - a * b - a * c - b * c) / 18,
})

/**
 * Chance of no more than x, textbook: triangular distribution. A least that is the most is certain.
 *
 * @example chanceUpTo(2, { least: 0, usual: 1, most: 2 }) // 1
 */
export function chanceUpTo(
  x: number,
  { least: a, usual: c, most: b }: { readonly least: number; readonly usual: number; readonly most: number },
): number {
  if (x >= b) return 1
  if (x <= a) return 0
  return x <= c ? (x - a) ** 2 / ((b - a) * (c - a)) : 1 - (b - x) ** 2 / ((b - a) * (b - c))
}
