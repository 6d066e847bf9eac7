import { CLOSEST_SET_UP } from '../handbook/process-limits.ts'
import { growthFor } from '../hardening/plan-case.ts'
import type { Part } from '../part/part.ts'
import type { Operation } from '../route/operation.ts'
import type { Shop } from '../shop/shop.ts'
import type { Millimetre } from '../units.ts'
import { thinnestWall } from '../wall.ts'
import { SCRATCH } from '../working.ts'
import { ENOUGH } from './enough.ts'
import { finishChains } from './finish-chain.ts'
import { spareOf } from './margin-words.ts'
import { growthsOf, settleStock } from './settle-stock.ts'
import type { SolvedChain } from './solve-chain.ts'
import { caseMarginOf, cutsOf } from './stock-entries.ts'

/** What to do with pieces that are cut already, by what is now known of them. */
export type AsCut = {
  readonly surface: string
  readonly operation: number
  readonly margin: { readonly cleanUp: Millimetre; readonly case?: Millimetre }
  readonly verdict: 'grind as planned' | 'set closer' | 'cannot clean up' | 'case too thin'
  /** Radial, as planned, and the most that the pieces bear. */
  readonly runout: { readonly planned: Millimetre; readonly borne: Millimetre }
}

/**
 * Judges sizes as issued by new facts (growth, ovality, bow, run-out) and chooses nothing anew: soft sizes, stock and the case
 * ordered stay those of the plan. `facts` is the works with what is now known.
 */
export function judgeAsCut({
  part,
  shop,
  facts,
  operations,
}: {
  readonly part: Part
  readonly shop: Shop
  readonly facts: Shop
  readonly operations: readonly Operation[]
}): readonly AsCut[] {
  const wall = thinnestWall(part)
  const issued = settleStock({ part, shop, chains: finishChains(SCRATCH, part, shop, operations), wall })
  const order = issued.planned.case
  const depth = order?.ordered ?? issued.orderedLeast
  const grows = growthsOf(SCRATCH, part, growthFor(part, facts, depth))
  const known = finishChains(SCRATCH, part, facts, operations)
  const asked = order?.asked ?? part.hardening?.depth?.least ?? 0
  return issued.chains.flatMap((solved): readonly AsCut[] => {
    const chain = known.find(({ surface, kind }) => surface === solved.chain.surface && kind === solved.chain.kind)
    if (!chain || chain.finishes.length === 0) return []
    // Limits stay as they were issued; only what the surface rests on is new.
    const finishes = solved.chain.finishes.map((finish, index) => ({ ...finish, ...errorsOf(chain.finishes[index]) }))
    const now: SolvedChain = { ...solved, chain: { ...solved.chain, finishes }, growth: grows.of(chain) }
    const cuts = cutsOf(SCRATCH, now)
    const held =
      chain.cased && chain.kind !== 'face' ? caseMarginOf(SCRATCH, issued.orderedLeast, cuts, asked) : undefined
    return cuts.map(({ surface, operation, cleanUp, eccentricity }): AsCut => {
      const spare = spareOf(cleanUp, held)
      const borne = Math.max(0, eccentricity + spare)
      const short = cleanUp <= (held ?? Number.POSITIVE_INFINITY) ? 'cannot clean up' : 'case too thin'
      return {
        surface,
        operation,
        margin: { cleanUp, ...(held !== undefined && { case: held }) },
        verdict:
          spare >= ENOUGH ? 'grind as planned' : eccentricity > 0 && borne >= CLOSEST_SET_UP ? 'set closer' : short,
        runout: { planned: eccentricity, borne },
      }
    })
  })
}

const errorsOf = (finish: SolvedChain['chain']['finishes'][number] | undefined) =>
  finish && { eccentricity: finish.eccentricity, form: finish.form, rests: finish.rests }
