import { boreBefore, outsideBefore } from '../handbook/stock-chain.ts'
import { type KnownSpread, known, told, worked } from '../known.ts'
import { between, type Limits, middleOf, type Spread, toleranceOf } from '../limits.ts'
import type { Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'
import type { FinishChain } from './finish-chain.ts'

/** Nominal stock of every finish of a chain, on diameter; of a face twice what comes off it. */
export type Stocks = readonly Millimetre[]

/** The limits of one surface from its last soft size on. `after` has one for each finish. */
export type SolvedChain = {
  readonly chain: FinishChain
  /** Nought where nothing grows. */
  readonly growth: KnownSpread
  readonly stocks: Stocks
  readonly soft: Limits
  readonly hardened: Limits
  readonly after: readonly Limits[]
}

export const NO_GROWTH: KnownSpread = { least: 0, nominal: 0, most: 0, ...worked('no growth: not hardened') }

const AFTER = worked('middle of the size after this cut')

/**
 * Works a chain backward from the drawing: each size before is the one after with the stock put back, growth taken off
 * where hardening lies between, and its own tolerance laid about the middle.
 */
export function solveChain(notebook: Notebook, chain: FinishChain, growth: KnownSpread, stocks: Stocks): SolvedChain {
  const { finishes, kind } = chain
  const after: Limits[] = []
  let next = chain.final
  for (let index = finishes.length - 1; index >= 0; index--) {
    after.unshift(next)
    const first = index === 0
    const { nominal, ...origin } = first ? growth : NO_GROWTH
    const g = known(nominal, 'mm', origin)
    const about = { about: chain.surface, operation: finishes[index]?.operation.number ?? 0 }
    const taken = stocks[index] ?? 0
    const S = known(
      kind === 'face' ? taken / 2 : taken,
      'mm',
      finishes[index]?.fixed ?? worked('chosen by the planner: cleans up, and keeps the case'),
    )
    const middle =
      kind === 'bore'
        ? notebook.use(boreBefore, { ...told(AFTER, { d: middleOf(next) }), S, g }, about)
        : notebook.use(outsideBefore, { ...told(AFTER, { D: middleOf(next) }), S, g }, about)
    const tolerance = (first ? chain.softTolerance : finishes[index - 1]?.tolerance)?.value ?? 0
    next = between(middle - tolerance / 2, middle + tolerance / 2)
  }
  const soft = finishes.length === 0 ? leftAsTurned(chain, growth) : next
  return { chain, growth, stocks, soft, hardened: grown(soft, kind, growth), after }
}

/**
 * A surface that is not finished after hardening is turned so that it grows into the drawing's limits. Where a spread that
 * nobody has measured leaves the turner next to nothing, he has half of the tolerance about the growth expected.
 */
function leftAsTurned({ kind, final }: FinishChain, growth: KnownSpread): Limits {
  const [toLower, toUpper] = kind === 'bore' ? [growth.most, growth.least] : [-growth.least, -growth.most]
  const lower = final.lower + 2 * toLower
  const upper = final.upper + 2 * toUpper
  if (lower < upper && !isNextToNothing({ final, growth })) return { nominal: final.nominal, lower, upper }
  if (growth.from === 'measured') return between((lower + upper) / 2, (lower + upper) / 2)
  const middle = middleOf(final) + (kind === 'bore' ? 2 : -2) * growth.nominal
  return between(middle - toleranceOf(final) / 4, middle + toleranceOf(final) / 4)
}

/** The tolerance that growth leaves to the turner of a surface that is not finished after; negative when it eats it all. */
export const toleranceLeft = ({ final, growth }: Leaving): Millimetre =>
  toleranceOf(final) - 2 * (growth.most - growth.least)

type Leaving = { readonly final: Limits; readonly growth: KnownSpread }

/** Less than this, on diameter, is not turned to: common practice, no source. */
export const TURNED_TO: Millimetre = 0.01

/** Whether a spread that nobody has measured leaves less than half of the tolerance, and less than a turner holds. */
const isNextToNothing = ({ final, growth }: Leaving): boolean =>
  growth.from !== 'measured' && toleranceLeft({ final, growth }) <= Math.min(TURNED_TO, toleranceOf(final) / 2)

/** Limits as they come from hardening: the outside and the lengths larger, the bore smaller. */
export function grown(soft: Limits, kind: FinishChain['kind'], { least, nominal, most }: Spread): Limits {
  return kind === 'bore'
    ? {
        nominal: soft.nominal - 2 * nominal,
        lower: soft.lower - 2 * most,
        upper: soft.upper - 2 * least,
      }
    : {
        nominal: soft.nominal + 2 * nominal,
        lower: soft.lower + 2 * least,
        upper: soft.upper + 2 * most,
      }
}
