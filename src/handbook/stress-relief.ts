import { type Formula, formula } from '../formula.ts'

/** Kelvin. */
export const STRESS_RELIEF_MARGINS = {
  /** Over the nitriding temperature: 20 to 30. Common practice, no source. */
  overNitriding: 20,
  /** Under the temper: the steel cards of 42CrMo4 and 34CrAlNi7-10 (Lucefin) give 50. */
  underTemper: 50,
  /** The least that a careful furnace keeps under it. Common practice, no source. */
  leastUnderTemper: 20,
} as const

/** Kelvin that the temper must lie over the nitriding temperature. */
export const TEMPER_MARGIN = {
  /** Accepted by a public coating-engineering course; less is refused. */
  least: 20,
  /** Common practice, no source. Hollomon-Jaffe is the stricter for cycles over about 10 h. */
  usual: 30,
} as const

/** An older heat-treatment handbook stabilises 8 to 12 h; 2 h and the wall's own soak is what small sleeves get (common practice). */
export const stressReliefFloor: Formula<{ T_n: '°C'; m: 'K' }, '°C'> = formula({
  symbol: 'T_least',
  meaning: 'coolest stress relief, so that nitriding releases nothing more',
  unit: '°C',
  expression: 'T_n + m',
  inputs: {
    T_n: { meaning: 'nitriding temperature', unit: '°C', from: 300, upTo: 650 },
    m: { meaning: 'margin over nitriding', unit: 'K', from: 0, upTo: 100 },
  },
  source: 'common practice, no source: 20 to 30 K over the nitriding temperature',
  example: { given: { T_n: 520, m: 20 }, gives: 540 },
  value: ({ T_n, m }) => T_n + m,
})

export const stressReliefCeiling: Formula<{ T_t: '°C'; m: 'K' }, '°C'> = formula({
  symbol: 'T_most',
  meaning: 'hottest stress relief that leaves the temper alone',
  unit: '°C',
  expression: 'T_t - m',
  inputs: {
    T_t: { meaning: 'temper of the bar', unit: '°C', from: 100, upTo: 720 },
    m: { meaning: 'margin under the temper', unit: 'K', from: 0, upTo: 100 },
  },
  source: 'Lucefin technical cards 42CrMo4 and 34CrAlNi7-10: 50 K under the temper',
  example: { given: { T_t: 620, m: 50 }, gives: 570 },
  value: ({ T_t, m }) => T_t - m,
})
