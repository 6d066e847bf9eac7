import { type Formula, formula, type Input } from '../formula.ts'

/**
 * Whether a long cycle softens a tempered core. Never find the temper from the hardness: published tables for one steel lie
 * 120 K apart. It is read from the bar certificate.
 */
const T: Input<'°C'> = { meaning: 'temperature', unit: '°C', from: 100, upTo: 720 }
const t: Input<'h'> = { meaning: 'time at temperature', unit: 'h', over: 0, upTo: 1000 }
const CONSTANT = 'Hollomon-Jaffe parameter, constant 20 for low-alloy steel as cited in an engineering note'

/** A bar's temper is taken as this long when the certificate does not say, h. */
export const USUAL_TEMPER_TIME = 2

export const equivalentTemper: Formula<{ T: '°C'; t: 'h'; t_0: 'h' }, '°C'> = formula({
  symbol: 'T_eq',
  meaning: 'temper that softens as much as the cycle does',
  unit: '°C',
  expression: '(T + 273.15) * (20 + log10(t)) / (20 + log10(t_0)) - 273.15',
  inputs: { T, t, t_0: { ...t, meaning: 'time of the temper' } },
  source: CONSTANT,
  example: { given: { T: 520, t: 50, t_0: USUAL_TEMPER_TIME }, gives: 574.6 },
  value: ({ T, t, t_0 }) => ((T + 273.15) * (20 + Math.log10(t))) / (20 + Math.log10(t_0)) - 273.15,
})
