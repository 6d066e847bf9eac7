import { caseMargin, cleanUpMargin, leastAtWorstPlace, mostAtWorstPlace } from '../handbook/stock-at-worst-place.ts'
import { boreStockLeast, boreStockMost, outsideStockLeast, outsideStockMost } from '../handbook/stock-chain.ts'
import type { Limits, Spread } from '../limits.ts'
import type { Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'
import { NO_GROWTH, type SolvedChain } from './solve-chain.ts'
import type { StockEntry } from './stock.ts'

/** An entry before it is judged against the case. */
export type Cut = Omit<StockEntry, 'verdict' | 'margin' | 'hardnessAtFinish'> & { readonly cleanUp: Millimetre }

/** What every finish of a chain takes: on diameter by the limits before and after, per side at the worst place. */
export function cutsOf(notebook: Notebook, { chain, growth, stocks, soft, after }: SolvedChain): readonly Cut[] {
  return chain.finishes.map((finish, index): Cut => {
    const { operation, eccentricity, form, needed } = finish
    const about = { operation: operation.number, about: chain.surface }
    const before = after[index - 1] ?? soft
    const g = index === 0 ? growth : NO_GROWTH
    const now = after[index] ?? chain.final
    const taken = takenOff(notebook, chain.kind, before, now, g, about)
    const twice = chain.kind === 'face' ? 2 : 1
    const onDiameter = { least: twice * taken.least, nominal: stocks[index] ?? 0, most: twice * taken.most }
    const least = notebook.use(leastAtWorstPlace, { S: onDiameter.least, e: eccentricity, f: form }, about)
    const most = notebook.use(mostAtWorstPlace, { S: onDiameter.most, e: eccentricity, f: form }, about)
    return {
      surface: chain.surface,
      kind: chain.kind,
      operation: operation.number,
      onDiameter,
      perSide: { least, most, needed },
      cleanUp: notebook.use(cleanUpMargin, { z_least: least, r: needed }, about),
      eccentricity,
      form,
    }
  })
}

function takenOff(
  notebook: Notebook,
  kind: StockEntry['kind'],
  before: Limits,
  after: Limits,
  { least, most }: Spread,
  about: { readonly operation: number; readonly about: string },
): { readonly least: Millimetre; readonly most: Millimetre } {
  return kind === 'bore'
    ? {
        least: notebook.use(boreStockLeast, { d_after: after.lower, d_before: before.upper, g_least: least }, about),
        most: notebook.use(boreStockMost, { d_after: after.upper, d_before: before.lower, g_most: most }, about),
      }
    : {
        least: notebook.use(outsideStockLeast, { d_before: before.lower, g_least: least, d_after: after.upper }, about),
        most: notebook.use(outsideStockMost, { d_before: before.upper, g_most: most, d_after: after.lower }, about),
      }
}

/** Everything taken off one surface, per side: at least, in the middle, at most. */
export function removalOf(cuts: readonly Cut[]): Spread {
  const sum = (of: (cut: Cut) => Millimetre) => cuts.reduce((total, cut) => total + of(cut), 0)
  return {
    least: sum(({ perSide }) => perSide.least),
    nominal: sum(({ onDiameter }) => onDiameter.nominal / 2),
    most: sum(({ perSide }) => perSide.most),
  }
}

/** Case left at the worst place beyond the depth asked for. */
export const caseMarginOf = (
  notebook: Notebook,
  ordered: Millimetre,
  cuts: readonly Cut[],
  asked: Millimetre,
): Millimetre =>
  notebook.use(
    caseMargin,
    { N: ordered, z: removalOf(cuts).most, N_asked: asked },
    { about: cuts[0]?.surface ?? 'case' },
  )
