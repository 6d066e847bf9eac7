import { type Formula, formula, type Input } from '../formula.ts'
import type { Minute } from '../units.ts'

/** Cutting data are given for an edge that lasts this long. Common practice, no source. */
export const EDGE_LIFE: Minute = 15

const worn: Input<''> = { meaning: 'share of a cutter that a piece wears out', unit: '', from: 0, upTo: 1e6 }

/** Small end mills are changed on count, not on failure. A works logs its own minutes and puts them in the shop file. */
export const cutLife: Formula<{ life2: 'm'; D: 'mm' }, 'm'> = formula({
  symbol: 'life',
  meaning: 'cut length that a cutter lasts',
  unit: 'm',
  expression: 'life2 * D / 2',
  inputs: {
    life2: { meaning: 'cut length that a 2 mm cutter lasts', unit: 'm', over: 0, upTo: 500 },
    D: { meaning: 'diameter of the cutter', unit: 'mm', over: 0, upTo: 500 },
  },
  source: 'common practice, no source: a 3 mm cutter lasts about one and a half times as far',
  example: { given: { life2: 8, D: 3 }, gives: 12 },
  value: ({ life2, D }) => (life2 * D) / 2,
})

export const wornByLength: Formula<{ s: 'm'; life: 'm' }, ''> = formula({
  symbol: 'n_w',
  meaning: worn.meaning,
  unit: '',
  expression: 's / life',
  inputs: {
    s: { meaning: 'cut length of a piece', unit: 'm', from: 0, upTo: 1e6 },
    life: { meaning: 'cut length that a cutter lasts', unit: 'm', over: 0, upTo: 100_000 },
  },
  source: 'derived: wear goes with the length cut',
  example: { given: { s: 3.03, life: 8 }, gives: 0.37875 },
  value: ({ s, life }) => s / life,
})

export const wornByTime: Formula<{ t: 'min'; T: 'min' }, ''> = formula({
  symbol: 'n_w',
  meaning: worn.meaning,
  unit: '',
  expression: 't / T',
  inputs: {
    t: { meaning: 'time that it cuts on a piece', unit: 'min', from: 0, upTo: 1e6 },
    T: { meaning: 'minutes that an edge lasts', unit: 'min', over: 0, upTo: 1e6 },
  },
  source: 'derived: wear goes with the time cut',
  example: { given: { t: 3, T: 15 }, gives: 0.2 },
  value: ({ t, T }) => t / T,
})

/** A quarter over for breakage. The guard of a millionth keeps an exact quotient from costing another cutter. */
export const cuttersNeeded: Formula<{ N: 'pieces'; n_w: '' }, ''> = formula({
  symbol: 'N_c',
  meaning: 'cutters to have at hand for the batch, a quarter over',
  unit: '',
  expression: 'ceil(1.25 * N * n_w - 10^-9)',
  inputs: { N: { meaning: 'pieces started', unit: 'pieces', from: 0, upTo: 1e6 }, n_w: worn },
  source: 'common practice, no source',
  example: { given: { N: 24, n_w: 0.37875 }, gives: 12 },
  value: ({ N, n_w }) => Math.ceil(1.25 * N * n_w - 10 ** -9),
})
