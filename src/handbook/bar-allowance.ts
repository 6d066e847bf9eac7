import { type Formula, formula } from '../formula.ts'

const KOVAN = 'memory: Kovan; Kosilova and Meshcheryakov, vol. 1'

/** A bar's axis is off where it is not held: by its bow over the overhang, and by how well its skin finds the centre. */
export const centringError: Formula<{ T_b: 'µm' }, 'µm'> = formula({
  symbol: 'rho_2',
  meaning: "offset of a bar's axis through centring on its skin",
  unit: 'µm',
  expression: '250 * sqrt((T_b / 1000)^2 + 1)',
  inputs: { T_b: { meaning: "tolerance on the bar's diameter", unit: 'µm', from: 0 } },
  source: KOVAN,
  example: { given: { T_b: 190 }, gives: 254.5 },
  value: ({ T_b }) => 250 * Math.sqrt((T_b / 1000) ** 2 + 1),
})

export const barBow: Formula<{ D_c: 'µm/mm'; L: 'mm' }, 'µm'> = formula({
  symbol: 'rho_1',
  meaning: 'bow of a bar over its overhang',
  unit: 'µm',
  expression: 'D_c * L',
  inputs: {
    D_c: { meaning: 'bow of the bar for each mm of overhang', unit: 'µm/mm', from: 0 },
    L: { meaning: 'overhang', unit: 'mm', from: 0 },
  },
  source: KOVAN,
  example: { given: { D_c: 1, L: 80 }, gives: 80 },
  value: ({ D_c, L }) => D_c * L,
})

export const skinAllowance: Formula<{ s: 'mm' }, 'mm'> = formula({
  symbol: 'Z_s',
  meaning: 'least to turn off a bar, on diameter, to be through its skin',
  unit: 'mm',
  expression: '2 * s',
  inputs: { s: { meaning: 'depth of the skin: decarburised, chilled or drawn', unit: 'mm', from: 0 } },
  source: 'derived: both sides',
  example: { given: { s: 1.25 }, gives: 2.5 },
  value: ({ s }) => 2 * s,
})

/** Seams and laps go with the size of the bar. */
export const rolledDefectAllowance: Formula<{ d: 'mm' }, 'mm'> = formula({
  symbol: 'Z_d',
  meaning: 'least to turn off a hot-rolled bar, on diameter, to be under its surface defects',
  unit: 'mm',
  expression: '2 * 0.016 * d',
  inputs: { d: { meaning: 'diameter of the bar', unit: 'mm', over: 0 } },
  source: 'bar distributor: 1.6 % of the diameter for each side',
  example: { given: { d: 70 }, gives: 2.24 },
  value: ({ d }) => 2 * 0.016 * d,
})
