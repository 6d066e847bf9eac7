import type { Limits, Spread } from '../limits.ts'
import type { Millimetre } from '../units.ts'
import {
  added,
  bellShaped,
  bellWithoutEnd,
  chanceBelow,
  type Distribution,
  lengthBelow,
  negated,
  offCentreWithoutEnd,
} from './distribution.ts'
import type { Finish } from './finish-chain.ts'
import type { SolvedChain } from './solve-chain.ts'
import type { NearlyAll, StockChance } from './stock.ts'

/** Steps of the lengths: fine for what one finish leaves, coarser for the case, whose range is wide. */
const FINE = 0.0005
const COARSE = 0.001

const sum = (terms: readonly Distribution[]): Distribution => terms.reduce(added)

/**
 * Chance, for one piece, that each finish of a chain does not clean up, and that too little case is left: every size spread
 * about its middle, growth about its record, eccentricity and form about their figures, none of them cut off: a stock that is
 * chosen from the limits would else never fail. The whole chain counts for the case, in which the sizes between cancel.
 */
export function pieceChances(
  solved: SolvedChain,
  ordered: Spread | undefined,
  asked: Millimetre,
): readonly StockChance[] {
  const { chain, stocks } = solved
  const short = chain.finishes.map((finish, index) => {
    const least = added(takenPerSide(solved, index, 'none'), negated(straying(FINE, finish)))
    return chanceBelow(least, finish.needed.value - (stocks[index] ?? 0) / 2)
  })
  const deep = ordered && chain.cased ? chanceOfTooLittle(solved, ordered, asked) : undefined
  return short.map(notCleanedUp => ({ notCleanedUp, ...(deep !== undefined && { tooLittleCase: deep }) }))
}

/** What a finish takes from one side about its nominal, before it strays: both sizes, and the growth in the first of a chain. */
function takenPerSide(solved: SolvedChain, index: number, ends: Ends): Distribution {
  const { chain, soft, after } = solved
  return sum([
    perSide(FINE, solved, after[index - 1] ?? soft, ends),
    perSide(FINE, solved, after[index] ?? chain.final, ends),
    ...(index === 0 ? growing(FINE, solved, ends) : []),
  ])
}

/** Outside of what three sigma hold of a normal distribution, at each end. */
const TAIL = 0.00135

/** The stock on diameter of each finish of a chain in all pieces but one in 370: the same distributions as the chances. */
export function nearlyAllPieces(solved: SolvedChain): readonly NearlyAll[] {
  return solved.chain.finishes.map((_, index) => {
    const taken = takenPerSide(solved, index, 'at the limits')
    const nominal = solved.stocks[index] ?? 0
    return {
      share: 1 - 2 * TAIL,
      least: nominal + 2 * lengthBelow(taken, TAIL),
      most: nominal + 2 * lengthBelow(taken, 1 - TAIL),
    }
  })
}

function chanceOfTooLittle(solved: SolvedChain, ordered: Spread, asked: Millimetre): number {
  const { chain, stocks, soft } = solved
  const nominal = stocks.reduce((total, stock) => total + stock / 2, 0)
  const taken = sum([
    perSide(COARSE, solved, soft, 'none'),
    perSide(COARSE, solved, chain.final, 'none'),
    ...growing(COARSE, solved, 'none'),
    ...chain.finishes.map(finish => straying(COARSE, finish)),
  ])
  return chanceBelow(added(bellWithoutEnd(COARSE, ordered, SIZE_SIGMAS), negated(taken)), asked + nominal)
}

/** What a size adds to one side, about its middle: half on a diameter, all of it on a face. Its limits are three sigma. */
function perSide(step: Millimetre, { chain }: SolvedChain, { lower, upper }: Limits, ends: Ends): Distribution {
  const half = (upper - lower) / (chain.kind === 'face' ? 2 : 4)
  const spread = { least: -half, nominal: 0, most: half }
  return ends === 'none' ? bellWithoutEnd(step, spread, SIZE_SIGMAS) : bellShaped(step, spread)
}

/** Growth about its nominal; a face is pushed out from both ends of its length by the same growth. */
function growing(
  step: Millimetre,
  { chain, growth: { least, nominal, most } }: SolvedChain,
  ends: Ends,
): readonly Distribution[] {
  const times = chain.kind === 'face' ? 2 : 1
  const spread = { least: times * (least - nominal), nominal: 0, most: times * (most - nominal) }
  return [ends === 'none' ? bellWithoutEnd(step, spread, GROWTH_SIGMAS) : bellShaped(step, spread)]
}

/** Whether a spread ends at the limits that the stock was chosen from. A chance is reckoned without ends. */
type Ends = 'at the limits' | 'none'

/** Sizes keep within their limits but for 0.27 %; a record of growth holds a whole load in 19 of 20. */
const SIZE_SIGMAS = 3
const GROWTH_SIGMAS = 1.96
/** Run-out stays under its figure but for 1.1 %; ovality and bow, as records give them, but for 5 %. */
const RUNOUT_SIGMAS = 3
const FORM_SIGMAS = 2.448

/** How far the worst place strays: off centre, out of round and bowed, each in two directions that know nothing of each other. */
const straying = (step: Millimetre, finish: Finish): Distribution =>
  added(
    offCentreWithoutEnd(step, finish.eccentricity.value, RUNOUT_SIGMAS),
    offCentreWithoutEnd(step, finish.form.value, FORM_SIGMAS),
  )
