import { type Formula, formula } from '../formula.ts'
import type { Micrometre } from '../units.ts'
import type { NominalRange } from './nominal-range.ts'

const KOVAN = 'memory: Kovan; Kosilova and Meshcheryakov, vol. 1'

/** Offset of the bar's axis where it is not held: its bow over the overhang, and how well its skin finds the centre. */
export const centringError: Formula<'T_b'> = formula({
  symbol: 'rho_c',
  meaning: "offset of a bar's axis through centring on its skin",
  unit: 'µm',
  expression: '250 * sqrt((T_b / 1000)^2 + 1)',
  inputs: { T_b: { meaning: "tolerance on the bar's diameter", unit: 'µm', from: 0 } },
  source: KOVAN,
  example: { given: { T_b: 190 }, gives: 254.5 },
  value: ({ T_b }) => 250 * Math.sqrt((T_b / 1000) ** 2 + 1),
})

export const barDeviation: Formula<'D_c' | 'L' | 'rho_c'> = formula({
  symbol: 'rho',
  meaning: "deviation of a bar's skin from the axis it is turned about",
  unit: 'µm',
  expression: 'sqrt((D_c * L)^2 + rho_c^2)',
  inputs: {
    D_c: { meaning: 'bow of the bar for each mm of overhang', unit: 'µm/mm', from: 0 },
    L: { meaning: 'overhang', unit: 'mm', from: 0 },
    rho_c: { meaning: 'offset through centring', unit: 'µm', from: 0 },
  },
  source: KOVAN,
  example: { given: { D_c: 1, L: 80, rho_c: 250 }, gives: 262.5 },
  value: ({ D_c, L, rho_c }) => Math.hypot(D_c * L, rho_c),
})

export const barAllowance: Formula<'Rz' | 'T' | 'rho' | 'epsilon'> = formula({
  symbol: 'Z',
  meaning: 'least to turn off a bar, on diameter, for its skin to clean up',
  unit: 'µm',
  expression: '2 * (Rz + T + sqrt(rho^2 + epsilon^2))',
  inputs: {
    Rz: { meaning: 'roughness height of the bar', unit: 'µm', from: 0 },
    T: { meaning: 'damaged layer under it', unit: 'µm', from: 0 },
    rho: { meaning: "deviation of the bar's skin from the axis", unit: 'µm', from: 0 },
    epsilon: { meaning: 'setting error in the chuck', unit: 'µm', from: 0 },
  },
  source: KOVAN,
  example: { given: { Rz: 150, T: 150, rho: 262.5, epsilon: 80 }, gives: 1149, digits: 0 },
  value: ({ Rz, T, rho, epsilon }) => 2 * (Rz + T + Math.hypot(rho, epsilon)),
})

export const skinAllowance: Formula<'s'> = formula({
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
export const rolledDefectAllowance: Formula<'d'> = formula({
  symbol: 'Z_d',
  meaning: 'least to turn off a hot-rolled bar, on diameter, to be under its surface defects',
  unit: 'mm',
  expression: '2 * 0.016 * d',
  inputs: { d: { meaning: 'diameter of the bar', unit: 'mm', over: 0 } },
  source: 'bar distributor: 1.6 % of the diameter for each side',
  example: { given: { d: 70 }, gives: 2.24 },
  value: ({ d }) => 2 * 0.016 * d,
})

type SettingError = NominalRange & { readonly hotRolled: Micrometre; readonly machined: Micrometre }

/** Radial setting error in a three-jaw chuck, µm, by the diameter held. */
export const SETTING_ERRORS: { readonly source: string; readonly rows: readonly SettingError[] } = {
  source: 'textbook table of setting errors; its diameter heads from memory',
  rows: [
    { over: 10, upTo: 18, hotRolled: 220, machined: 50 },
    { over: 18, upTo: 30, hotRolled: 270, machined: 60 },
    { over: 30, upTo: 50, hotRolled: 320, machined: 70 },
    { over: 50, upTo: 80, hotRolled: 370, machined: 80 },
    { over: 80, upTo: 120, hotRolled: 420, machined: 100 },
    { over: 120, upTo: 180, hotRolled: 500, machined: 120 },
    { over: 180, upTo: 260, hotRolled: 600, machined: 140 },
  ],
}
