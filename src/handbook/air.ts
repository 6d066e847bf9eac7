import { type Formula, formula, type Input } from '../formula.ts'

/** Moist air at the engine. Against the CIPM-2007 equation density is 0.04 % low, which is enough for a comparison. */
const pressure: Input<'Pa'> = { meaning: 'pressure at the engine', unit: 'Pa', from: 50_000, upTo: 110_000 }
const vapour: Input<'Pa'> = { meaning: 'pressure of the vapour', unit: 'Pa', from: 0, upTo: 20_000 }
const temperature: Input<'°C'> = { meaning: 'temperature of the air', unit: '°C', from: -30, upTo: 60 }

export const vapourPressure: Formula<{ t: '°C'; phi: '' }, 'Pa'> = formula({
  symbol: 'p_v',
  meaning: 'pressure of the vapour in the air',
  unit: 'Pa',
  expression: 'phi * 610.78 * 10^(7.5 * t / (t + 237.3))',
  inputs: { t: temperature, phi: { meaning: 'relative humidity', unit: '', from: 0, upTo: 1 } },
  source: 'National Center for Atmospheric Research, note of 1980, form in mbar',
  example: { given: { t: 30, phi: 0.5 }, gives: 2121.3 },
  value: ({ t, phi }) => phi * 610.78 * 10 ** ((7.5 * t) / (t + 237.3)),
})

export const airDensity: Formula<{ p: 'Pa'; p_v: 'Pa'; t: '°C' }, 'kg/m³'> = formula({
  symbol: 'ρ',
  meaning: 'density of moist air',
  unit: 'kg/m³',
  expression: '(p - p_v) / (287.058 * (t + 273.15)) + p_v / (461.495 * (t + 273.15))',
  inputs: { p: pressure, p_v: vapour, t: temperature },
  source: 'two ideal gases, constants as published on two pages; ISO 2533 for dry air at 15 °C',
  example: { given: { p: 101_325, p_v: 0, t: 15 }, gives: 1.225, digits: 4 },
  value: ({ p, p_v, t }) => (p - p_v) / (287.058 * (t + 273.15)) + p_v / (461.495 * (t + 273.15)),
})
