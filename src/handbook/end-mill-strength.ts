import { type Formula, formula, type Input } from '../formula.ts'

/** A small end mill as a cantilever of two diameters: flutes, then shank or neck. Holder and spindle are left out. */
const F: Input<'N'> = { meaning: 'force across the tip', unit: 'N', from: 0, upTo: 1_000_000 }
const d1: Input<'mm'> = { meaning: 'diameter of the flutes as a solid rod', unit: 'mm', over: 0, upTo: 500 }
const l1: Input<'mm'> = { meaning: 'flutes and relief from the tip', unit: 'mm', over: 0, upTo: 1000 }

/** Tensile and transverse rupture: memory, carbide of 10 % cobalt, and half of it in tension (hardmetal engineering note). */
export const ENDURANCE = { static: 1200, repeated: 600 } as const

/** Margin against `ENDURANCE.static`. Source: common practice, no source. */
export const BREAKAGE_MARGIN = { least: 3, leastWithRunoutAndCorner: 2, corner: 1.5 } as const

export const fluteDiameter: Formula<{ D: 'mm' }, 'mm'> = formula({
  symbol: 'd1',
  meaning: 'diameter of a rod as stiff as the flutes',
  unit: 'mm',
  expression: '0.8 * D',
  inputs: { D: { meaning: 'diameter of the cutter', unit: 'mm', over: 0, upTo: 500 } },
  source: 'Kops and Vo, CIRP Annals (year 1990: memory): equal compliance, two and four flutes',
  example: { given: { D: 2 }, gives: 1.6 },
  value: ({ D }) => 0.8 * D,
})

/** For a load at height a above the tip, take l1 - a and L - a. */
export const endMillDeflection: Formula<{ F: 'N'; E: 'N/mm²'; l1: 'mm'; d1: 'mm'; L: 'mm'; d2: 'mm' }, 'µm'> = formula({
  symbol: 'delta',
  meaning: 'deflection of the cutter at its tip',
  unit: 'µm',
  expression: 'F * 64 / (3 * E * pi) * (l1^3 / d1^4 + (L^3 - l1^3) / d2^4) * 1000',
  inputs: {
    F,
    E: { meaning: 'elastic modulus, carbide 580 000', unit: 'N/mm²', from: 100_000, upTo: 700_000 },
    l1,
    d1,
    L: { meaning: 'stick-out from the holder', unit: 'mm', over: 0, upTo: 1000 },
    d2: { meaning: 'diameter of the shank', unit: 'mm', over: 0, upTo: 500 },
  },
  source: 'derived: beam theory',
  example: { given: { F: 16.93, E: 580_000, l1: 6, d1: 1.6, L: 20, d2: 6 }, gives: 7.724 },
  value: ({ F, E, l1, d1, L, d2 }) =>
    ((F * 64) / (3 * E * Math.PI)) * (l1 ** 3 / d1 ** 4 + (L ** 3 - l1 ** 3) / d2 ** 4) * 1000,
})

export const neckedEndMillDeflection: Formula<
  { F: 'N'; E: 'N/mm²'; l0: 'mm'; d1: 'mm'; l1: 'mm'; dn: 'mm'; L: 'mm'; d2: 'mm' },
  'µm'
> = formula({
  symbol: 'delta',
  meaning: 'deflection at its tip of a cutter with a neck',
  unit: 'µm',
  expression: 'F * 64 / (3 * E * pi) * (l0^3 / d1^4 + (l1^3 - l0^3) / dn^4 + (L^3 - l1^3) / d2^4) * 1000',
  inputs: {
    F,
    E: { meaning: 'elastic modulus, carbide 580 000', unit: 'N/mm²', from: 100_000, upTo: 700_000 },
    l0: { meaning: 'cutting edges from the tip', unit: 'mm', over: 0, upTo: 1000 },
    d1,
    l1: { meaning: 'edges and neck from the tip', unit: 'mm', over: 0, upTo: 1000 },
    dn: { meaning: 'diameter of the neck', unit: 'mm', over: 0, upTo: 500 },
    L: { meaning: 'stick-out from the holder', unit: 'mm', over: 0, upTo: 1000 },
    d2: { meaning: 'diameter of the shank', unit: 'mm', over: 0, upTo: 500 },
  },
  source: 'derived: beam theory',
  example: { given: { F: 10, E: 580_000, l0: 3, d1: 1.2, l1: 10, dn: 1.4, L: 24, d2: 6 }, gives: 32.34 },
  value: ({ F, E, l0, d1, l1, dn, L, d2 }) =>
    ((F * 64) / (3 * E * Math.PI)) *
    (l0 ** 3 / d1 ** 4 + (l1 ** 3 - l0 ** 3) / dn ** 4 + (L ** 3 - l1 ** 3) / d2 ** 4) *
    1000,
})

export const bendingStress: Formula<{ F: 'N'; l1: 'mm'; d1: 'mm' }, 'N/mm²'> = formula({
  symbol: 'sigma',
  meaning: 'bending stress where the flutes run out',
  unit: 'N/mm²',
  expression: '32 * F * l1 / (pi * d1^3)',
  inputs: { F, l1, d1 },
  source: 'derived: beam theory',
  example: { given: { F: 16.93, l1: 6, d1: 1.6 }, gives: 252.6 },
  value: ({ F, l1, d1 }) => (32 * F * l1) / (Math.PI * d1 ** 3),
})

export const breakageMargin: Formula<{ sigma: 'N/mm²' }, ''> = formula({
  symbol: 'SF',
  meaning: 'margin against breaking the cutter',
  unit: '',
  expression: '1200 / sigma',
  inputs: { sigma: { meaning: 'bending stress', unit: 'N/mm²', over: 0, upTo: 1e12 } },
  source: 'common practice, no source: 1200 N/mm² allowed in carbide',
  example: { given: { sigma: 252.6 }, gives: 4.75 },
  value: ({ sigma }) => ENDURANCE.static / sigma,
})
