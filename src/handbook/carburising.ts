import { type Formula, formula, type Input } from '../formula.ts'
import type { Millimetre } from '../units.ts'

/** The case hardening depth ends at this hardness, HV1, unless the drawing says another. */
export const CHD_LIMIT = 550

/** Case hardening depth as a share of the total carbon depth: memory. */
export const CHD_SHARE = { least: 0.6, usual: 0.7, most: 0.75 } as const

/** After tempering at 150 to 200 °C. */
export const CARBURISED_SURFACE = {
  least: 650,
  usual: 700,
  most: 750,
  source: 'Hauck Heat Treatment, case hardening page: 58 to 62 HRC, converted',
} as const

/** Core of 16MnCr5 in small sections: 30 to 40 HRC, converted. */
export const CARBURISED_CORE = { least: 302, usual: 345, most: 392, source: 'memory: 30 to 40 HRC, converted' } as const

/** After the quench, at once; 60 to 62 HRC are left, and 58 kept to 200 °C. Memory. */
export const CARBURISED_TEMPER = { least: 160, most: 180, source: 'memory: 160 to 180 °C, 2 h' } as const

/** Left in the case by the quench, per cent of volume. Memory. */
export const CARBURISED_AUSTENITE = { least: 10, most: 25 } as const

/** Ground off a carburised part, per side. Common practice, no source: 0.10 to 0.20. */
export const CARBURISED_STOCK: Millimetre = 0.15

const T: Input<'°C'> = { meaning: 'carburising temperature', unit: '°C', from: 800, upTo: 1050 }
const HARRIS = 'memory: Harris; total carbon depth, not effective depth: Flame Metallurgical note, Engineers Edge table'

/** Real cycles are longer: boost and diffuse, lower carbon potential, heating up. */
export const carburisingTime: Formula<{ CHD: 'mm'; r: ''; T: '°C' }, 'h'> = formula({
  symbol: 't',
  meaning: 'least time at temperature for a case hardening depth',
  unit: 'h',
  expression: '(CHD / r * 10^(6700 / (1.8 * (T + 273.15))) / (31.6 * 25.4))^2',
  inputs: {
    CHD: { meaning: 'case hardening depth', unit: 'mm', from: 0, upTo: 5 },
    r: { meaning: 'share of the total carbon depth', unit: '', over: 0, upTo: 1 },
    T,
  },
  source: `derived: inverse of ${HARRIS}`,
  example: { given: { CHD: 0.7, r: 0.7, T: 930 }, gives: 2.39, digits: 3 },
  value: ({ CHD, r, T }) => (((CHD / r) * 10 ** (6700 / (1.8 * (T + 273.15)))) / (31.6 * 25.4)) ** 2,
})
