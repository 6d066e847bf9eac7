import { type Formula, formula, type Input } from '../../../src/formula.ts'

/** Drilling by another handbook's torque and a drill maker's own formula: the band about the law that is planned with. */
const D: Input<'mm'> = { meaning: 'diameter of the drill', unit: 'mm', over: 0, upTo: 500 }
const f: Input<'mm/rev'> = { meaning: 'feed', unit: 'mm/rev', over: 0, upTo: 20 }
const Kd: Input<''> = { meaning: "work material's constant", unit: '', from: 5000, upTo: 40_000 }
const W: Input<''> = { meaning: 'factor for wear, 1 sharp, 1.3 worn', unit: '', from: 1, upTo: 2 }
const K: Input<''> = { meaning: "work material's constant", unit: '', from: 0.5, upTo: 5 }

const HANDBOOK = "Machinery's Handbook, 31st ed., pp. 1152-1153"
const MAKER = 'Tungaloy general catalogue 2020-21, p. L068'

export type HighSpeedSteelRow = {
  readonly work: string
  readonly HB: readonly [number, number]
  readonly speed: number
}

/** High-speed steel, m/min. Source: HSS drilling charts by hardness (ProtoCutter, after Metcut-type tables). */
export const HSS_DRILLING: readonly HighSpeedSteelRow[] = [
  { work: 'alloy steel', HB: [175, 225], speed: 21 },
  { work: 'alloy steel', HB: [250, 300], speed: 14 },
  { work: 'alloy steel', HB: [300, 350], speed: 9 },
  { work: 'unalloyed steel', HB: [125, 175], speed: 27 },
  { work: 'unalloyed steel', HB: [175, 225], speed: 23 },
  { work: 'unalloyed steel', HB: [225, 275], speed: 18 },
  { work: 'grey iron', HB: [160, 200], speed: 27 },
  { work: 'grey iron', HB: [190, 220], speed: 24 },
  { work: 'grey iron', HB: [220, 260], speed: 18 },
  { work: 'ductile iron', HB: [190, 225], speed: 21 },
  { work: 'ductile iron', HB: [225, 260], speed: 15 },
]

/** Source: Tungaloy general catalogue 2020-21, p. L068. */
export const MAKERS_DRILL_CONSTANT: readonly { readonly work: string; readonly HB: number; readonly K: number }[] = [
  { work: 'cast iron', HB: 177, K: 1 },
  { work: 'cast iron', HB: 198, K: 1.39 },
  { work: 'cast iron', HB: 224, K: 1.88 },
  { work: 'aluminium', HB: 100, K: 1.01 },
  { work: 'low-carbon steel', HB: 160, K: 2.22 },
  { work: 'free-cutting steel', HB: 183, K: 1.42 },
  { work: 'chromium-molybdenum steel', HB: 229, K: 2.1 },
  { work: 'chromium-molybdenum steel', HB: 269, K: 2.41 },
  { work: 'nickel-chromium-molybdenum steel', HB: 390, K: 3.44 },
]

export const handbookTorque: Formula<{ Kd: ''; f: 'mm/rev'; D: 'mm'; A: ''; W: '' }, 'N m'> = formula({
  symbol: 'M',
  meaning: 'drilling torque',
  unit: 'N m',
  expression: '0.000025 * Kd * f^0.8 * D^1.8 * A * W',
  inputs: { Kd, f, D, A: { meaning: 'chisel factor of torque', unit: '', from: 1, upTo: 2 }, W },
  source: HANDBOOK,
  example: { given: { Kd: 24_000, f: 0.04, D: 2, A: 1.085, W: 1 }, gives: 0.1726 },
  value: ({ Kd, f, D, A, W }) => 0.000025 * Kd * f ** 0.8 * D ** 1.8 * A * W,
})

export const makersThrust: Formula<{ K: ''; D: 'mm'; f: 'mm/rev' }, 'N'> = formula({
  symbol: 'F',
  meaning: 'drilling thrust',
  unit: 'N',
  expression: '570 * K * D * f^0.85',
  inputs: { K, D, f },
  source: MAKER,
  example: { given: { K: 2.22, D: 2, f: 0.04 }, gives: 164.1 },
  value: ({ K, D, f }) => 570 * K * D * f ** 0.85,
})

export const makersTorque: Formula<{ K: ''; D: 'mm'; f: 'mm/rev' }, 'N m'> = formula({
  symbol: 'M',
  meaning: 'drilling torque',
  unit: 'N m',
  expression: 'K * D^2 * (0.630 + 16.84 * f) / 100',
  inputs: { K, D, f },
  source: MAKER,
  example: { given: { K: 2.22, D: 2, f: 0.04 }, gives: 0.1158 },
  value: ({ K, D, f }) => (K * D ** 2 * (0.63 + 16.84 * f)) / 100,
})
