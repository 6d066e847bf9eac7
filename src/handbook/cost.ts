import { type Formula, formula } from '../formula.ts'

/** Money has no unit of its own: it is that of the shop file. */
const RATE = { meaning: 'what an hour of the work centre costs', unit: '', from: 0, upTo: 1e7 } as const
const TEXTBOOK = 'textbook: time at an hourly rate'

export const setUpCost: Formula<{ t_s: 'min'; R_h: '' }, ''> = formula({
  symbol: 'K_s',
  meaning: 'cost of a set-up',
  unit: '',
  expression: 't_s * R_h / 60',
  inputs: { t_s: { meaning: 'set-up', unit: 'min', from: 0 }, R_h: RATE },
  source: TEXTBOOK,
  example: { given: { t_s: 45, R_h: 62 }, gives: 46.5 },
  value: ({ t_s, R_h }) => (t_s * R_h) / 60,
})

export const runCost: Formula<{ N_i: ''; t_1: 'min'; R_h: '' }, ''> = formula({
  symbol: 'K_r',
  meaning: 'cost of running an operation',
  unit: '',
  expression: 'N_i * t_1 * R_h / 60',
  inputs: {
    N_i: { meaning: 'pieces expected to come to it', unit: '', from: 0, upTo: 1e6 },
    t_1: { meaning: 'time of a piece', unit: 'min', from: 0 },
    R_h: RATE,
  },
  source: TEXTBOOK,
  example: { given: { N_i: 16, t_1: 14, R_h: 62 }, gives: 231.466667, digits: 6 },
  value: ({ N_i, t_1, R_h }) => (N_i * t_1 * R_h) / 60,
})

export const outsideCost: Formula<{ K_0: ''; K_l: ''; k_1: ''; k_m: ''; N_i: ''; m_1: 'kg' }, ''> = formula({
  symbol: 'K_o',
  meaning: 'price of an outside operation by the price list of the firm',
  unit: '',
  expression: 'max(K_0, K_l + N_i * k_1 + N_i * m_1 * k_m)',
  inputs: {
    K_0: { meaning: 'least that a lot costs', unit: '', from: 0, upTo: 1e7 },
    K_l: { meaning: 'for the lot', unit: '', from: 0, upTo: 1e7 },
    k_1: { meaning: 'for each piece', unit: '', from: 0, upTo: 1e7 },
    k_m: { meaning: 'for each kilogram', unit: '', from: 0, upTo: 1e7 },
    N_i: { meaning: 'pieces expected to come to it', unit: '', from: 0, upTo: 1e6 },
    m_1: { meaning: 'mass of a piece as it comes', unit: 'kg', from: 0, upTo: 1e5 },
  },
  source: 'common practice, no source',
  example: { given: { K_0: 180, K_l: 0, k_1: 0, k_m: 6.5, N_i: 15, m_1: 0.36 }, gives: 180 },
  value: ({ K_0, K_l, k_1, k_m, N_i, m_1 }) => Math.max(K_0, K_l + N_i * k_1 + N_i * m_1 * k_m),
})

export const cutterCost: Formula<{ N_i: ''; n_w: ''; P: '' }, ''> = formula({
  symbol: 'K_c',
  meaning: 'cost of a cutter that wears',
  unit: '',
  expression: 'N_i * n_w * P',
  inputs: {
    N_i: { meaning: 'pieces expected to come to it', unit: '', from: 0, upTo: 1e6 },
    n_w: { meaning: 'share of a cutter that a piece wears out', unit: '', from: 0, upTo: 1e6 },
    P: { meaning: 'price of what is worn', unit: '', from: 0, upTo: 1e7 },
  },
  source: 'derived: what is worn, by its price',
  example: { given: { N_i: 15.84, n_w: 0.2, P: 4.5 }, gives: 14.256 },
  value: ({ N_i, n_w, P }) => N_i * n_w * P,
})

export const barCost: Formula<{ N: 'pieces'; m: 'kg'; P: '' }, ''> = formula({
  symbol: 'K_b',
  meaning: 'cost of the bar that the blanks take',
  unit: '',
  expression: 'N * m * P',
  inputs: {
    N: { meaning: 'pieces started', unit: 'pieces', from: 0, upTo: 1e6 },
    m: { meaning: 'mass of a blank', unit: 'kg', from: 0, upTo: 1e5 },
    P: { meaning: 'price of a kilogram', unit: '', from: 0, upTo: 1e7 },
  },
  source: 'derived: mass by its price',
  example: { given: { N: 16, m: 2.33, P: 2.6 }, gives: 96.928 },
  value: ({ N, m, P }) => N * m * P,
})

/** Least and most of what is reckoned, as a share of it. Estimates of ours, no source: the shop's own jobs decide. */
export const COST_SPREAD = {
  'set-up': [0.8, 1.5],
  run: [0.85, 1.3],
  gauging: [0.85, 1.3],
  cutters: [0.6, 1.8],
  material: [0.95, 1.1],
  hardening: [1, 1.2],
  plating: [1, 1.2],
  finishing: [0.95, 1.15],
  carriage: [1, 1.5],
} as const

/** 5 % on either side of a normal distribution (textbook). */
export const NINETY_PERCENT = 1.645

/** A lead time that is told as one number: estimate of ours, no source. */
export const LEAD_TIME_SPREAD = { least: 1, most: 1.3 } as const

/** What a promise must hold with. Common practice, no source. */
export const PROMISED = 0.9
