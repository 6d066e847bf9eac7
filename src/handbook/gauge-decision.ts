import { type Formula, formula } from '../formula.ts'

/** How many times the interval of uncertainty goes into the tolerance: 4 is the strict rule; many shops write 10 and mean resolution. */
export const gaugeRatio: Formula<{ T: 'mm'; U: 'mm' }, '-'> = formula({
  symbol: 'N',
  meaning: 'tolerance over the width of the uncertainty interval',
  unit: '-',
  expression: 'T / (2 * U)',
  inputs: {
    T: { meaning: 'width of the tolerance', unit: 'mm', over: 0 },
    U: { meaning: 'expanded uncertainty of the gauge, k = 2', unit: 'mm', over: 0 },
  },
  source: 'ASME B89.7.3.1-2001, definition of the N:1 rule',
  example: { given: { T: 0.016, U: 0.002 }, gives: 4, digits: 0 },
  value: ({ T, U }) => T / (2 * U),
})

/** The maker proves conformity: the guard band on each side is the whole expanded uncertainty. */
export const acceptanceFrom: Formula<{ lower: 'mm'; g: 'mm' }, 'mm'> = formula({
  symbol: 'a_l',
  meaning: 'least reading to accept',
  unit: 'mm',
  expression: 'lower + g',
  inputs: {
    lower: { meaning: 'lower limit', unit: 'mm' },
    g: { meaning: 'guard band', unit: 'mm', from: 0 },
  },
  source: 'ISO 14253-1, proof of conformity (read in secondary summaries)',
  example: { given: { lower: 48, g: 0.003 }, gives: 48.003, digits: 3 },
  value: ({ lower, g }) => lower + g,
})

export const acceptanceTo: Formula<{ upper: 'mm'; g: 'mm' }, 'mm'> = formula({
  symbol: 'a_u',
  meaning: 'largest reading to accept',
  unit: 'mm',
  expression: 'upper - g',
  inputs: {
    upper: { meaning: 'upper limit', unit: 'mm' },
    g: { meaning: 'guard band', unit: 'mm', from: 0 },
  },
  source: 'ISO 14253-1, proof of conformity (read in secondary summaries)',
  example: { given: { upper: 48.016, g: 0.003 }, gives: 48.013, digits: 3 },
  value: ({ upper, g }) => upper - g,
})
