import type { Limits, Spread } from '../limits.ts'
import type { Millimetre } from '../units.ts'
import {
  added,
  bellShaped,
  chanceBelow,
  type Distribution,
  evenlySpread,
  lengthBelow,
  negated,
  offCentreBy,
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
 * over its limits, growth over its range, eccentricity and form up to their figures. The whole chain counts for the case,
 * in which the sizes between cancel.
 */
export function pieceChances(
  solved: SolvedChain,
  ordered: Spread | undefined,
  asked: Millimetre,
): readonly StockChance[] {
  const { chain, stocks } = solved
  const short = chain.finishes.map((finish, index) => {
    const least = added(takenPerSide(solved, index), negated(straying(FINE, finish)))
    return chanceBelow(least, finish.needed.value - (stocks[index] ?? 0) / 2)
  })
  const deep = ordered && chain.cased ? chanceOfTooLittle(solved, ordered, asked) : undefined
  return short.map(notCleanedUp => ({ notCleanedUp, ...(deep !== undefined && { tooLittleCase: deep }) }))
}

/** What a finish takes from one side about its nominal, before it strays: both sizes, and the growth in the first of a chain. */
function takenPerSide(solved: SolvedChain, index: number): Distribution {
  const { chain, soft, after } = solved
  return sum([
    perSide(FINE, solved, after[index - 1] ?? soft),
    perSide(FINE, solved, after[index] ?? chain.final),
    ...(index === 0 ? growing(FINE, solved) : []),
  ])
}

/** Outside of what three sigma hold of a normal distribution, at each end. */
const TAIL = 0.00135

/** The stock on diameter of each finish of a chain in all pieces but one in 370: the same distributions as the chances. */
export function nearlyAllPieces(solved: SolvedChain): readonly NearlyAll[] {
  return solved.chain.finishes.map((_, index) => {
    const taken = takenPerSide(solved, index)
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
    perSide(COARSE, solved, soft),
    perSide(COARSE, solved, chain.final),
    ...growing(COARSE, solved),
    ...chain.finishes.map(finish => straying(COARSE, finish)),
  ])
  return chanceBelow(added(bellShaped(COARSE, ordered), negated(taken)), asked + nominal)
}

/** What a size adds to one side, about its middle: half on a diameter, all of it on a face. */
function perSide(step: Millimetre, { chain }: SolvedChain, { lower, upper }: Limits): Distribution {
  const half = (upper - lower) / (chain.kind === 'face' ? 2 : 4)
  return bellShaped(step, { least: -half, nominal: 0, most: half })
}

/** Growth about its nominal; a face is pushed out from both ends of its length by the same growth. */
function growing(step: Millimetre, { chain, growth: { least, nominal, most } }: SolvedChain): readonly Distribution[] {
  const times = chain.kind === 'face' ? 2 : 1
  return [bellShaped(step, { least: times * (least - nominal), nominal: 0, most: times * (most - nominal) })]
}

/** How far the worst place strays: off centre, and out of true by anything up to the form error. */
const straying = (step: Millimetre, { eccentricity, form }: Finish): Distribution =>
  added(offCentreBy(step, eccentricity.value), evenlySpread(step, form.value))
