import { describe, expect, it } from 'vitest'
import { depthThroughBoreChain } from '../../src/handbook/stock-chain.ts'
import type { KnownSpread } from '../../src/known.ts'
import type { Limits } from '../../src/limits.ts'
import { stockThatCleansUp } from '../../src/stock/choose-stock.ts'
import type { FinishChain } from '../../src/stock/finish-chain.ts'
import { solveChain } from '../../src/stock/solve-chain.ts'
import { cutsOf } from '../../src/stock/stock-entries.ts'
import { openNotebook } from '../../src/working.ts'
import { BORE, BORE_GROWTH, OUTSIDE, OUTSIDE_GROWTH } from './chain-of.ts'

const notebook = openNotebook()
const solved = (chain: FinishChain, growth: KnownSpread) =>
  solveChain(
    notebook,
    chain,
    growth,
    chain.finishes.map((_, index) => stockThatCleansUp(notebook, chain, index, growth)),
  )
const expectLimits = (found: Limits | undefined, lower: number, upper: number) => {
  expect(found?.lower).toBeCloseTo(lower, 9)
  expect(found?.upper).toBeCloseTo(upper, 9)
}

/**
 * Derived: a tolerance chart worked by hand, turn, nitride, grind outside, grind bore, hone, with the method of Kovan
 * (memory: Kosilova & Meshcheryakov, vol. 1). Growth on diameter 0.020 ±0.010 outside, 0.015 ±0.010 in the bore.
 */
describe('worked sleeve, Ø56 h6 over 48 H6', () => {
  const outside = solved(OUTSIDE, OUTSIDE_GROWTH)
  const bore = solved(BORE, BORE_GROWTH)
  const [outsideCut] = cutsOf(notebook, outside)
  const [grind, hone] = cutsOf(notebook, bore)

  it('is turned outside to 56.130 to 56.180', () => {
    expectLimits(outside.soft, 56.13, 56.18)
  })

  it('leaves 0.140 to 0.229 on the outside, 0.1845 nominal', () => {
    expect(outsideCut?.onDiameter.least).toBeCloseTo(0.14, 9)
    expect(outsideCut?.onDiameter.nominal).toBeCloseTo(0.1845, 9)
    expect(outsideCut?.onDiameter.most).toBeCloseTo(0.229, 9)
  })

  it('is ground in the bore to 47.970 to 47.985 and bored to 47.800 to 47.850', () => {
    expectLimits(bore.after[0], 47.97, 47.985)
    expectLimits(bore.soft, 47.8, 47.85)
  })

  it('leaves 0.125 to 0.210 in the bore, 0.1675 nominal', () => {
    expect(grind?.onDiameter.least).toBeCloseTo(0.125, 9)
    expect(grind?.onDiameter.nominal).toBeCloseTo(0.1675, 9)
    expect(grind?.onDiameter.most).toBeCloseTo(0.21, 9)
  })

  it('leaves 0.015 to 0.046 for the hone, 0.0305 nominal', () => {
    expect(hone?.onDiameter.least).toBeCloseTo(0.015, 9)
    expect(hone?.onDiameter.nominal).toBeCloseTo(0.0305, 9)
    expect(hone?.onDiameter.most).toBeCloseTo(0.046, 9)
  })

  it('needs a case of 0.383 mm for 0.25 left in the bore', () => {
    const depth = depthThroughBoreChain.value({
      N_asked: 0.25,
      d_final: BORE.final.upper,
      d_soft: bore.soft.lower,
      g_most: BORE_GROWTH.most,
      e: BORE.finishes[0]?.eccentricity.value ?? 0,
    })
    expect(depth.toFixed(3)).toBe('0.383')
  })

  it('takes more by the sum of the two cuts than end to end: the ground tolerance counts twice', () => {
    const byCuts = ((grind?.onDiameter.most ?? 0) + (hone?.onDiameter.most ?? 0)) / 2
    expect(byCuts).toBeCloseTo(0.1205 + 0.015 / 2, 9)
  })
})
