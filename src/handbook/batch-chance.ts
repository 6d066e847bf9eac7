import { type Formula, formula, type Input } from '../formula.ts'

const width = (meaning: string): Input<'mm'> => ({ meaning, unit: 'mm', from: 0, upTo: 1000 })

/** Half width, about the middle. Optimistic for few terms or for people who all stay on the safe side. */
export const stockByRootSumSquare: Formula<{ T_before: 'mm'; T_after: 'mm'; G: 'mm' }, 'mm'> = formula({
  symbol: 't_S',
  meaning: 'half width of the stock on diameter, root of the sum of squares',
  unit: 'mm',
  expression: 'sqrt(T_before^2 + T_after^2 + (2 * G)^2) / 2',
  inputs: {
    T_before: width('tolerance on diameter before'),
    T_after: width('tolerance on diameter after'),
    G: width('growth per side, most less least'),
  },
  source: 'memory: Chase, tolerance charting; independent, centred, the same multiple of sigma',
  example: { given: { T_before: 0.05, T_after: 0.019, G: 0.01 }, gives: 0.0286 },
  value: ({ T_before, T_after, G }) => Math.sqrt(T_before ** 2 + T_after ** 2 + (2 * G) ** 2) / 2,
})

/** Pieces of one furnace load share their growth and case, so that faults come together: this is the cautious figure. */
export const chanceInBatch: Formula<{ p: ''; n: '' }, ''> = formula({
  symbol: 'P',
  meaning: 'chance of one such piece or more in the batch',
  unit: '',
  expression: '1 - (1 - p)^n',
  inputs: {
    p: { meaning: 'chance for one piece', unit: '', from: 0, upTo: 1 },
    n: { meaning: 'pieces in the batch', unit: '', from: 0, upTo: 100_000 },
  },
  source: 'derived: independent pieces',
  example: { given: { p: 0.001, n: 24 }, gives: 0.0237 },
  value: ({ p, n }) => 1 - (1 - p) ** n,
})
