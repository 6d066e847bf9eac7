import { type Formula, formula, type Input } from '../formula.ts'
import { gamma, lowerGammaShare } from './gamma-function.ts'

/**
 * A compressed case stretches the wall that it lies on. The force of a layer decides, not a final stress: the case gives way
 * as the wall stretches. One movement of the wall serves bore and outside alike.
 */
const stress = (meaning: string): Input<'MPa'> => ({ meaning, unit: 'MPa', from: 0, upTo: 2000 })
/** A case is no deeper than hardeners order, with the upper deviation of the deepest order. */
const depth = (meaning: string): Input<'mm'> => ({ meaning, unit: 'mm', from: 0, upTo: 1.25 })
const length = (meaning: string): Input<'mm'> => ({ meaning, unit: 'mm', over: 0, upTo: 1000 })
const nu: Input<''> = { meaning: "Poisson's ratio", unit: '', from: 0, under: 0.5 }
const E: Input<'MPa'> = { meaning: 'modulus of elasticity', unit: 'MPa', from: 50_000, upTo: 300_000 }

const EQUILIBRIUM =
  'derived: equilibrium; the mean strain of a free body is the mean of what its case would take alone; held against finite elements within 0.5 %'

export const profileFactor: Formula<{ H_s: 'HV'; H_c: 'HV'; n: '' }, ''> = formula({
  symbol: 'phi',
  meaning: 'mean stress over the hardness depth, as a share of the stress at the surface',
  unit: '',
  expression: 'gamma(1 + 1 / n) / log((H_s - H_c) / 50)^(1 / n)',
  inputs: {
    H_s: { meaning: 'surface hardness', unit: 'HV', from: 100, upTo: 2000 },
    H_c: { meaning: 'core hardness', unit: 'HV', from: 50, upTo: 1000 },
    n: { meaning: 'shape of the hardness curve', unit: '', from: 1, upTo: 2 },
  },
  source:
    'derived: area under the hardness curve; stress follows hardness nearly linearly: Yayla et al., Mater. Res. Express 11 (2024) 086517',
  example: { given: { H_s: 650, H_c: 320, n: 1.7 }, gives: 0.614123, digits: 6 },
  value: ({ H_s, H_c, n }) => {
    if (H_s - H_c <= 50) throw new RangeError(`phi: H_s must be more than 50 HV over H_c, got ${H_s} and ${H_c}`)
    return gamma(1 + 1 / n) / Math.log((H_s - H_c) / 50) ** (1 / n)
  },
})

export const caseStress: Formula<{ s_s: 'MPa'; phi: ''; c: '' }, 'MPa'> = formula({
  symbol: 's_0',
  meaning: 'mean compression of a case that cannot give way',
  unit: 'MPa',
  expression: 's_s * phi * c',
  inputs: {
    s_s: stress('compression at the surface'),
    phi: { meaning: 'mean stress over that at the surface', unit: '', over: 0, upTo: 2 },
    c: { meaning: 'what creep leaves of it in a hot process', unit: '', over: 0, upTo: 1 },
  },
  source: 'derived: force of the layer over its depth',
  example: { given: { s_s: 450, phi: 0.614123, c: 1 }, gives: 276.36 },
  value: ({ s_s, phi, c }) => s_s * phi * c,
})

export const bandStretch: Formula<{ nu: ''; s_0: 'MPa'; h_o: 'mm'; h_i: 'mm'; E: 'MPa'; t: 'mm' }, ''> = formula({
  symbol: 'epsilon',
  meaning: 'stretch of a wall by its case',
  unit: '',
  expression: '(1 - nu) * s_0 * (h_o + h_i) / (E * t)',
  inputs: {
    nu,
    s_0: stress('mean compression of the case'),
    h_o: depth('case outside'),
    h_i: depth('case in the bore'),
    E,
    t: length('wall'),
  },
  source: EQUILIBRIUM,
  example: { given: { nu: 0.3, s_0: 300, h_o: 0.3, h_i: 0.3, E: 206_000, t: 3 }, gives: 2.03883e-4, digits: 9 },
  value: ({ nu, s_0, h_o, h_i, E, t }) => ((1 - nu) * s_0 * (h_o + h_i)) / (E * t),
})

export const wallMove: Formula<{ R: 'mm'; epsilon: '' }, 'mm'> = formula({
  symbol: 'w',
  meaning: 'movement of the wall outward, the same outside and in the bore',
  unit: 'mm',
  expression: 'R * epsilon',
  inputs: {
    R: length('mean radius of the wall'),
    epsilon: { meaning: 'stretch of the wall', unit: '', from: 0, upTo: 0.05 },
  },
  source: EQUILIBRIUM,
  example: { given: { R: 28.5, epsilon: 2.03883e-4 }, gives: 0.005811, digits: 6 },
  value: ({ R, epsilon }) => R * epsilon,
})

