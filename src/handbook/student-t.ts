import { logGamma } from './gamma-function.ts'

const CLOSE = 1e-15
const TINY = 1e-300

/** Continued fraction of the incomplete beta function. Source: memory: textbook numerical analysis. */
function betaFraction(a: number, b: number, x: number): number {
  let c = 1
  let d = 1 - ((a + b) * x) / (a + 1)
  d = 1 / (Math.abs(d) < TINY ? TINY : d)
  let h = d
  for (let m = 1; m < 500; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
    d = 1 / (1 + even * d)
    c = 1 + even / c
    h *= d * c
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1))
    d = 1 / (1 + odd * d)
    c = 1 + odd / c
    h *= d * c
    if (Math.abs(d * c - 1) < CLOSE) break
  }
  return h
}

/** Regularised incomplete beta function I_x(a, b). Range: a, b over 0, x from 0 to 1. Tested against a general library. */
export function betaShare(a: number, b: number, x: number): number {
  if (x <= 0) return 0
  if (x >= 1) return 1
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x))
  return x < (a + 1) / (a + b + 2) ? (front * betaFraction(a, b, x)) / a : 1 - (front * betaFraction(b, a, 1 - x)) / b
}

/**
 * Quantile of Student's distribution: the value that a share of it lies below. Range: q from 0.5 under 1, nu from 1.
 * @example studentT(0.975, 3) gives 3.18245
 */
export function studentT(q: number, nu: number): number {
  const below = (t: number) => 1 - betaShare(nu / 2, 0.5, nu / (nu + t * t)) / 2
  let low = 0
  let high = 1
  while (below(high) < q && high < 1e9) high *= 2
  for (let round = 0; round < 200 && high - low > 1e-12 * high; round++) {
    const middle = (low + high) / 2
    if (below(middle) < q) low = middle
    else high = middle
  }
  return (low + high) / 2
}
