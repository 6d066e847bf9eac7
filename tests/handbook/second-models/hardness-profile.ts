import { type Formula, formula, type Input } from '../../../src/formula.ts'
import { erfc, erfcInverse, rootOf } from './error-function.ts'

/** Other shapes through the same two points, for comparison with the profile that is planned with. */
const hardness = (meaning: string): Input<'HV'> => ({ meaning, unit: 'HV', over: 0, upTo: 1500 })
const H_s = hardness('surface hardness')
const H_c = hardness('core hardness')
const z: Input<'mm'> = { meaning: 'depth below the surface as hardened', unit: 'mm', from: 0, upTo: 10 }
const N: Input<'mm'> = { meaning: 'hardness depth as hardened', unit: 'mm', over: 0, upTo: 5 }

/** Of the limit's share of the rise: 1.0141 for 650 over 320 HV. */
export const diffusionDistance = (share: number): number => erfcInverse(share)

export const diffusionProfile: Formula<{ H_s: 'HV'; H_c: 'HV'; x_0: ''; z: 'mm'; N: 'mm' }, 'HV'> = formula({
  symbol: 'H',
  meaning: 'hardness at a depth, error-function profile',
  unit: 'HV',
  expression: 'H_c + (H_s - H_c) * (1 - erf(x_0 * z / N))',
  inputs: {
    H_s,
    H_c,
    x_0: { meaning: 'distance at which the error function leaves the share of the limit', unit: '', over: 0, upTo: 3 },
    z,
    N,
  },
  source:
    'transient diffusion in one dimension, used for nitrided profiles by Horak et al. (AIP Conf. Proc., doi 10.1063/1.4765532)',
  example: { given: { H_s: 650, H_c: 320, x_0: 1.01411, z: 0.1, N: 0.3 }, gives: 528.8 },
  value: ({ H_s, H_c, x_0, z, N }) => H_c + (H_s - H_c) * erfc((x_0 * z) / N),
})

/** Middle of the plateau's fall, in hardness depths: 0.5 to 0.75. */
export const SIGMOID_MIDDLE = 0.62

export const sigmoidProfile: Formula<{ H_s: 'HV'; H_c: 'HV'; z: 'mm'; z_0: 'mm'; q: 'mm' }, 'HV'> = formula({
  symbol: 'H',
  meaning: 'hardness at a depth, sigmoid profile',
  unit: 'HV',
  expression: 'H_c + (H_s - H_c) * (1 + exp(-z_0 / q)) / (1 + exp((z - z_0) / q))',
  inputs: {
    H_s,
    H_c,
    z,
    z_0: { meaning: "middle of the profile's fall", unit: 'mm', over: 0, upTo: 5 },
    q: { meaning: 'width of the fall', unit: 'mm', over: 0, upTo: 5 },
  },
  source: 'memory: logistic fits of the literature; parameters estimated',
  example: { given: { H_s: 650, H_c: 320, z: 0.1, z_0: 0.186, q: 0.06387 }, gives: 596.1 },
  value: ({ H_s, H_c, z, z_0, q }) => H_c + ((H_s - H_c) * (1 + Math.exp(-z_0 / q))) / (1 + Math.exp((z - z_0) / q)),
})

/**
 * Width of the sigmoid that meets the limit at the hardness depth.
 *
 *     (1 + e^(−z₀/q)) / (1 + e^((N − z₀)/q)) = p      by halving between 0.001 N and 5 N
 *
 *     q   width of the fall                        mm
 *     N   hardness depth                           mm
 *     z₀  middle of the fall, 0.62 N               mm
 *     p   share of the rise left at N              -
 *
 * Range:   0 < p under 0.90, which is where a width of 5 N still meets it.
 * Source:  derived.
 *
 * @example sigmoidWidth(0.3, 50 / 330) // 0.06387
 */
export function sigmoidWidth(N: number, share: number): number {
  const z_0 = SIGMOID_MIDDLE * N
  const left = (q: number) => (1 + Math.exp(-z_0 / q)) / (1 + Math.exp((N - z_0) / q))
  if (!(share > left(0.001 * N) && share < left(5 * N)))
    throw new RangeError(`p must be under ${left(5 * N)}, got ${share}`)
  return rootOf(q => share - left(q), 0.001 * N, 5 * N)
}
