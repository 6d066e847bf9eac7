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

/** Mean compressive stress of the case, MPa: an estimate; 600 to 800 is measured at the surface. */
export const CASE_STRESS = 300
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

export const coreStress: Formula<{ sigma: 'MPa'; h_1: 'mm'; h_2: 'mm'; t: 'mm' }, 'MPa'> = formula({
  symbol: 'sigma_c',
  meaning: 'tension in the core that balances the case',
  unit: 'MPa',
  expression: 'sigma * (h_1 + h_2) / (t - h_1 - h_2)',
  inputs: {
    sigma: { meaning: 'mean compression in the case', unit: 'MPa', over: 0, upTo: 1000 },
    h_1: millimetres('case outside', 0.7),
    h_2: millimetres('case in the bore', 0.7),
    t: { meaning: 'wall', unit: 'mm', from: 1.5, upTo: 100 },
  },
  source: 'derived: elastic equilibrium of case and core; the stress is an estimate',
  example: { given: { sigma: 300, h_1: 0.3, h_2: 0.3, t: 4 }, gives: 52.94 },
  value: ({ sigma, h_1, h_2, t }) => (sigma * (h_1 + h_2)) / (t - h_1 - h_2),
})

export const coreStretch: Formula<{ nu: ''; sigma_c: 'MPa'; E: 'MPa' }, ''> = formula({
  symbol: 'epsilon',
  meaning: 'stretch of a thin wall by its case',
  unit: '',
  expression: '(1 - nu) * sigma_c / E',
  inputs: {
    nu: { meaning: "Poisson's ratio", unit: '', from: 0, under: 0.5 },
    sigma_c: { meaning: 'tension in the core', unit: 'MPa', from: 0, upTo: 10_000 },
    E: { meaning: 'modulus of elasticity', unit: 'MPa', from: 50_000, upTo: 300_000 },
  },
  source: 'derived: plane stress, equal in both directions',
  example: { given: { nu: 0.3, sigma_c: 52.941, E: 206_000 }, gives: 1.799e-4, digits: 7 },
  value: ({ nu, sigma_c, E }) => ((1 - nu) * sigma_c) / E,
})

/** The whole ring grows: a bore gets larger too. */
export const diameterStretch: Formula<{ epsilon: ''; D: 'mm' }, 'mm'> = formula({
  symbol: 'dD',
  meaning: 'change of a diameter as the wall stretches',
  unit: 'mm',
  expression: 'epsilon * D',
  inputs: {
    epsilon: { meaning: 'stretch of the wall', unit: '', from: 0, upTo: 0.05 },
    D: { meaning: 'diameter', unit: 'mm', over: 0, upTo: 1000 },
  },
  source: 'derived: geometry',
  example: { given: { epsilon: 1.799e-4, D: 60 }, gives: 0.01079 },
  value: ({ epsilon, D }) => epsilon * D,
})
