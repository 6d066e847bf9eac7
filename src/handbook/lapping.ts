import { type Formula, formula } from '../formula.ts'

/**
 * Soft cast-iron ring laps on a turning pin. The coarse compound is loose alumina F400 to F600, the fine one F800 to F1200;
 * no source gives a removal rate for the fine one, or the roughness that the coarse one leaves.
 */
export const LAPPING = {
  /** On diameter, mm. */
  stock: { least: 0.003, most: 0.01 },
  /** m/min. */
  speed: { least: 10, most: 30, usual: 20 },
  /** On diameter, µm/min, with the coarse compound. */
  rate: { least: 1, most: 3, usual: 2 },
  /** N/mm². */
  pressure: { least: 0.02, most: 0.05 },
  /** Ra that the fine compound leaves, µm. */
  fineRa: { least: 0.05, most: 0.1 },
  /** What a lapped pin is held to: out of round µm, and size from end to end µm over 50 mm. */
  pin: { roundness: 1, taper: 2 },
  source: 'common practice, no source',
} as const

export const lappingTime: Formula<{ z: 'mm'; rate: 'µm/min' }, 'min'> = formula({
  symbol: 't',
  meaning: 'lapping time',
  unit: 'min',
  expression: '1000 * z / rate',
  inputs: {
    z: { meaning: 'stock on diameter', unit: 'mm', from: 0, upTo: 10 },
    rate: { meaning: 'removal on diameter', unit: 'µm/min', over: 0, upTo: 20 },
  },
  source: 'derived: kinematics; removal: common practice, no source',
  example: { given: { z: 0.01, rate: 2 }, gives: 5 },
  value: ({ z, rate }) => (1000 * z) / rate,
})
