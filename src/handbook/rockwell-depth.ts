import { type Formula, formula } from '../formula.ts'

/** Under a thinner case the cone reads the core as well. */
export const rockwellDepth: Formula<{ HRC: 'HRC' }, 'mm'> = formula({
  symbol: 'd_C',
  meaning: 'least case that a reading in HRC is borne by',
  unit: 'mm',
  expression: '10 * 0.002 * (100 - HRC)',
  inputs: { HRC: { meaning: 'hardness', unit: 'HRC', from: 20, upTo: 70 } },
  source: 'memory: ISO 6508-1, ten times the permanent depth of the cone, 0.002 mm for each point under 100',
  example: { given: { HRC: 60 }, gives: 0.8 },
  value: ({ HRC }) => 10 * 0.002 * (100 - HRC),
})
