import { type Formula, formula, type Input } from '../formula.ts'

/** Taking stock off a hardened surface: the surface as hardened and the ground one are never on one axis. */
const millimetres = (meaning: string): Input<'mm'> => ({ meaning, unit: 'mm', from: 0, upTo: 5 })

/** The place where the limit hardness is reached stays put, whatever the profile's shape. */
export const depthToOrder: Formula<{ N_f: 'mm'; s_max: 'mm' }, 'mm'> = formula({
  symbol: 'N_order',
  meaning: 'hardness depth to order so that the depth asked is left where most is taken off',
  unit: 'mm',
  expression: 'N_f + s_max',
  inputs: { N_f: millimetres('hardness depth asked after finishing'), s_max: millimetres('greatest removal per side') },
  source: 'derived: grinding moves the surface, not the limit hardness',
  example: { given: { N_f: 0.2, s_max: 0.0975 }, gives: 0.2975 },
  value: ({ N_f, s_max }) => N_f + s_max,
})

export const depthForShare: Formula<{ s_max: 'mm'; f: '' }, 'mm'> = formula({
  symbol: 'N_order',
  meaning: 'hardness depth to order so that no more than a share of it is taken off',
  unit: 'mm',
  expression: 's_max / f',
  inputs: {
    s_max: millimetres('greatest removal per side'),
    f: { meaning: 'greatest share of the depth to take off', unit: '', over: 0, upTo: 1 },
  },
  source: 'common practice/estimate: half of the case at most',
  example: { given: { s_max: 0.1, f: 0.5 }, gives: 0.2 },
  value: ({ s_max, f }) => s_max / f,
})

export const caseLeft: Formula<{ N: 'mm'; s: 'mm' }, 'mm'> = formula({
  symbol: 'N_r',
  meaning: 'hardness depth left after finishing',
  unit: 'mm',
  expression: 'N - s',
  inputs: { N: millimetres('hardness depth as hardened'), s: millimetres('taken off per side') },
  source: 'derived: grinding moves the surface, not the limit hardness',
  example: { given: { N: 0.3, s: 0.0975 }, gives: 0.2025 },
  value: ({ N, s }) => N - s,
})
