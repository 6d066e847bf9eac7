import { caseMargin, cleanUpMargin, leastAtWorstPlace, mostAtWorstPlace } from '../handbook/stock-at-worst-place.ts'
import { boreStockLeast, boreStockMost, outsideStockLeast, outsideStockMost } from '../handbook/stock-chain.ts'
import { type Figure, type Known, type KnownSpread, known, named, type Origin, told, worked } from '../known.ts'
import type { Limits, Spread } from '../limits.ts'
import type { Millimetre } from '../units.ts'
import { type Notebook, reckoned } from '../working.ts'
import { NO_GROWTH, type SolvedChain } from './solve-chain.ts'
import type { StockEntry } from './stock.ts'

/** An entry before it is judged against the case. */
export type Cut = Omit<StockEntry, 'verdict' | 'margin' | 'hardnessAtFinish' | 'hardnessBand'> & {
  readonly cleanUp: Millimetre
}

/** What every finish of a chain takes: on diameter by the limits before and after, per side at the worst place. */
export function cutsOf(notebook: Notebook, solved: SolvedChain): readonly Cut[] {
  const { chain, growth, stocks, soft, after } = solved
  return chain.finishes.map((finish, index): Cut => {
    const { operation, eccentricity, form, needed } = finish
    const about = { operation: operation.number, about: chain.surface }
    const before = after[index - 1] ?? soft
    const g = index === 0 ? growth : NO_GROWTH
    const now = after[index] ?? chain.final
    const last = index === chain.finishes.length - 1
    const taken = takenOff(
      notebook,
      chain.kind,
      { before, now, nowFrom: last ? chain.finalTolerance : BACKWARD, g },
      about,
    )
    const twice = chain.kind === 'face' ? 2 : 1
    const S_least = known(twice * taken.least.value, 'mm', taken.least)
    const S_most = known(twice * taken.most.value, 'mm', taken.most)
    const onDiameter = { least: S_least.value, nominal: stocks[index] ?? 0, most: S_most.value }
    const least = reckoned(notebook, leastAtWorstPlace, { S: S_least, e: eccentricity, f: form }, about)
    const most = reckoned(notebook, mostAtWorstPlace, { S: S_most, e: eccentricity, f: form }, about)
    return {
      surface: chain.surface,
      kind: chain.kind,
      operation: operation.number,
      onDiameter,
      perSide: { least: least.value, most: most.value, needed: needed.value },
      cleanUp: notebook.use(cleanUpMargin, { z_least: least, r: needed }, about),
      eccentricity: eccentricity.value,
      form: form.value,
      told: toldIn(finish),
      basis: basisOf(solved, index),
      ...(index === 0 && chain.hard && growth.from !== 'measured' && { firstArticle: savedBy(growth, chain.cased) }),
    }
  })
}

const toldIn = ({
  told: { value, gauge, uncertainty },
}: SolvedChain['chain']['finishes'][number]): StockEntry['told'] => ({
  value,
  ...(gauge !== undefined && { gauge }),
  ...(uncertainty !== undefined && { uncertainty }),
})

/** Growth known, the stock need not bear its least nor the case its most. */
const savedBy = ({ least, nominal, most }: Spread, cased: boolean): NonNullable<StockEntry['firstArticle']> => ({
  stock: 2 * (nominal - least),
  ...(cased && { case: most - least }),
})

/** The figures that a cut was reckoned from, as they were chosen. */
function basisOf({ chain, growth }: SolvedChain, index: number): readonly Figure[] {
  const finish = chain.finishes[index]
  if (!finish) return []
  const before = index === 0 ? chain.softTolerance : chain.finishes[index - 1]?.tolerance
  const after = index === chain.finishes.length - 1 ? chain.finalTolerance : finish.tolerance
  return [
    ...(finish.fixed ? [fixedStock(chain.kind, finish.fixed)] : []),
    ...finish.rests,
    ...(index === 0 && chain.hard ? [named('growth per side', known(growth.nominal, 'mm', growth))] : []),
    ...(before ? [named('tolerance before', before)] : []),
    named('tolerance after', after),
  ]
}

/** As the part file has it: of a face, on the face. */
const fixedStock = (kind: StockEntry['kind'], fixed: Known<'mm'>): Figure =>
  kind === 'face' ? named('stock on the face', { ...fixed, value: fixed.value / 2 }) : named('stock on diameter', fixed)

const BACKWARD = worked('worked backward from the drawing')

type Change = {
  readonly before: Limits
  readonly now: Limits
  readonly nowFrom: Origin
  readonly g: KnownSpread
}

function takenOff(
  notebook: Notebook,
  kind: StockEntry['kind'],
  { before, now, nowFrom, g }: Change,
  about: { readonly operation: number; readonly about: string },
): { readonly least: Known<'mm'>; readonly most: Known<'mm'> } {
  const was = (value: Millimetre) => known(value, 'mm', BACKWARD)
  const is = (value: Millimetre) => known(value, 'mm', nowFrom)
  const g_least = known(g.least, 'mm', g)
  const g_most = known(g.most, 'mm', g)
  return kind === 'bore'
    ? {
        least: reckoned(
          notebook,
          boreStockLeast,
          { d_after: is(now.lower), d_before: was(before.upper), g_least },
          about,
        ),
        most: reckoned(notebook, boreStockMost, { d_after: is(now.upper), d_before: was(before.lower), g_most }, about),
      }
    : {
        least: reckoned(
          notebook,
          outsideStockLeast,
          { d_before: was(before.lower), g_least, d_after: is(now.upper) },
          about,
        ),
        most: reckoned(
          notebook,
          outsideStockMost,
          { d_before: was(before.upper), g_most, d_after: is(now.lower) },
          about,
        ),
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
    {
      ...told(worked('least of the depth ordered'), { N: ordered }),
      ...told(worked('most taken off a surface'), { z: removalOf(cuts).most }),
      ...told(worked('depth asked for, or the usual one'), { N_asked: asked }),
    },
    { about: cuts[0]?.surface ?? 'case' },
  )
