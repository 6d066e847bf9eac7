import { type Formula, formula, type Input } from '../formula.ts'

/**
 * Nitriding hardness depth against time. The square-root law holds once the nitriding potential stands, over about 4 h, and
 * while the case is thin against the wall. The constant is a planning value: the hardener's own coupons replace it.
 */

/** Activation energy of nitrogen diffusion in ferrite, J/mol: 19.1 kcal/mol. */
export const NITROGEN_ACTIVATION_ENERGY = 79_914.4
/** The temperature that the table's depth constants are for, °C. */
export const REFERENCE_TEMPERATURE = 520
/** Under this the square-root law is not valid, h. */
export const SHORTEST_CYCLE = 4

const SQUARE_ROOT_LAW =
  'depth proportional to the root of time: case-hardening introduction text; range memory: diffusion theory'
const T: Input = { meaning: 'nitriding temperature', unit: '°C', from: 400, upTo: 650 }
const K: Input = { meaning: 'depth constant at that temperature', unit: 'mm/h^0.5', over: 0, upTo: 0.3 }
const t: Input = { meaning: 'time at temperature', unit: 'h', from: SHORTEST_CYCLE, upTo: 1000 }
const Q: Input = {
  meaning: 'activation energy of nitrogen diffusion in ferrite',
  unit: 'J/mol',
  over: 0,
  upTo: 200_000,
}

export const depthConstant: Formula<'K_ref' | 'T' | 'T_ref' | 'Q'> = formula({
  symbol: 'K',
  meaning: 'depth constant at the nitriding temperature',
  unit: 'mm/h^0.5',
  expression: 'K_ref * exp(-Q / (2 * 8.314463) * (1 / (T + 273.15) - 1 / (T_ref + 273.15)))',
  inputs: {
    K_ref: { ...K, meaning: 'depth constant at the reference temperature' },
    T,
    T_ref: { ...T, meaning: 'reference temperature' },
    Q,
  },
  source:
    'derived: Arrhenius law on the root of the diffusivity; Q after Bohnenkamp, Arch. Eisenhuettenwes. 38 (1967) 229',
  example: { given: { K_ref: 0.045, T: 560, T_ref: 520, Q: NITROGEN_ACTIVATION_ENERGY }, gives: 0.06019 },
  value: ({ K_ref, T, T_ref, Q }) =>
    K_ref * Math.exp((-Q / (2 * 8.314463)) * (1 / (T + 273.15) - 1 / (T_ref + 273.15))),
})

export const nitridingDepth: Formula<'K' | 't'> = formula({
  symbol: 'N',
  meaning: 'nitriding hardness depth after a time at temperature',
  unit: 'mm',
  expression: 'K * sqrt(t)',
  inputs: { K, t },
  source: SQUARE_ROOT_LAW,
  example: { given: { K: 0.05, t: 36 }, gives: 0.3, digits: 4 },
  value: ({ K, t }) => K * Math.sqrt(t),
})

export const nitridingTime: Formula<'N' | 'K'> = formula({
  symbol: 't',
  meaning: 'time at temperature for a nitriding hardness depth',
  unit: 'h',
  expression: '(N / K)^2',
  inputs: { N: { meaning: 'nitriding hardness depth', unit: 'mm', over: 0, upTo: 2 }, K },
  source: SQUARE_ROOT_LAW,
  example: { given: { N: 0.2975, K: 0.05 }, gives: 35.4, digits: 2 },
  value: ({ N, K }) => (N / K) ** 2,
})

export const twoStageDepth: Formula<'K_1' | 't_1' | 'K_2' | 't_2'> = formula({
  symbol: 'N',
  meaning: 'nitriding hardness depth of a two-stage cycle',
  unit: 'mm',
  expression: 'sqrt(K_1^2 * t_1 + K_2^2 * t_2)',
  inputs: {
    K_1: { ...K, meaning: 'depth constant of the first stage' },
    t_1: { ...t, meaning: 'time of the first stage' },
    K_2: { ...K, meaning: 'depth constant of the second stage' },
    t_2: { ...t, meaning: 'time of the second stage' },
  },
  source: 'derived: parabolic laws add in squares',
  example: { given: { K_1: 0.04449, t_1: 10, K_2: 0.06236, t_2: 30 }, gives: 0.3694 },
  value: ({ K_1, t_1, K_2, t_2 }) => Math.sqrt(K_1 ** 2 * t_1 + K_2 ** 2 * t_2),
})

/** For temperature scaling only: alloy nitrides trap nitrogen, so this gives no depth. */
export const nitrogenDiffusivity: Formula<'D_0' | 'Q' | 'T'> = formula({
  symbol: 'D',
  meaning: 'diffusivity of nitrogen in ferrite',
  unit: 'cm²/s',
  expression: 'D_0 * exp(-Q / (8.314463 * (T + 273.15)))',
  inputs: { D_0: { meaning: 'frequency factor', unit: 'cm²/s', over: 0, upTo: 1 }, Q, T },
  source: 'Bohnenkamp, Arch. Eisenhuettenwes. 38 (1967) 229: D_0 0.015 cm²/s, Q 19.1 kcal/mol',
  example: { given: { D_0: 0.015, Q: NITROGEN_ACTIVATION_ENERGY, T: 520 }, gives: 8.189e-8, digits: 11 },
  value: ({ D_0, Q, T }) => D_0 * Math.exp(-Q / (8.314463 * (T + 273.15))),
})
