import { known, none } from '../known.ts'
import type { PlatingSizes } from '../plating/plating-sizes.ts'
import type { Operation } from '../route/operation.ts'
import type { Notebook } from '../working.ts'
import { ENOUGH } from './enough.ts'
import { NO_GROWTH, type SolvedChain } from './solve-chain.ts'
import type { StockEntry, Verdict } from './stock.ts'
import { cutsOf } from './stock-entries.ts'
import type { Told } from './told.ts'

/** Honing after plating as a chain of one cut: it follows the bore, so nothing is off centre but the layer itself. */
export function platedChain(
  { band, plated, platedTolerance, finished, finishedTolerance, honeStock, needed, form, rests }: PlatingSizes,
  hone: Operation,
  told: Told,
): SolvedChain {
  return {
    chain: {
      surface: band.name,
      kind: 'bore',
      path: band.path,
      final: finished,
      finalTolerance: finishedTolerance,
      softTolerance: platedTolerance,
      cased: false,
      hard: false,
      finishes: [
        {
          operation: hone,
          stockKey: 'hone',
          eccentricity: none('the hone follows the bore'),
          form,
          needed,
          tolerance: finishedTolerance,
          told,
          rests,
          ...(honeStock.from === 'part' && { fixed: known(2 * honeStock.value, 'mm', honeStock) }),
        },
      ],
      band,
    },
    growth: NO_GROWTH,
    stocks: [2 * honeStock.value],
    soft: plated,
    hardened: plated,
    after: [finished],
  }
}

/** Thin: the hone does not clean up. Deep: less plating is left than asked. Impossible: no aim leaves it within what is asked. */
export function platedEntry(notebook: Notebook, { asked, left }: PlatingSizes, solved: SolvedChain): StockEntry {
  const [cut] = cutsOf(notebook, solved)
  if (!cut) throw new Error('a plated bore is honed')
  const { cleanUp, ...rest } = cut
  const { least, most } = asked.thickness
  const plating = left.least - least
  const narrow = most !== undefined && left.most - left.least > most - least + 1e-9
  const verdict = ((): Verdict => {
    if (cleanUp >= ENOUGH && plating >= ENOUGH) return 'ok'
    if (plating < ENOUGH) return narrow ? 'impossible' : 'deep'
    return 'thin'
  })()
  return { ...rest, margin: { cleanUp, plating }, verdict }
}
