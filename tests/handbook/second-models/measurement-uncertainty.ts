import { type Formula, formula } from '../../../src/formula.ts'

/**
 * A gauge's budget: limits of error and temperature are taken as evenly spread (over √3), a resolution step as evenly
 * spread over its width (over √12). The gauges of the built-in shop are no better than their budgets.
 */
export const expandedUncertainty: Formula<
  { MPE: 'µm'; r: 'µm'; s: 'µm'; alpha: '1e-6/K'; D: 'mm'; dT: 'K'; u_o: 'µm' },
  'µm'
> = formula({
  symbol: 'U',
  meaning: 'expanded uncertainty of a gauge, k = 2',
  unit: 'µm',
  expression: '2 * sqrt(MPE^2 / 3 + r^2 / 12 + s^2 + (alpha * D * dT / 1000)^2 / 3 + u_o^2)',
  inputs: {
    MPE: { meaning: 'limit of error over the range used', unit: 'µm', from: 0 },
    r: { meaning: 'resolution', unit: 'µm', from: 0 },
    s: { meaning: 'repeatability, standard deviation', unit: 'µm', from: 0 },
    alpha: { meaning: 'thermal expansion', unit: '1e-6/K', from: 0 },
    D: { meaning: 'size measured', unit: 'mm', from: 0 },
    dT: { meaning: 'temperature off by up to', unit: 'K', from: 0 },
    u_o: { meaning: 'standard uncertainty of the master it is set on', unit: 'µm', from: 0 },
  },
  source: 'memory: GUM (JCGM 100)',
  example: { given: { MPE: 5, r: 1, s: 1, alpha: 11.7, D: 55, dT: 2, u_o: 0 }, gives: 6.31 },
  value: ({ MPE, r, s, alpha, D, dT, u_o }) =>
    2 * Math.sqrt(MPE ** 2 / 3 + r ** 2 / 12 + s ** 2 + ((alpha * D * dT) / 1000) ** 2 / 3 + u_o ** 2),
})
