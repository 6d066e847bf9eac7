import { type Formula, formula, type Input } from '../formula.ts'

/**
 * Least machining allowance after Kovan: roughness and damaged layer of the step before, where the surface lies, and the
 * setting error of the present step. On diameter for surfaces of revolution. Micrometres, as in the handbooks.
 */
const SOURCE = 'memory: V. M. Kovan; Kosilova & Meshcheryakov, vol. 1'
const micrometres = (meaning: string): Input => ({ meaning, unit: 'µm', from: 0, upTo: 10_000 })
const Rz = micrometres('roughness height left by the step before')
const T = micrometres('damaged layer left by the step before')
const rho = micrometres('spatial deviation left by the step before: bow, offset of axes, distortion')
const epsilon = micrometres('setting error of the present step')

/** After hardening T is dropped, and is the compound layer to be removed for a nitrided part; dropped too for cast iron. */
export const allowanceOfRevolution: Formula<'Rz' | 'T' | 'rho' | 'epsilon'> = formula({
  symbol: '2Z_min',
  meaning: 'least allowance on diameter of a surface of revolution',
  unit: 'µm',
  expression: '2 * (Rz + T + sqrt(rho^2 + epsilon^2))',
  inputs: { Rz, T, rho, epsilon },
  source: SOURCE,
  example: { given: { Rz: 20, T: 0, rho: 39.05, epsilon: 10 }, gives: 120.6 },
  value: ({ Rz, T, rho, epsilon }) => 2 * (Rz + T + Math.sqrt(rho ** 2 + epsilon ** 2)),
})

export const allowanceOfFace: Formula<'Rz' | 'T' | 'rho' | 'epsilon'> = formula({
  symbol: 'Z_min',
  meaning: 'least allowance of one flat face',
  unit: 'µm',
  expression: 'Rz + T + rho + epsilon',
  inputs: { Rz, T, rho, epsilon },
  source: SOURCE,
  example: { given: { Rz: 20, T: 10, rho: 25, epsilon: 10 }, gives: 65 },
  value: ({ Rz, T, rho, epsilon }) => Rz + T + rho + epsilon,
})

/** A hone, a floating reamer, a broach: it does not correct the position; a hone also needs the form error of the bore. */
export const allowanceOfFloatingTool: Formula<'Rz' | 'T'> = formula({
  symbol: '2Z_min',
  meaning: 'least allowance on diameter for a tool that follows the bore',
  unit: 'µm',
  expression: '2 * (Rz + T)',
  inputs: { Rz, T },
  source: SOURCE,
  example: { given: { Rz: 3, T: 4 }, gives: 14 },
  value: ({ Rz, T }) => 2 * (Rz + T),
})

/** Of two independent causes. */
export const spatialDeviation: Formula<'rho_1' | 'rho_2'> = formula({
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

export const deviationLeft: Formula<'k' | 'rho'> = formula({
  symbol: 'rho_i',
  meaning: 'spatial deviation that a cut leaves',
  unit: 'µm',
  expression: 'k * rho',
  inputs: { k: { meaning: 'share that the cut leaves', unit: '', from: 0, upTo: 1 }, rho },
  source: SOURCE,
  example: { given: { k: 0.06, rho: 262.5 }, gives: 15.75 },
  value: ({ k, rho }) => k * rho,
})

/** Share of the spatial deviation that a cut leaves. Source: memory: Kosilova & Meshcheryakov, vol. 1. */
export const SHARE_LEFT: Readonly<
  Record<'rough turning' | 'semi-finish turning' | 'finish turning' | 'rough grinding' | 'finish grinding', number>
> = {
  'rough turning': 0.06,
  'semi-finish turning': 0.05,
  'finish turning': 0.04,
  'rough grinding': 0.03,
  'finish grinding': 0.02,
}

/** Worst pair of limits: the stock is never less than the least for any two pieces. Millimetres. */
export const sizeBefore: Formula<'d' | 'Z' | 'g'> = formula({
  symbol: 'd_before',
  meaning: 'lower limit of a shaft before, so that the least allowance is there',
  unit: 'mm',
  expression: 'd + Z - g',
  inputs: {
    d: { meaning: 'upper limit after', unit: 'mm', over: 0, upTo: 1000 },
    Z: { meaning: 'least allowance on diameter', unit: 'mm', from: 0, upTo: 50 },
    g: { meaning: 'least growth on diameter between the two', unit: 'mm', from: -1, upTo: 1 },
  },
  source: `${SOURCE}; the handbooks are remembered as pairing like limits, which lets the least allowance be missed`,
  example: { given: { d: 56.18, Z: 0.332, g: 0 }, gives: 56.512 },
  value: ({ d, Z, g }) => d + Z - g,
})

export const largestAllowance: Formula<'Z' | 'delta_1' | 'delta_2'> = formula({
  symbol: '2Z_max',
  meaning: 'largest allowance on diameter',
  unit: 'mm',
  expression: 'Z + delta_1 + delta_2',
  inputs: {
    Z: { meaning: 'least allowance on diameter', unit: 'mm', from: 0, upTo: 50 },
    delta_1: { meaning: 'tolerance before', unit: 'mm', from: 0, upTo: 10 },
    delta_2: { meaning: 'tolerance after', unit: 'mm', from: 0, upTo: 10 },
  },
  source: SOURCE,
  example: { given: { Z: 0.1348, delta_1: 0.062, delta_2: 0.016 }, gives: 0.2128 },
  value: ({ Z, delta_1, delta_2 }) => Z + delta_1 + delta_2,
})
