import { chiSquareBelow, quantileOf } from './chi-square.ts'
import { logGamma } from './gamma-function.ts'
import { normalBelow, normalDensity } from './normal.ts'

/** Intervals of Simpson's rule. */
const STEPS = 800

/**
 * Chance that (z + delta) over the root of a chi-square of nu by nu lies below t: the normal chance of t·s − delta averaged over
 * the density of s, by Simpson's rule. What hangs on nu alone is worked out once. Range: nu from 1. Source: textbook statistics.
 */
export function noncentralTBelowOf(nu: number): (t: number, delta: number) => number {
  const logFront = Math.log(2) + (nu / 2) * Math.log(nu / 2) - logGamma(nu / 2)
  const density = (s: number) => (s <= 0 ? 0 : Math.exp(logFront + (nu - 1) * Math.log(s) - (nu * s * s) / 2))
  const reach = 9 / Math.sqrt(2 * nu)
  const from = Math.max(0, 1 - reach)
  const h = (1 + reach + 2 / nu - from) / STEPS
  const shares = Array.from({ length: STEPS + 1 }, (_, i) => {
    const s = from + i * h
    const weight = i === 0 || i === STEPS ? 1 : i % 2 === 1 ? 4 : 2
    return { s, share: (weight * h * density(s)) / 3 }
  })
  return (t, delta) => shares.reduce((sum, { s, share }) => sum + share * normalBelow(t * s - delta), 0)
}

/** Quantile of the same. Range: q over 0 and under 1. */
function noncentralT(q: number, nu: number, delta: number): number {
  const below = noncentralTBelowOf(nu)
  return quantileOf(t => below(t, delta), q, -50)
}

/**
 * Factor k: at least a share of the process lies within mean ± k·s with that confidence, n pieces measured.
 * Source: memory: ISO 16269-6; the 95/95 row agrees with a printed table for n = 5 to 30.
 */
export function toleranceFactor(n: number, share: number, confidence: number): number {
  const tail = (1 - share) / 2
  const half = (v: number) => quantileOf(r => normalBelow(v + r) - normalBelow(v - r), 1 - 2 * tail)
  const spread = 1 / Math.sqrt(n)
  const points = Array.from({ length: 81 }, (_, index) => (index * 6 * spread) / 80)
  const halves = points.map(half)
  const chance = (k: number): number => {
    const terms = points.map((v, index) => {
      const x = ((n - 1) * (halves[index] ?? 0) ** 2) / k ** 2
      const weight = index === 0 || index === 80 ? 1 : index % 2 === 1 ? 4 : 2
      return (weight * (1 - chiSquareBelow(x, n - 1)) * normalDensity(v / spread)) / spread
    })
    return (2 * terms.reduce((sum, term) => sum + term, 0) * 6 * spread) / 80 / 3
  }
  return quantileOf(k => (k <= 0 ? 0 : chance(k)), confidence)
}

/** The same to one side only: mean + k·s. */
export const oneSidedToleranceFactor = (n: number, share: number, confidence: number): number =>
  noncentralT(confidence, n - 1, quantileNormal(share) * Math.sqrt(n)) / Math.sqrt(n)

const quantileNormal = (q: number): number => quantileOf(normalBelow, q, -40)
