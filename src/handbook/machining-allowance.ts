import { type Formula, formula, type Input } from '../formula.ts'

/**
 * Least machining allowance after Kovan: roughness and damaged layer of the step before, where the surface lies, and the
 * setting error of the present step. On diameter for surfaces of revolution. Micrometres, as in the handbooks.
 */
const SOURCE = 'memory: V. M. Kovan; Kosilova & Meshcheryakov, vol. 1'
const micrometres = (meaning: string): Input<'µm'> => ({ meaning, unit: 'µm', from: 0, upTo: 10_000 })
const Rz = micrometres('roughness height left by the step before')
const T = micrometres('damaged layer left by the step before')
const rho = micrometres('spatial deviation left by the step before: bow, offset of axes, distortion')
const epsilon = micrometres('setting error of the present step')

/** After hardening T is dropped, and is the compound layer to be removed for a nitrided part; dropped too for cast iron. */
export const allowanceOfRevolution: Formula<{ Rz: 'µm'; T: 'µm'; rho: 'µm'; epsilon: 'µm' }, 'µm'> = formula({
  symbol: '2Z_min',
  meaning: 'least allowance on diameter of a surface of revolution',
  unit: 'µm',
  expression: '2 * (Rz + T + sqrt(rho^2 + epsilon^2))',
  inputs: { Rz, T, rho, epsilon },
  source: SOURCE,
  example: { given: { Rz: 20, T: 0, rho: 39.05, epsilon: 10 }, gives: 120.6 },
  value: ({ Rz, T, rho, epsilon }) => 2 * (Rz + T + Math.sqrt(rho ** 2 + epsilon ** 2)),
})

/** Of two independent causes. */
export const spatialDeviation: Formula<{ rho_1: 'µm'; rho_2: 'µm' }, 'µm'> = formula({
  symbol: 'rho',
  meaning: 'spatial deviation from two causes',
  unit: 'µm',
  expression: 'sqrt(rho_1^2 + rho_2^2)',
  inputs: {
    rho_1: micrometres('bow or distortion'),
    rho_2: micrometres('centring error or offset of axes'),
  },
  source: SOURCE,
  example: { given: { rho_1: 30, rho_2: 25 }, gives: 39.05 },
  value: ({ rho_1, rho_2 }) => Math.hypot(rho_1, rho_2),
})
