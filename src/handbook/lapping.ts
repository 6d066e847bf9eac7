import { type Formula, formula } from '../formula.ts'

/**
 * Lapping of pins: soft cast-iron ring, 10 to 30 m/min, 0.02 to 0.05 N/mm², stock 3 to 10 µm on diameter, ring no longer
 * than the pin. It takes out no lobes. Source: Fundamentals of Machining Processes (El-Hofy), ±0.5 µm; the rest common
 * practice, no source.
 */
export const LAPPING = {
  speed: 20,
  pressure: [0.02, 0.05],
  stock: [0.003, 0.01],
  /** µm/min on diameter, F400 to F600 alumina. */
  rate: [1, 3],
  roughness: [0.05, 0.1],
} as const

export const lappingTime: Formula<'z' | 'rate'> = formula({
  symbol: 't',
  meaning: 'lapping time',
  unit: 'min',
  expression: '1000 * z / rate',
  inputs: {
    z: { meaning: 'stock on diameter', unit: 'mm', from: 0, upTo: 0.1 },
    rate: { meaning: 'removal on diameter', unit: 'µm/min', over: 0, upTo: 20 },
  },
  source: 'derived: kinematics; removal: common practice, no source',
  example: { given: { z: 0.01, rate: 2 }, gives: 5 },
  value: ({ z, rate }) => (1000 * z) / rate,
})
