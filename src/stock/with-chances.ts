import { chanceInBatch, stockByRootSumSquare } from '../handbook/batch-chance.ts'
import type { CasePlan } from '../hardening/case-plan.ts'
import { told, worked } from '../known.ts'
import type { Spread } from '../limits.ts'
import { toleranceOf } from '../limits.ts'
import type { Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'
import type { SolvedChain } from './solve-chain.ts'
import type { StockChance, StockEntry } from './stock.ts'
import { nearlyAllPieces, pieceChances } from './stock-chance.ts'

/** The entries with their spread, three ways, and the chance that one piece fails. */
export function withChances(
  notebook: Notebook,
  entries: readonly StockEntry[],
  chains: readonly SolvedChain[],
  order: CasePlan | undefined,
): readonly StockEntry[] {
  const ordered = order && orderedSpread(order)
  const added = chains
    .filter(({ chain }) => chain.finishes.length > 0)
    .flatMap(solved => {
      const all = nearlyAllPieces(solved)
      // Without a record of its growth a piece's chance is a guess at a guess.
      const chances = standsOnRecord(solved) ? pieceChances(solved, ordered, order?.asked ?? 0) : []
      return solved.chain.finishes.map(({ operation }, index) => ({
        surface: solved.chain.surface,
        operation: operation.number,
        rootSumSquare: rootSumSquareOf(notebook, solved, index),
        nearlyAll: all[index],
        piece: chances[index],
      }))
    })
  return entries.map(entry => {
    const found = added.find(({ surface, operation }) => surface === entry.surface && operation === entry.operation)
    if (!found?.nearlyAll) return entry
    const { rootSumSquare, nearlyAll, piece } = found
    const worstCase = (entry.onDiameter.most - entry.onDiameter.least) / 2
    return { ...entry, spread: { worstCase, rootSumSquare, nearlyAll }, ...(piece && { chance: { piece } }) }
  })
}

/** Nothing grows, or the works has measured how much. */
const standsOnRecord = ({ growth }: SolvedChain): boolean =>
  growth.from === 'measured' || (growth.least === 0 && growth.most === 0)

/** A case is ordered with no minus side: any depth of its range may come. */
const orderedSpread = ({ ordered: { least, most } }: CasePlan): Spread => ({
  least,
  nominal: (least + most) / 2,
  most,
})

/** On diameter; of a face twice the length, which grows at both ends. */
function rootSumSquareOf(notebook: Notebook, { chain, growth, soft, after }: SolvedChain, index: number): Millimetre {
  const twice = chain.kind === 'face' ? 2 : 1
  return notebook.use(
    stockByRootSumSquare,
    {
      ...told(worked('tolerances of the sizes before and after the cut'), {
        T_before: twice * toleranceOf(after[index - 1] ?? soft),
        T_after: twice * toleranceOf(after[index] ?? chain.final),
      }),
      ...told(index === 0 ? growth : worked('no growth after the first cut'), {
        G: index === 0 ? twice * (growth.most - growth.least) : 0,
      }),
    },
    { operation: chain.finishes[index]?.operation.number ?? 0, about: chain.surface },
  )
}

/** The chances of a whole batch, once it is known how many pieces are started. */
export const withBatchChances = (entries: readonly StockEntry[], pieces: number): readonly StockEntry[] =>
  entries.map(entry => {
    if (!entry.chance) return entry
    const { notCleanedUp, tooLittleCase } = entry.chance.piece
    const inBatch = (p: number) => chanceInBatch.value({ p, n: pieces })
    const batch: StockChance = {
      notCleanedUp: inBatch(notCleanedUp),
      ...(tooLittleCase !== undefined && { tooLittleCase: inBatch(tooLittleCase) }),
    }
    return { ...entry, chance: { ...entry.chance, batch } }
  })
