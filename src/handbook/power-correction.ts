import { type Formula, formula, type Input } from '../formula.ts'

/**
 * Factors that bring power read in one air to the air of reference. Between rules they differ by 2 % in the same air, so that a
 * figure goes with the name of its rule. None was made for two-strokes: they rank, and prove nothing.
 */
const pressure = (meaning: string): Input<'kPa'> => ({ meaning, unit: 'kPa', from: 50, upTo: 110 })
const p_d = pressure('pressure of the dry air')
const t: Input<'°C'> = { meaning: 'temperature of the air', unit: '°C', from: -30, upTo: 60 }

const j1349: Formula<{ p_d: 'kPa'; t: '°C' }, ''> = formula({
  symbol: 'CF',
  meaning: 'factor on power by SAE J1349',
  unit: '',
  expression: '1.18 * 99 / p_d * sqrt((t + 273.15) / 298.15) - 0.18',
  inputs: { p_d, t },
  source: 'SAE J1349, June 1990, as restated on three pages',
  example: { given: { p_d: 101.159, t: 12 }, gives: 0.94936 },
  value: ({ p_d, t }) => ((1.18 * 99) / p_d) * Math.sqrt((t + 273.15) / 298.15) - 0.18,
})

const iso1585: Formula<{ p_d: 'kPa'; t: '°C' }, ''> = formula({
  symbol: 'α',
  meaning: 'factor on power by ISO 1585, spark ignition',
  unit: '',
  expression: '(99 / p_d)^1.2 * ((t + 273.15) / 298)^0.6',
  inputs: { p_d, t },
  source: 'memory: ISO 1585 and UN R85; air of reference as in EU 134/2014, appendix 2.2',
  example: { given: { p_d: 99, t: 25 }, gives: 1.0003 },
  value: ({ p_d, t }) => (99 / p_d) ** 1.2 * ((t + 273.15) / 298) ** 0.6,
})

const din70020: Formula<{ p: 'kPa'; t: '°C' }, ''> = formula({
  symbol: 'CF',
  meaning: 'factor on power by DIN 70020, withdrawn',
  unit: '',
  expression: '101.3 / p * sqrt((t + 273.15) / 293)',
  inputs: { p: pressure('pressure of the air, vapour and all'), t },
  source: 'memory: DIN 70020; air of reference as on two pages',
  example: { given: { p: 100.84, t: 18 }, gives: 1.0014 },
  value: ({ p, t }) => (101.3 / p) * Math.sqrt((t + 273.15) / 293),
})

const iso3046: Formula<{ p_d: 'kPa'; t: '°C' }, ''> = formula({
  symbol: 'CF',
  meaning: 'factor on power by ISO 3046-1, naturally aspirated, spark ignition, mechanical efficiency 0.8',
  unit: '',
  expression: '1 / (p_d / 99.05 * sqrt(298 / (t + 273.15)) - 0.175 * (1 - p_d / 99.05 * sqrt(298 / (t + 273.15))))',
  inputs: { p_d, t },
  source: 'memory: ISO 3046-1, α from reference to site turned round; 100 kPa, 25 °C, 30 %',
  example: { given: { p_d: 99.58, t: 18 }, gives: 0.9803 },
  value: ({ p_d, t }) => {
    const k = (p_d / 99.05) * Math.sqrt(298 / (t + 273.15))
    return 1 / (k - 0.175 * (1 - k))
  },
})

export type CorrectionRule = 'SAE J1349' | 'ISO 1585' | 'DIN 70020' | 'ISO 3046-1'

/** Air at the engine: whole and dry pressure in kPa, °C. */
export type AirRead = { readonly p: number; readonly p_d: number; readonly t: number }

type Correction = {
  readonly source: string
  readonly factor: (air: AirRead) => number
  readonly from: number
  readonly upTo: number
}

/** What each rule may be used for: a factor beyond is no longer one of its own. The ends are from memory, the last two estimates. */
export const CORRECTIONS: Readonly<Record<CorrectionRule, Correction>> = {
  'SAE J1349': { source: j1349.source, factor: ({ p_d, t }) => j1349.value({ p_d, t }), from: 0.93, upTo: 1.07 },
  'ISO 1585': { source: iso1585.source, factor: ({ p_d, t }) => iso1585.value({ p_d, t }), from: 0.93, upTo: 1.07 },
  'DIN 70020': { source: din70020.source, factor: ({ p, t }) => din70020.value({ p, t }), from: 0.93, upTo: 1.07 },
  'ISO 3046-1': { source: iso3046.source, factor: ({ p_d, t }) => iso3046.value({ p_d, t }), from: 0.93, upTo: 1.07 },
}

/** The power that falls with density on a propeller whose load falls with it too: its speed corrects itself for the most part. */
export const referenceSpeed: Formula<{ n: 'rpm'; CF: ''; r: ''; q: '' }, 'rpm'> = formula({
  symbol: 'n_ref',
  meaning: 'speed on the same load in the air of reference',
  unit: 'rpm',
  expression: 'n * (CF * r)^(1 / (3 - q))',
  inputs: {
    n: { meaning: 'speed read', unit: 'rpm', over: 0 },
    CF: { meaning: 'factor on power', unit: '', over: 0, upTo: 2 },
    r: { meaning: 'density by density of reference; 1 where the load is not air', unit: '', over: 0, upTo: 2 },
    q: { meaning: 'power of the engine goes as speed to this power', unit: '', from: 0, upTo: 1 },
  },
  source: 'derived: engine power as CF, load as density and the cube of speed',
  example: { given: { n: 11_120, CF: 0.94936, r: 1.24223 / 1.15673, q: 1 }, gives: 11_228, digits: 0 },
  value: ({ n, CF, r, q }) => n * (CF * r) ** (1 / (3 - q)),
})
