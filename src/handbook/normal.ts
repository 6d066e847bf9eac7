import { lowerGammaShareOf } from './gamma-function.ts'

const halfShare = lowerGammaShareOf(0.5)

/** Share of a normal distribution below z. */
export const normalBelow = (z: number): number => {
  const share = halfShare((z * z) / 2) / 2
  return z < 0 ? 0.5 - share : 0.5 + share
}

export const normalDensity = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)
