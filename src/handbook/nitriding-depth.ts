import { type Formula, formula, type Input } from '../formula.ts'

/**
 * Nitriding hardness depth against time. The square-root law holds once the nitriding potential stands, over about 4 h, and
 * while the case is thin against the wall. The constant is a planning value: the hardener's own coupons replace it.
 */

/** Activation energy of nitrogen diffusion in ferrite, J/mol: 19.1 kcal/mol. */
export const NITROGEN_ACTIVATION_ENERGY = 79_914.4
/** The temperature that the table's depth constants are for, °C. */
export const REFERENCE_TEMPERATURE = 520

const SQUARE_ROOT_LAW =
  'depth proportional to the root of time: case-hardening introduction text; range memory: diffusion theory'
const T: Input<'°C'> = { meaning: 'nitriding temperature', unit: '°C', from: 400, upTo: 650 }
const K: Input<'mm/h^0.5'> = { meaning: 'depth constant at that temperature', unit: 'mm/h^0.5', over: 0, upTo: 0.3 }
const Q: Input<'J/mol'> = {
  meaning: 'activation energy of nitrogen diffusion in ferrite',
  unit: 'J/mol',
  over: 0,
  upTo: 200_000,
}

export const depthConstant: Formula<{ K_ref: 'mm/h^0.5'; T: '°C'; T_ref: '°C'; Q: 'J/mol' }, 'mm/h^0.5'> = formula({
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

/** Parabolic laws add in squares: N² = K_1² q t + K_2² (1 - q) t. */
export const twoStageConstant: Formula<{ K_1: 'mm/h^0.5'; K_2: 'mm/h^0.5'; q: '' }, 'mm/h^0.5'> = formula({
  symbol: 'K',
  meaning: 'depth constant of two stages together',
  unit: 'mm/h^0.5',
  expression: 'sqrt(q * K_1^2 + (1 - q) * K_2^2)',
  inputs: {
    K_1: { ...K, meaning: 'depth constant of the first stage' },
    K_2: { ...K, meaning: 'depth constant of the second stage' },
    q: { meaning: 'share of the time in the first stage', unit: '', from: 0, upTo: 1 },
  },
  source: 'derived: depth grows with the root of time, so squares of depths add',
  // 10 h at 505 °C and 30 h at 550 °C give 0.3694 mm.
  example: { given: { K_1: 0.04449, K_2: 0.06236, q: 0.25 }, gives: 0.0584 },
  value: ({ K_1, K_2, q }) => Math.sqrt(q * K_1 ** 2 + (1 - q) * K_2 ** 2),
})

export const nitridingTime: Formula<{ N: 'mm'; K: 'mm/h^0.5' }, 'h'> = formula({
  symbol: 't',
  meaning: 'time at temperature for a nitriding hardness depth',
  unit: 'h',
  expression: '(N / K)^2',
  inputs: { N: { meaning: 'nitriding hardness depth', unit: 'mm', over: 0, upTo: 2 }, K },
  source: SQUARE_ROOT_LAW,
  example: { given: { N: 0.2975, K: 0.05 }, gives: 35.4, digits: 2 },
  value: ({ N, K }) => (N / K) ** 2,
})
