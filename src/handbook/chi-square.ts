import { lowerGammaShareOf } from './gamma-function.ts'
import { betaShare } from './student-t.ts'

/** Chance that a sum of nu squared normal errors lies below x. Range: nu over 0, x from 0. */
export const chiSquareBelow = (x: number, nu: number): number => lowerGammaShareOf(nu / 2)(x / 2)

/**
 * Value that a share of a distribution lies below, by halving. `below` must rise from 0 at `from`.
 * Range: q over 0 and under 1.
 */
export function quantileOf(below: (x: number) => number, q: number, from = 0): number {
  let low = from
  let high = from + 1
  while (below(high) < q && high - from < 1e12) high = from + 2 * (high - from)
  for (let round = 0; round < 200 && high - low > 1e-13 * Math.max(1, Math.abs(high)); round++) {
    const middle = (low + high) / 2
    if (below(middle) < q) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/** Quantile of the chi-square distribution. @example chiSquare(0.05, 24) gives 13.8484 */
export const chiSquare = (q: number, nu: number): number => quantileOf(x => chiSquareBelow(x, nu), q)

/** Quantile of the F distribution: the ratio of two mean squares with a and b degrees of freedom. @example fRatio(0.95, 2, 22) gives 3.4434 */
export const fRatio = (q: number, a: number, b: number): number =>
  quantileOf(x => betaShare(a / 2, b / 2, (a * x) / (a * x + b)), q)

/**
 * Chance that a sum of nu squared normal errors, the mean of which is off zero by `apart` squared in all, lies below x: the
 * chi-square distributions of nu + 2j weighted by Poisson's chances. Source: textbook statistics.
 */
export function chiSquareApartBelow(x: number, nu: number, apart: number): number {
  const mean = apart / 2
  let weight = Math.exp(-mean)
  let sum = 0
  let seen = 0
  for (let j = 0; j < 10_000 && 1 - seen > 1e-13; j++) {
    sum += weight * chiSquareBelow(x, nu + 2 * j)
    seen += weight
    weight *= mean / (j + 1)
  }
  return sum
}
