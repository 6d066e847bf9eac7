import { type Formula, formula, type Input } from '../formula.ts'

/** Small end mills are changed on count, not on failure. A works logs its own metres and puts them here. */
const s: Input<'m'> = { meaning: 'cut length of the batch', unit: 'm', from: 0, upTo: 1e9 }
const life: Input<'m'> = { meaning: 'cut length that a cutter lasts', unit: 'm', over: 0, upTo: 100_000 }

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

/** A quarter over for breakage. The guard of a millionth keeps an exact quotient from costing another cutter. */
export const cuttersNeeded: Formula<{ s: 'm'; life: 'm' }, ''> = formula({
  symbol: 'N_c',
  meaning: 'cutters to have at hand for the batch, a quarter over',
  unit: '',
  expression: 'ceil(1.25 * s / life - 10^-9)',
  inputs: { s, life },
  source: 'common practice, no source',
  example: { given: { s: 72.72, life: 8 }, gives: 12 },
  value: ({ s, life }) => Math.ceil((1.25 * s) / life - 10 ** -9),
})
