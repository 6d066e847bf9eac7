import { type Formula, formula, type Input } from '../formula.ts'
import type { Range } from './nitriding-steels.ts'

/** Metal that is built up: the size before plating lies on the far side of the finished size. Per side, mm. */
export type Plating = {
  readonly coating: 'hard chrome' | 'nickel silicon carbide'
  /** Left when the bore is honed to size. */
  readonly thickness: Range
  /** Plated on top, to be honed off. */
  readonly honeStock: Range
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

export const PLATINGS: readonly Plating[] = [
  {
    coating: 'hard chrome',
    thickness: { least: 0.05, usual: 0.08, most: 0.12 },
    honeStock: { least: 0.02, usual: 0.03, most: 0.05 },
    portChamfer: CHAMFER,
    rate: { least: 25, most: 30 },
    honedWith: 'hone with stones for chrome; lap the build-up off the port edges first',
    ringPartner: 'cast-iron rings: never chrome on chrome (aviation texts on chrome barrels)',
    source: 'thickness and stock common practice, no source; rate general hard-chrome texts',
  },
  {
    coating: 'nickel silicon carbide',
    thickness: { least: 0.064, usual: 0.075, most: 0.089 },
    honeStock: { least: 0.015, usual: 0.025, most: 0.04 },
    portChamfer: CHAMFER,
    honedWith: 'hone with diamond only; no ball hone in a ported bore',
    ringPartner: 'as the ring maker says',
    source: 'thickness repair-shop article and platers’ texts; stock common practice, no source',
  },
]

export const platingOf = (coating: string): Plating | undefined => PLATINGS.find(row => row.coating === coating)

const diameter = (meaning: string): Input => ({ meaning, unit: 'mm', over: 0, upTo: 1000 })
const t: Input = { meaning: 'coating left per side', unit: 'mm', over: 0, upTo: 1 }
const s: Input = { meaning: 'coating honed off per side', unit: 'mm', from: 0, upTo: 0.5 }
const SIZES = 'derived: geometry'

/** It needs the form of the finished bore: plating copies what it finds. */
export const boreBeforePlating: Formula<'d' | 't'> = formula({
  symbol: 'd_pre',
  meaning: 'bore before plating',
  unit: 'mm',
  expression: 'd + 2 * t',
  inputs: { d: diameter('finished bore'), t },
  source: SIZES,
  example: { given: { d: 60, t: 0.075 }, gives: 60.15, digits: 3 },
  value: ({ d, t }) => d + 2 * t,
})

export const boreAsPlated: Formula<'d_pre' | 't' | 's'> = formula({
  symbol: 'd_plated',
  meaning: 'bore as plated',
  unit: 'mm',
  expression: 'd_pre - 2 * (t + s)',
  inputs: { d_pre: diameter('bore before plating'), t, s },
  source: SIZES,
  example: { given: { d_pre: 60.15, t: 0.075, s: 0.025 }, gives: 59.95, digits: 3 },
  value: ({ d_pre, t, s }) => d_pre - 2 * (t + s),
})

export const outsideBeforePlating: Formula<'D' | 't'> = formula({
  symbol: 'D_pre',
  meaning: 'outside before plating',
  unit: 'mm',
  expression: 'D - 2 * t',
  inputs: { D: diameter('finished outside'), t },
  source: SIZES,
  example: { given: { D: 60, t: 0.075 }, gives: 59.85, digits: 3 },
  value: ({ D, t }) => D - 2 * t,
})

export const outsideAsPlated: Formula<'D_pre' | 't' | 's'> = formula({
  symbol: 'D_plated',
  meaning: 'outside as plated',
  unit: 'mm',
  expression: 'D_pre + 2 * (t + s)',
  inputs: { D_pre: diameter('outside before plating'), t, s },
  source: SIZES,
  example: { given: { D_pre: 59.85, t: 0.075, s: 0.025 }, gives: 60.05, digits: 3 },
  value: ({ D_pre, t, s }) => D_pre + 2 * (t + s),
})

export const depositionTime: Formula<'t' | 's' | 'v'> = formula({
  symbol: 'h',
  meaning: 'time in the plating bath',
  unit: 'h',
  expression: '(t + s) * 1000 / v',
  inputs: { t, s, v: { meaning: 'rate of deposition', unit: 'µm/h', over: 0, upTo: 500 } },
  source: 'derived: thickness over rate',
  example: { given: { t: 0.08, s: 0.02, v: 25 }, gives: 4 },
  value: ({ t, s, v }) => ((t + s) * 1000) / v,
})
