import { type Formula, formula, type Input } from '../formula.ts'

/** A boring bar or a grinding quill as a round cantilever. Holder and spindle give way too and are left out. */
const E: Input<'N/mm²'> = { meaning: 'elastic modulus of the bar', unit: 'N/mm²', from: 60_000, upTo: 700_000 }
const L: Input<'mm'> = { meaning: 'overhang', unit: 'mm', over: 0, upTo: 10_000 }
const d: Input<'mm'> = { meaning: 'diameter of the bar', unit: 'mm', over: 0, upTo: 1000 }
const F: Input<'N'> = { meaning: 'force across the end of the bar', unit: 'N', from: 0, upTo: 10_000_000 }

/**
 * Source of the moduli: steel: Isakov, Cutting Tool Engineering, July 2019, and steel data sheets (206 to 210 GPa);
 * carbide and heavy metal: memory. A damped bar is steel round its damper, and bends as steel does.
 */
export const ELASTIC_MODULUS = {
  steel: 206_000,
  quillSteel: 210_000,
  carbide: 580_000,
  heavyMetal: 330_000,
  damped: 206_000,
} as const

/**
 * How far a bar may stand out, in diameters. Source: common practice, no source; the figures are those of a published
 * table that could not be identified. 3 for a good finish with a steel bar. Damped: memory, 10 and more.
 */
export const LONGEST_OVERHANG = { steel: 4, heavyMetal: 5, carbide: 6, damped: 10 } as const

/** So that the chips get out. Source: common practice, no source: 0.7 to 0.8 of the bore. */
export const LARGEST_BAR_IN_BORE = 0.8

export const barDeflection: Formula<{ F: 'N'; L: 'mm'; E: 'N/mm²'; d: 'mm' }, 'mm'> = formula({
  symbol: 'y',
  meaning: 'deflection at the end of the bar',
  unit: 'mm',
  expression: '64 * F * L^3 / (3 * E * pi * d^4)',
  inputs: { F, L, E, d },
  source: 'Isakov, Cutting Tool Engineering, July 2019',
  example: { given: { F: 911.1, L: 101.6, E: 206_000, d: 25.4 }, gives: 0.0757 },
  value: ({ F, L, E, d }) => (64 * F * L ** 3) / (3 * E * Math.PI * d ** 4),
})

export const barStiffness: Formula<{ L: 'mm'; E: 'N/mm²'; d: 'mm' }, 'N/µm'> = formula({
  symbol: 'k',
  meaning: 'stiffness at the end of the bar',
  unit: 'N/µm',
  expression: '3 * E * pi * d^4 / (64 * L^3) / 1000',
  inputs: { L, E, d },
  source: 'derived: beam theory',
  example: { given: { L: 90, E: 210_000, d: 20 }, gives: 6.787 },
  value: ({ L, E, d }) => (3 * E * Math.PI * d ** 4) / (64 * L ** 3) / 1000,
})
