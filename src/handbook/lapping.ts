import { type Formula, formula } from '../formula.ts'

export const lappingTime: Formula<'z' | 'rate'> = formula({
  symbol: 't',
  meaning: 'lapping time',
  unit: 'min',
  expression: '1000 * z / rate',
  inputs: {
    z: { meaning: 'stock on diameter', unit: 'mm', from: 0, upTo: 0.1 },
    rate: { meaning: 'removal on diameter', unit: 'µm/min', over: 0, upTo: 20 },
  },
  source: 'derived: kinematics; removal: common practice, no source',
  example: { given: { z: 0.01, rate: 2 }, gives: 5 },
  value: ({ z, rate }) => (1000 * z) / rate,
})
