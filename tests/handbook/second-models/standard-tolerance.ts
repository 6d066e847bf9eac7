import { type Formula, formula } from '../../../src/formula.ts'

/** Where the table differs, the table is right: the formula is here to check the typing of the table. */
export const standardToleranceFactor: Formula<{ D: 'mm' }, 'µm'> = formula({
  symbol: 'i',
  meaning: 'standard tolerance factor, grades IT5 to IT18',
  unit: 'µm',
  expression: '0.45 * cbrt(D) + 0.001 * D',
  inputs: { D: { meaning: "geometric mean of the size range's limits", unit: 'mm', over: 0, upTo: 500 } },
  source: 'ISO 286-1:1988, Annex A, from a public reprint',
  example: { given: { D: 23.24 }, gives: 1.307 },
  value: ({ D }) => 0.45 * Math.cbrt(D) + 0.001 * D,
})
