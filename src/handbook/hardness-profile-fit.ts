import { type Formula, formula, type Input } from '../formula.ts'
import type { Millimetre, Vickers } from '../units.ts'

/** A fit outside this is no hardness profile: the data are rejected. */
export const SHAPE_ACCEPTED = { least: 0.8, most: 4 } as const

const share = (meaning: string): Input => ({ meaning, unit: '', over: 0, under: 1 })

/** From a certificate that gives one reading more than the hardness depth. */
export const shapeFromReading: Formula<'p' | 'q' | 'N' | 'z_1'> = formula({
  symbol: 'n',
  meaning: 'shape of the profile through a reading and the hardness depth',
  unit: '',
  expression: 'log(log(1 / p) / log(1 / q)) / log(N / z_1)',
  inputs: {
    p: share('share of the rise over the core left at the hardness depth'),
    q: share('share of the rise over the core at the reading'),
    N: { meaning: 'hardness depth', unit: 'mm', over: 0, upTo: 5 },
    z_1: { meaning: 'depth of the reading', unit: 'mm', over: 0, upTo: 5 },
  },
  source: 'derived: stretched exponential through two points',
  // 650 over 300 HV, 0.42 deep, 600 HV at 0.10.
  example: { given: { p: 50 / 350, q: 300 / 350, N: 0.42, z_1: 0.1 }, gives: 1.7668 },
  value: ({ p, q, N, z_1 }) => Math.log(Math.log(1 / p) / Math.log(1 / q)) / Math.log(N / z_1),
})

export type Reading = { readonly depth: Millimetre; readonly hardness: Vickers }

/**
 * Hardness depth from a traverse: linear between the two readings on either side of the limit.
 *
 *     N = z_a + (H_a − H_lim) / (H_a − H_b) · (z_b − z_a)
 *
 * Range:   readings from the surface inward; nothing where they never cross the limit.
 * Source:  memory: DIN 50190-3; limit core + 50 HV, core from three indentations or more (HAERTHA group, 2024).
 *
 * @example depthFromTraverse([{ depth: 0.3, hardness: 375 }, { depth: 0.35, hardness: 350 }], 360) // 0.33
 */
export function depthFromTraverse(readings: readonly Reading[], limit: Vickers): Millimetre | undefined {
  const index = readings.findIndex(({ hardness }) => hardness < limit)
  const [above, below] = [readings[index - 1], readings[index]]
  if (!above || !below) return undefined
  const share = (above.hardness - limit) / (above.hardness - below.hardness)
  return above.depth + share * (below.depth - above.depth)
}
