import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { hotClearance, hotRingGap, ringGap } from '../../src/record/fits.ts'
import { type Clearance, clearanceUncertainty, pairPistons, type ToPair } from '../../src/record/pair-pistons.ts'

// The worked lot, µm over and under 48: computed twice, independently, in the reference of records.
const BORES = [7, 12, 3, 15, 9, 5, 11, 14, 6, 10, 8, 13]
const PISTONS = [55, 61, 49, 67, 58, 52, 63, 50, 60, 57, 66, 54]
const CLEARANCE: Clearance = { least: 0.057, most: 0.073, wanted: 0.065 }

const over = (values: readonly number[]): readonly ToPair[] =>
  values.map((value, index) => ({ serial: String(index + 1), size: 48 + value / 1000 }))
const under = (values: readonly number[]): readonly ToPair[] => over(values.map(value => -value))
const U = clearanceUncertainty(1.48, 1.2) / 1000

describe('pistons to bores', () => {
  test('the worked lot', () => {
    const { pairs, worst, squares, expectedOutside } = pairPistons(over(BORES), under(PISTONS), CLEARANCE, U)
    expect(pairs).toHaveLength(12)
    expect(worst).toBeCloseTo(0.006, 9)
    expect(squares).toBeCloseTo(107e-6, 12)
    expect(pairs.reduce((sum, { off }) => sum + Math.abs(off), 0)).toBeCloseTo(0.029, 9)
    expect(expectedOutside).toBeCloseTo(0.233, 3)
    expect(pairs.map(({ bore, piston }) => `${bore}-${piston}`)).toEqual(
      '1-2 2-12 3-4 4-3 5-5 6-11 7-1 8-8 9-7 10-10 11-9 12-6'.split(' '),
    )
    expect(U * 1000).toBeCloseTo(1.905, 3)
    expect(pairs.find(({ bore }) => bore === '6')?.chance).toBeCloseTo(0.853, 3)
    expect(pairs.find(({ bore }) => bore === '3')?.chance).toBeCloseTo(0.942, 3)
  })

  test('two spares take the worst from 6 to 4', () => {
    const { worst, squares, pistons } = pairPistons(over(BORES), under([...PISTONS, 48, 71]), CLEARANCE, U)
    expect(worst).toBeCloseTo(0.004, 9)
    expect(squares).toBeCloseTo(48e-6, 12)
    expect(pistons).toHaveLength(2)
  })

  test('the least sum of squares is not taken before the least worst', () => {
    const { worst, squares } = pairPistons(over([3, 3, 5, 8, 10]), under([62, 50, 54, 69, 55, 69, 60]), CLEARANCE, U)
    expect(worst).toBeCloseTo(0.005, 9)
    expect(squares).toBeCloseTo(63e-6, 12)
  })

  test('where sorted order has one outside, a good pair is not lost for it', () => {
    const { pairs, bores } = pairPistons(over([12, 19]), under([68, 58]), CLEARANCE, U)
    expect(pairs.map(({ bore, piston, clearance }) => [bore, piston, Math.round(clearance * 1000)])).toEqual([
      ['1', '2', 70],
    ])
    expect(bores[0]?.partner.from).toBeCloseTo(47.946, 6)
    expect(bores[0]?.partner.to).toBeCloseTo(47.962, 6)
  })

  test('against every assignment of 500 random lots', () => {
    const micrometres = (from: number, to: number) =>
      fc.array(fc.integer({ min: from, max: to }), { minLength: 1, maxLength: 5 })
    fc.assert(
      fc.property(micrometres(0, 16), micrometres(48, 74), (bores, pistons) => {
        const { pairs, worst, squares } = pairPistons(over(bores), under(pistons), CLEARANCE, U)
        const best = exhaustive(bores, pistons)
        expect([pairs.length, Math.round(worst * 1000), Math.round(squares * 1e6)]).toEqual(best)
      }),
      { numRuns: 500, seed: 48 },
    )
  })
})

/** Most pairs, least worst, least squares over all one-to-one assignments. */
function exhaustive(bores: readonly number[], pistons: readonly number[]): readonly [number, number, number] {
  const go = (i: number, free: readonly number[]): readonly [number, number, number] => {
    const bore = bores[i]
    if (bore === undefined) return [0, 0, 0]
    return free.reduce(
      (best, piston, index) => {
        const off = bore + piston - 65
        if (Math.abs(off) > 8) return best
        const [pairs, worst, squares] = go(
          i + 1,
          free.filter((_, other) => other !== index),
        )
        const one: readonly [number, number, number] = [pairs + 1, Math.max(worst, Math.abs(off)), squares + off ** 2]
        const better = one[0] - best[0] || best[1] - one[1] || best[2] - one[2]
        return better > 0 ? one : best
      },
      go(i + 1, free),
    )
  }
  return go(0, pistons)
}

describe('fits', () => {
  test('a ring gap cold and hot', () => {
    const gap = ringGap(0.2, 48, 48.012)
    expect(gap).toBeCloseTo(0.2377, 4)
    // Grey iron ring in a steel liner. Expansion: memory, handbook values.
    const hot = hotRingGap(
      gap,
      48.012,
      { temperature: 110, expansion: 11.7e-6 },
      { temperature: 200, expansion: 11e-6 },
    )
    expect(hot).toBeCloseTo(0.0979, 4)
  })

  test('a piston hot', () => {
    const hot = hotClearance(
      48.01,
      47.945,
      { temperature: 110, expansion: 11.7e-6 },
      { temperature: 140, expansion: 19.5e-6 },
    )
    expect(hot).toBeCloseTo(0.0034, 4)
  })
})
