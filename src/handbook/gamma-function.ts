/** Lanczos coefficients, g = 7, n = 9. Source: memory: Godfrey's table, as reprinted in numerical texts; tested against a general library. */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
] as const

/** Natural logarithm of the gamma function. Range: x over 0. */
export function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x)
  const t = x + 6.5
  const sum = LANCZOS.reduce((total, c, index) => total + (index === 0 ? c : c / (x - 1 + index)), 0)
  return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(t) - t + Math.log(sum)
}

/** The gamma function. Range: x over 0. @example gamma(1.5882352941) gives 0.8922 */
export const gamma = (x: number): number => Math.exp(logGamma(x))
