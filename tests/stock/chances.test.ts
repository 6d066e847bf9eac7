import fc from 'fast-check'
import { max, mean, min, quantileRank, standardDeviation } from 'simple-statistics'
import { describe, expect, it } from 'vitest'
import { chanceInBatch, stockByRootSumSquare } from '../../src/handbook/batch-chance.ts'
import type { KnownSpread } from '../../src/known.ts'
import { stockThatCleansUp } from '../../src/stock/choose-stock.ts'
import type { FinishChain } from '../../src/stock/finish-chain.ts'
import { type SolvedChain, solveChain } from '../../src/stock/solve-chain.ts'
import { nearlyAllPieces, pieceChances } from '../../src/stock/stock-chance.ts'
import { cutsOf } from '../../src/stock/stock-entries.ts'
import { SCRATCH } from '../../src/working.ts'
import { BORE, BORE_GROWTH, OUTSIDE, OUTSIDE_GROWTH } from './chain-of.ts'
import { drawnPieces } from './drawn-pieces.ts'
import { bell, offCentre, seededRandom, WITHOUT_END } from './random.ts'

const PIECES = 20_000
const SEED = 2631
const solved = (chain: FinishChain, growth: KnownSpread, less = 0): SolvedChain =>
  solveChain(
    SCRATCH,
    chain,
    growth,
    chain.finishes.map((_, index) => stockThatCleansUp(SCRATCH, chain, index, growth) - less),
  )
const CHAINS = [
  ['outside', solved(OUTSIDE, OUTSIDE_GROWTH), 0.0286],
  ['bore', solved(BORE, BORE_GROWTH), 0.028],
] as const

describe('worked sleeve: root sum of squares and drawn pieces, derived: the same chart worked by hand', () => {
  it.each(CHAINS)('%s spreads by the root sum of squares', (_, { soft, after, growth }, halfWidth) => {
    const found = stockByRootSumSquare.value({
      T_before: soft.upper - soft.lower,
      T_after: (after[0]?.upper ?? 0) - (after[0]?.lower ?? 0),
      G: growth.most - growth.least,
    })
    expect(found).toBeCloseTo(halfWidth, 3)
  })

  it.each(CHAINS)('%s: drawn pieces spread as the root sum of squares says, within their own error', (_, chain) => {
    const { soft, after, growth, stocks } = chain
    const taken = drawnPieces(chain, PIECES, SEED).map(({ onDiameter }) => onDiameter[0] ?? 0)
    const halfWidth = stockByRootSumSquare.value({
      T_before: soft.upper - soft.lower,
      T_after: (after[0]?.upper ?? 0) - (after[0]?.lower ?? 0),
      G: growth.most - growth.least,
    })
    const sigma = halfWidth / 3
    // Standard error of a standard deviation is sigma / sqrt(2 n), of a mean sigma / sqrt(n); four of each.
    expect(Math.abs(standardDeviation(taken) - sigma)).toBeLessThan((4 * sigma) / Math.sqrt(2 * PIECES))
    expect(Math.abs(mean(taken) - (stocks[0] ?? 0))).toBeLessThan((4 * sigma) / Math.sqrt(PIECES))
  })

  it.each(CHAINS)('%s: no drawn piece falls outside the worst case', (_, chain) => {
    const pieces = drawnPieces(chain, PIECES, SEED)
    for (const [index, { onDiameter, perSide }] of cutsOf(SCRATCH, chain).entries()) {
      const taken = pieces.map(piece => piece.onDiameter[index] ?? Number.NaN)
      expect(min(taken)).toBeGreaterThanOrEqual(onDiameter.least)
      expect(max(taken)).toBeLessThanOrEqual(onDiameter.most)
      expect(min(pieces.map(({ least }) => least[index] ?? Number.NaN))).toBeGreaterThanOrEqual(perSide.least)
      expect(max(pieces.map(({ most }) => most[index] ?? Number.NaN))).toBeLessThanOrEqual(perSide.most)
    }
  })

  // Of n pieces a share p lies beyond with a standard error of sqrt(p (1 - p) / n); four of them.
  it.each(CHAINS)('%s: 0.135 % of drawn pieces lie beyond each end of what nearly all have', (_, chain) => {
    const pieces = 10 * PIECES
    const taken = drawnPieces(chain, pieces, SEED).map(({ onDiameter }) => onDiameter[0] ?? 0)
    const { least, most } = nearlyAllPieces(chain)[0] ?? { least: 0, most: 0 }
    const error = 4 * Math.sqrt((0.00135 * 0.99865) / pieces)
    expect(Math.abs(quantileRank(taken, least) - 0.00135)).toBeLessThan(error)
    expect(Math.abs(1 - quantileRank(taken, most) - 0.00135)).toBeLessThan(error)
  })

  it.each(CHAINS)(
    '%s: nearly all pieces have a little less than three sigma either way, for the tails end',
    (_, chain) => {
      const { least, most } = nearlyAllPieces(chain)[0] ?? { least: 0, most: 0 }
      const { soft, after, growth } = chain
      const threeSigma = stockByRootSumSquare.value({
        T_before: soft.upper - soft.lower,
        T_after: (after[0]?.upper ?? 0) - (after[0]?.lower ?? 0),
        G: growth.most - growth.least,
      })
      expect((most - least) / 2).toBeLessThan(threeSigma)
      expect((most - least) / 2).toBeGreaterThan(0.85 * threeSigma)
    },
  )

  it('gives the same pieces for the same seed and others for another', () => {
    const [, chain] = CHAINS[0]
    expect(drawnPieces(chain, 50, 7)).toEqual(drawnPieces(chain, 50, 7))
    expect(drawnPieces(chain, 50, 7)).not.toEqual(drawnPieces(chain, 50, 8))
  })
})

