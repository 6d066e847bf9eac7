import { type Formula, formula } from '../../../src/formula.ts'

/** Reads 4.4 % low at 650 HV: not used there. */
export const strengthFromVickers: Formula<{ HV: 'HV' }, 'MPa'> = formula({
  symbol: 'R_m',
  meaning: 'tensile strength for a Vickers hardness, converted',
  unit: 'MPa',
  expression: '3.206 * HV',
  inputs: { HV: { meaning: 'Vickers hardness', unit: 'HV', from: 80, upTo: 430 } },
  source: 'formula beside a copy of the DIN 50150 conversion tables',
  example: { given: { HV: 300 }, gives: 961.8 },
  value: ({ HV }) => 3.206 * HV,
})
