import { type Formula, formula, type Input } from '../formula.ts'
import type { Range } from './nitriding-steels.ts'

/** Metal that is built up: the size before plating lies on the far side of the finished size. Per side, mm. */
export type Plating = {
  readonly coating: 'hard chrome' | 'nickel silicon carbide'
  /** Left when the bore is honed to size. */
  readonly thickness: Range
  /** Plated on top, to be honed off. */
  readonly honeStock: Range
  /** Held by the bath on the mean layer of a piece, either way. */
  readonly tolerance: number
  /** How much thinner or thicker the layer of one piece is at its worst place than in the mean, edges apart. */
  readonly unevenness: number
  /** Roughness height as plated, µm: what the hone must go through. */
  readonly roughness: number
  /** Of the layer, HV. */
  readonly hardness: { readonly least: number; readonly most: number }
  readonly hardnessOf: string
  /** Broken on every port edge before plating. */
  readonly portChamfer: { readonly least: number; readonly most: number }
  /** Deposited in an hour, µm. */
  readonly rate?: { readonly least: number; readonly most: number }
  readonly honedWith: string
  readonly ringPartner: string
  readonly source: string
}

/** Common practice, no source: edges carry a heavy build-up. */
const CHAMFER = { least: 0.5, most: 1 }

/** Common practice, no source: a plating of 0.1 mm comes within a hundredth, and half of that uneven. */
const BATH = { tolerance: 0.01, unevenness: 0.005, roughness: 4 }

/** A thickness without a tolerance may be this share under. Common practice, no source. */
export const BARE_THICKNESS_SHARE = 0.25

export const PLATINGS: readonly Plating[] = [
  {
    coating: 'hard chrome',
    thickness: { least: 0.05, usual: 0.08, most: 0.12 },
    honeStock: { least: 0.02, usual: 0.03, most: 0.05 },
    ...BATH,
    hardness: { least: 900, most: 1100 },
    hardnessOf: 'chrome layer: a technical text on race liners',
    portChamfer: CHAMFER,
    rate: { least: 25, most: 30 },
    honedWith: 'hone with stones for chrome; lap the build-up off the port edges first',
    ringPartner: 'cast iron, never chrome on chrome (aviation texts on chrome barrels)',
    source: 'thickness and stock common practice, no source; rate general hard-chrome texts',
  },
  {
    coating: 'nickel silicon carbide',
    thickness: { least: 0.064, usual: 0.075, most: 0.089 },
    honeStock: { least: 0.015, usual: 0.025, most: 0.04 },
    ...BATH,
    hardness: { least: 600, most: 600 },
    hardnessOf: 'nickel matrix, about, with particles of 3 µm that are harder: repair-shop article',
    portChamfer: CHAMFER,
    honedWith: 'hone with diamond only; no ball hone in a ported bore',
    ringPartner: 'as the ring maker says',
    source: 'thickness repair-shop article and platers’ texts; stock common practice, no source',
  },
]

export const platingOf = (coating: string): Plating | undefined => PLATINGS.find(row => row.coating === coating)

const diameter = (meaning: string): Input<'mm'> => ({ meaning, unit: 'mm', over: 0, upTo: 1000 })
const t: Input<'mm'> = { meaning: 'coating left per side', unit: 'mm', over: 0, upTo: 1 }
const s: Input<'mm'> = { meaning: 'coating honed off per side', unit: 'mm', from: 0, upTo: 0.5 }
const SIZES = 'derived: geometry'

/** It needs the form of the finished bore: plating copies what it finds. */
export const boreBeforePlating: Formula<{ d: 'mm'; t: 'mm' }, 'mm'> = formula({
  symbol: 'd_pre',
  meaning: 'bore before plating',
  unit: 'mm',
  expression: 'd + 2 * t',
  inputs: { d: diameter('finished bore'), t },
  source: SIZES,
  example: { given: { d: 60, t: 0.075 }, gives: 60.15, digits: 3 },
  value: ({ d, t }) => d + 2 * t,
})