describe('chance of failing, against the share of drawn pieces that fail', () => {
  const share = (failing: readonly boolean[]) => failing.filter(Boolean).length / failing.length
  /** Four standard errors of a share, and what the steps of the distributions round. */
  const error = (p: number) => 4 * Math.sqrt((p * (1 - p)) / PIECES) + 0.002

  it.each([0.02, 0.04, 0.06, 0.08])('to clean up, with %f mm less stock than needed', less => {
    const chain = solved(OUTSIDE, OUTSIDE_GROWTH, less)
    const [chance] = pieceChances(chain, undefined, 0)
    const needed = OUTSIDE.finishes[0]?.needed.value ?? 0
    const drawn = share(
      drawnPieces(chain, PIECES, SEED, { draws: WITHOUT_END }).map(({ least }) => (least[0] ?? 0) < needed),
    )
    expect(Math.abs((chance?.notCleanedUp ?? 9) - drawn)).toBeLessThan(error(drawn))
    if (less >= 0.06) expect(drawn).toBeGreaterThan(0.01)
  })

  it.each([0.34, 0.36, 0.38])('to keep 0.25 mm of case, with %f mm ordered', least => {
    const chain = solved(BORE, BORE_GROWTH)
    const ordered = { least, nominal: least + 0.025, most: least + 0.05 }
    const [chance] = pieceChances(chain, ordered, 0.25)
    const pieces = drawnPieces(chain, PIECES, SEED, { ordered, draws: WITHOUT_END })
    const drawn = share(pieces.map(({ caseLeft }) => (caseLeft ?? 0) < 0.25))
    expect(Math.abs((chance?.tooLittleCase ?? 9) - drawn)).toBeLessThan(error(drawn))
  })

  it('is small where the worst case serves, and never nothing, for no spread ends at its limits', () => {
    const chances = pieceChances(solved(OUTSIDE, OUTSIDE_GROWTH), { least: 0.5, nominal: 0.55, most: 0.6 }, 0.25)
    expect(chances[0]?.notCleanedUp).toBeLessThan(1e-4)
    expect(chances[0]?.notCleanedUp).toBeGreaterThan(0)
    expect(chances[0]?.tooLittleCase).toBeLessThan(1e-6)
  })

  it('adds up over a batch, and is certain or nil where it is for one piece', () => {
    expect(chanceInBatch.value({ p: 0.5, n: 2 })).toBe(0.75)
    expect(chanceInBatch.value({ p: 0, n: 40 })).toBe(0)
    expect(chanceInBatch.value({ p: 1, n: 1 })).toBe(1)
  })
})

describe('numbers that the pieces are drawn with', () => {
  it('fill a bell in [-1, 1] with a standard deviation of a third: derived, three even spreads added', () => {
    const random = seededRandom(SEED)
    const drawn = Array.from({ length: PIECES }, () => bell(random))
    expect(Math.abs(mean(drawn))).toBeLessThan(4 / 3 / Math.sqrt(PIECES))
    expect(Math.abs(standardDeviation(drawn) - 1 / 3)).toBeLessThan(4 / 3 / Math.sqrt(2 * PIECES))
    expect(max(drawn.map(Math.abs))).toBeLessThanOrEqual(1)
  })

  it('are even in [0, 1), whatever the seed', () => {
    fc.assert(
      fc.property(fc.integer(), seed => {
        const random = seededRandom(seed)
        const drawn = Array.from({ length: 500 }, random)
        expect(min(drawn)).toBeGreaterThanOrEqual(0)
        expect(max(drawn)).toBeLessThan(1)
        // Mean of 500 even numbers: standard error 0.0129; five of them, since 200 seeds are tried.
        expect(Math.abs(mean(drawn) - 0.5)).toBeLessThan(0.065)
      }),
    )
  })

  it('are never off centre by more than one', () => {
    const random = seededRandom(SEED)
    expect(max(Array.from({ length: PIECES }, () => offCentre(random)))).toBeLessThanOrEqual(1)
  })
})