export const coreTension: Formula<{ s_0: 'MPa'; h_o: 'mm'; h_i: 'mm'; t: 'mm' }, 'MPa'> = formula({
  symbol: 's_c',
  meaning: 'tension in the core that balances the case',
  unit: 'MPa',
  expression: 's_0 * (h_o + h_i) / t',
  inputs: {
    s_0: stress('mean compression of the case'),
    h_o: depth('case outside'),
    h_i: depth('case in the bore'),
    t: length('wall'),
  },
  source: EQUILIBRIUM,
  example: { given: { s_0: 276.3, h_o: 0.7, h_i: 0.7, t: 3.5 }, gives: 110.52 },
  value: ({ s_0, h_o, h_i, t }) => (s_0 * (h_o + h_i)) / t,
})

export const yieldOfCore: Formula<{ H_c: 'HV' }, 'MPa'> = formula({
  symbol: 'R_p',
  meaning: 'yield of the tempered core at 20 °C',
  unit: 'MPa',
  expression: '0.85 * 3.2 * H_c',
  inputs: { H_c: { meaning: 'core hardness', unit: 'HV', from: 50, upTo: 1000 } },
  source:
    'estimate: 0.85 of the tensile strength, which is about 3.2 times the hardness (ISO 18265, table A.1, 300 HV to 965 MPa)',
  example: { given: { H_c: 320 }, gives: 870.4 },
  value: ({ H_c }) => 0.85 * 3.2 * H_c,
})

/** Of the yield of the core: over the first the figures are doubtful, over the second the wall creeps. Estimate. */
export const CORE_TENSION_LIMITS = { warn: 0.3, refuse: 0.5 } as const

/**
 * Share of the force of a case that is gone when `s` is ground off it. `n` is the shape of the hardness curve.
 *
 * `P(1/n, (s/w_p)^n)`, P the regularised lower incomplete gamma function, `w_p = N / ln((H_s - H_c)/50)^(1/n)`.
 * Range: N over 0, s from 0. Source: derived: area under the hardness curve down to s.
 * @example releasedShare({ s: 0.1, N: 0.3, H_s: 650, H_c: 320, n: 1.7 }) gives 0.489068
 */
export function releasedShare({
  s,
  N,
  H_s,
  H_c,
  n,
}: {
  readonly s: number
  readonly N: number
  readonly H_s: number
  readonly H_c: number
  readonly n: number
}): number {
  const w_p = N / Math.log((H_s - H_c) / 50) ** (1 / n)
  return lowerGammaShare(1 / n, (Math.max(0, s) / w_p) ** n)
}

const F_x: Input<'N/mm'> = {
  meaning: 'force of the case that is gone less the tension of the core that went with it, along the circumference',
  unit: 'N/mm',
  from: -5000,
  upTo: 5000,
}

export const releaseMove: Formula<{ nu: ''; F_x: 'N/mm'; R: 'mm'; E: 'MPa'; t: 'mm' }, 'mm'> = formula({
  symbol: 'dw',
  meaning: 'movement of the wall outward when the force of a case is ground away, away from the ends',
  unit: 'mm',
  expression: '-(1 - nu) * F_x * R / (E * t)',
  inputs: {
    nu,
    F_x,
    R: length('mean radius of what is left'),
    E,
    t: length('wall that is left'),
  },
  source: 'derived: equilibrium; held against finite elements within 3 %',
  example: { given: { nu: 0.3, F_x: 35.02, R: 28.45, E: 206_000, t: 2.9 }, gives: -0.0011674, digits: 7 },
  value: ({ nu, F_x, R, E, t }) => (-(1 - nu) * F_x * R) / (E * t),
})

export const releaseFlare: Formula<{ nu: ''; F_x: 'N/mm'; R: 'mm'; E: 'MPa'; t: 'mm'; t_left: 'mm' }, 'mm'> = formula({
  symbol: 'flare',
  meaning: 'movement of the ends over the middle when the force of a case is ground away on one side',
  unit: 'mm',
  expression: 'sqrt(3 * (1 - nu^2)) * R * F_x * t / (E * t_left^2)',
  inputs: {
    nu,
    F_x,
    R: length('mean radius of what is left'),
    E,
    t: length('wall before'),
    t_left: length('wall that is left'),
  },
  source: 'derived: moment about the middle of the wall at a free end; held against finite elements within 5 %',
  example: { given: { nu: 0.3, F_x: 35.02, R: 28.45, E: 206_000, t: 3, t_left: 2.9 }, gives: 0.0028506, digits: 7 },
  value: ({ nu, F_x, R, E, t, t_left }) => (Math.sqrt(3 * (1 - nu ** 2)) * R * F_x * t) / (E * t_left ** 2),
})

/** Of the flare, a quarter wave in from the end, the other way: exp(-pi/2). */
export const SWING_BACK: number = Math.exp(-Math.PI / 2)
