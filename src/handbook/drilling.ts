import { type Formula, formula, type Input } from '../formula.ts'

/**
 * Thrust of a twist drill by two methods that differ by up to two: Kienzle's law, which gives its torque too, and the
 * handbook's constants after Shaw and Oxford. Show the band, not one figure.
 */
const D: Input<'mm'> = { meaning: 'diameter of the drill', unit: 'mm', over: 0, upTo: 500 }
const f: Input<'mm/rev'> = { meaning: 'feed', unit: 'mm/rev', over: 0, upTo: 20 }
const kc: Input<'N/mm²'> = { meaning: 'specific cutting force', unit: 'N/mm²', from: 200, upTo: 1_000_000 }
const sigma: Input<'deg'> = { meaning: 'point angle', unit: 'deg', from: 60, upTo: 180 }
const n: Input<'rpm'> = { meaning: 'spindle speed', unit: 'rpm', over: 0, upTo: 1_000_000 }
const Kd: Input<''> = { meaning: "work material's constant", unit: '', from: 5000, upTo: 40_000 }
const W: Input<''> = { meaning: 'factor for wear, 1 sharp, 1.3 worn', unit: '', from: 1, upTo: 2 }

const HANDBOOK = "Machinery's Handbook, 31st ed., pp. 1152-1153"

/** Chisel edge of the handbook's formula. Source: Machinery's Handbook, 31st ed., p. 1153. */
export const CHISEL = {
  standard: { A: 1.085, B: 1.355, J: 0.03 },
  split: { A: 1, B: 1.1, J: 0.001 },
} as const

/**
 * Constant of the handbook's formula for steel, linear between these hardnesses.
 * Source: memory: Machinery's Handbook, drilling table 6; independently 23 300 for alloy steel of 200 HB (Fundamentals of
 * Tool Design, 6th ed., p. 83).
 */
export const STEEL_DRILL_CONSTANT: readonly { readonly HB: number; readonly Kd: number }[] = [
  { HB: 200, Kd: 24_000 },
  { HB: 300, Kd: 31_000 },
  { HB: 400, Kd: 34_000 },
]

/** Of each of the two lips. */
export const drillChipThickness: Formula<{ f: 'mm/rev'; sigma: 'deg' }, 'mm'> = formula({
  symbol: 'h',
  meaning: 'chip thickness of a two-lipped drill',
  unit: 'mm',
  expression: 'f / 2 * sin(sigma * pi / 360)',
  inputs: { f, sigma },
  source: 'derived: geometry',
  example: { given: { f: 0.04, sigma: 118 }, gives: 0.01714, digits: 5 },
  value: ({ f, sigma }) => (f / 2) * Math.sin((sigma * Math.PI) / 360),
})

export const drillTorque: Formula<{ kc: 'N/mm²'; f: 'mm/rev'; D: 'mm' }, 'N m'> = formula({
  symbol: 'M',
  meaning: 'drilling torque',
  unit: 'N m',
  expression: 'kc * f * D^2 / 8000',
  inputs: { kc, f, D },
  source: 'derived: geometry of two lips, force after Kienzle',
  example: { given: { kc: 4798, f: 0.18, D: 8.5 }, gives: 7.8, digits: 2 },
  value: ({ kc, f, D }) => (kc * f * D ** 2) / 8000,
})

/** A chisel that is not thinned pushes 1.5 to 2 times as hard. */
export const drillThrust: Formula<{ kc: 'N/mm²'; f: 'mm/rev'; D: 'mm'; sigma: 'deg' }, 'N'> = formula({
  symbol: 'F',
  meaning: 'drilling thrust, point thinned or split',
  unit: 'N',
  expression: '0.5 * kc * D / 2 * f * sin(sigma * pi / 360)',
  inputs: { kc, f, D, sigma },
  source: 'memory: Sandvik Coromant; Tschätsch',
  example: { given: { kc: 7348, f: 0.04, D: 2, sigma: 118 }, gives: 126 },
  value: ({ kc, f, D, sigma }) => ((0.5 * kc * D) / 2) * f * Math.sin((sigma * Math.PI) / 360),
})

export const drillPower: Formula<{ M: 'N m'; n: 'rpm' }, 'kW'> = formula({
  symbol: 'P',
  meaning: 'power at the drill',
  unit: 'kW',
  expression: 'M * n / 9550',
  inputs: { M: { meaning: 'drilling torque', unit: 'N m', from: 0, upTo: 1_000_000 }, n },
  source: 'derived: torque times speed',
  example: { given: { M: 7.799, n: 2621 }, gives: 2.14 },
  value: ({ M, n }) => (M * n) / 9550,
})

/** The handbook's tables are exactly these powers of feed and diameter; its 5.96 at 8.80 mm is a misprint of 5.70. */
export const handbookThrust: Formula<{ Kd: ''; f: 'mm/rev'; D: 'mm'; B: ''; J: ''; W: '' }, 'N'> = formula({
  symbol: 'T',
  meaning: 'drilling thrust',
  unit: 'N',
  expression: '0.05 * Kd * f^0.8 * D^0.8 * B * W + 0.007 * Kd * D^2 * J * W',
  inputs: {
    Kd,
    f,
    D,
    B: { meaning: 'chisel factor of thrust', unit: '', from: 1, upTo: 2 },
    J: { meaning: 'chisel factor of thrust', unit: '', from: 0, upTo: 0.1 },
    W,
  },
  source: HANDBOOK,
  example: { given: { Kd: 24_000, f: 0.04, D: 2, B: 1.355, J: 0.03, W: 1 }, gives: 235.7 },
  value: ({ Kd, f, D, B, J, W }) => 0.05 * Kd * f ** 0.8 * D ** 0.8 * B * W + 0.007 * Kd * D ** 2 * J * W,
})
