import { type Formula, formula, type Input } from '../formula.ts'

/**
 * Coefficients of growth per treated surface. Figures scatter by two to three times between works: a first article
 * replaces them.
 */
export const GROWTH_COEFFICIENTS = {
  /** Of the hardness depth. */
  diffusion: { least: 0.015, usual: 0.025, most: 0.04 },
  /** Of the compound layer's thickness. */
  compound: { least: 0.14, usual: 0.2, most: 0.25 },
} as const

export const STEEL = { modulus: 206_000, poisson: 0.3 } as const

const millimetres = (meaning: string, upTo: number): Input<'mm'> => ({ meaning, unit: 'mm', from: 0, upTo })

export const growthPerSide: Formula<{ k_d: ''; N: 'mm'; k_c: ''; C: 'mm' }, 'mm'> = formula({
  symbol: 'g',
  meaning: 'growth per side in nitriding',
  unit: 'mm',
  expression: 'k_d * N + k_c * C',
  inputs: {
    k_d: { meaning: 'growth to hardness depth', unit: '', from: 0, upTo: 0.1 },
    N: millimetres('nitriding hardness depth', 2),
    k_c: { meaning: 'growth to compound layer', unit: '', from: 0, upTo: 0.5 },
    C: millimetres('compound layer', 0.06),
  },
  source:
    'memory/estimate: handbooks give 3 to 5 % of the case; compound layer derived from the volumes of iron nitrides per iron atom, 1.160 and 1.185 times ferrite (memory)',
  example: { given: { k_d: 0.025, N: 0.3, k_c: 0.2, C: 0.01 }, gives: 0.0095 },
  value: ({ k_d, N, k_c, C }) => k_d * N + k_c * C,
})