export const boreAsPlated: Formula<{ d_pre: 'mm'; t: 'mm'; s: 'mm' }, 'mm'> = formula({
  symbol: 'd_plated',
  meaning: 'bore as plated',
  unit: 'mm',
  expression: 'd_pre - 2 * (t + s)',
  inputs: { d_pre: diameter('bore before plating'), t, s },
  source: SIZES,
  example: { given: { d_pre: 60.15, t: 0.075, s: 0.025 }, gives: 59.95, digits: 3 },
  value: ({ d_pre, t, s }) => d_pre - 2 * (t + s),
})

const width = (meaning: string): Input<'mm'> => ({ meaning, unit: 'mm', from: 0, upTo: 10 })
const u = width('how much thinner or thicker the layer is at its worst place')
const f = width('form error of the bore under the layer, radial')
const LAYER = 'derived: the layer lies between the bore before plating and the bore that is measured'

export const layerLeast: Formula<{ d_pre: 'mm'; d: 'mm'; u: 'mm'; f: 'mm' }, 'mm'> = formula({
  symbol: 't_least',
  meaning: 'least coating per side, at the worst place',
  unit: 'mm',
  expression: '(d_pre - d) / 2 - u - f',
  inputs: {
    d_pre: diameter('lower limit of the bore before plating'),
    d: diameter('upper limit of the bore now'),
    u,
    f,
  },
  source: LAYER,
  example: { given: { d_pre: 60.15, d: 60.013, u: 0.005, f: 0.0005 }, gives: 0.063, digits: 3 },
  value: ({ d_pre, d, u, f }) => (d_pre - d) / 2 - u - f,
})

export const layerMost: Formula<{ d_pre: 'mm'; d: 'mm'; u: 'mm'; f: 'mm' }, 'mm'> = formula({
  symbol: 't_most',
  meaning: 'most coating per side, at the worst place',
  unit: 'mm',
  expression: '(d_pre - d) / 2 + u + f',
  inputs: {
    d_pre: diameter('upper limit of the bore before plating'),
    d: diameter('lower limit of the bore now'),
    u,
    f,
  },
  source: LAYER,
  example: { given: { d_pre: 60.163, d: 60, u: 0.005, f: 0.0005 }, gives: 0.087, digits: 3 },
  value: ({ d_pre, d, u, f }) => (d_pre - d) / 2 + u + f,
})

export const thicknessToAim: Formula<{ t_asked: 'mm'; T_pre: 'mm'; T_end: 'mm'; u: 'mm'; f: 'mm' }, 'mm'> = formula({
  symbol: 't',
  meaning: 'coating per side to aim at, so that the least asked is left everywhere',
  unit: 'mm',
  expression: 't_asked + (T_pre + T_end) / 4 + u + f',
  inputs: {
    t_asked: width('least coating asked per side'),
    T_pre: width('tolerance of the bore before plating'),
    T_end: width('tolerance of the finished bore'),
    u,
    f,
  },
  source: 'derived: geometry, middle to middle',
  example: { given: { t_asked: 0.06, T_pre: 0.013, T_end: 0.013, u: 0.005, f: 0.0005 }, gives: 0.072, digits: 3 },
  value: ({ t_asked, T_pre, T_end, u, f }) => t_asked + (T_pre + T_end) / 4 + u + f,
})

export const depositionTime: Formula<{ t: 'mm'; s: 'mm'; v: 'µm/h' }, 'h'> = formula({
  symbol: 'h',
  meaning: 'time in the plating bath',
  unit: 'h',
  expression: '(t + s) * 1000 / v',
  inputs: { t, s, v: { meaning: 'rate of deposition', unit: 'µm/h', over: 0, upTo: 500 } },
  source: 'derived: thickness over rate',
  example: { given: { t: 0.08, s: 0.02, v: 25 }, gives: 4 },
  value: ({ t, s, v }) => ((t + s) * 1000) / v,
})
