import { type Formula, formula, type Input } from '../formula.ts'

/** Fluorescent magnetic particles, wet, in two directions at right angles: flaws within 60° of the best direction show. */
export const CRACK_TESTING = {
  /** Tangential field, kA/m. Source: excerpts of ISO 9934-1. */
  field: 2,
  /** What is left in the part after demagnetising, A/cm. Source: memory; equipment reaches 4 to 10 (ISO 9934-3), buyers ask 2 to 8. */
  residual: 3,
  /** UV-A at the part, W/m², and light from elsewhere, lx. Source: sheet of a penetrant maker. */
  ultraviolet: 10,
  light: 20,
  /** Minutes a piece: both directions, the look, and the pull through the coil. Source: common practice, no source. */
  look: 2.5,
  demagnetise: 0.3,
} as const

const D: Input<'mm'> = { meaning: 'outside diameter', unit: 'mm', over: 0 }

export const conductorCurrent: Formula<{ H: 'kA/m'; D: 'mm' }, 'A'> = formula({
  symbol: 'I',
  meaning: 'current through a conductor in the bore: shows cracks along the axis',
  unit: 'A',
  expression: 'H * pi * D',
  inputs: { H: { meaning: 'tangential field at the outside', unit: 'kA/m', over: 0 }, D },
  source: 'derived: law of Ampère; field by excerpts of ISO 9934-1',
  example: { given: { H: 2, D: 55 }, gives: 345.6 },
  value: ({ H, D }) => H * Math.PI * D,
})

export const coilTurns: Formula<{ L: 'mm'; D: 'mm'; d: 'mm' }, 'A'> = formula({
  symbol: 'NI',
  meaning: 'ampere-turns of a coil round a hollow part: shows cracks round the axis',
  unit: 'A',
  expression: '45000 / (L / sqrt(D^2 - d^2))',
  inputs: {
    L: { meaning: 'length', unit: 'mm', over: 0 },
    D,
    d: { meaning: 'bore, 0 for a solid part', unit: 'mm', from: 0 },
  },
  source:
    'a formula sheet of a testing society and an army manual; coil ten times the part, 2 to 15 diameters long, shorter with pole pieces',
  example: { given: { L: 92, D: 55, d: 48 }, gives: 13134, digits: 0 },
  value: ({ L, D, d }) => 45_000 / (L / Math.sqrt(D ** 2 - d ** 2)),
})
