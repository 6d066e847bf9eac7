import jstat from 'jstat'
import { describe, expect, test } from 'vitest'
import { chiSquare, chiSquareApartBelow, fRatio } from '../../src/handbook/chi-square.ts'
import { noncentralTBelowOf, oneSidedToleranceFactor, toleranceFactor } from '../../src/handbook/noncentral-t.ts'
import { normalBelow } from '../../src/handbook/normal.ts'
import { studentT } from '../../src/handbook/student-t.ts'
import { capability, surely } from '../../src/record/capability.ts'
import { askAgain, exactChance, grubbs, runChart, trendOf, trendZ } from '../../src/record/run-of-pieces.ts'

/** Bissell's approximation of the lower limit of an index, and Howe's of the two-sided factor: textbook statistics. */
const bissell = (index: number, n: number): number =>
  index * (1 - 1.644853627 * Math.sqrt(1 / (9 * n * index ** 2) + 1 / (2 * (n - 1))))
const howeFactor = (n: number): number => 1.959963985 * Math.sqrt(((n - 1) * (1 + 1 / n)) / chiSquare(0.05, n - 1))

/** Run of twelve: deviations in µm in the order of making, of the worked examples for charts and trends. */
const RUN = [9, 10.5, 9.5, 11, 8.5, 10, 12, 11.5, 12.5, 11, 13, 12.5]

describe('distributions against a general statistics library (jStat)', () => {
  test.each([2, 5, 11, 24, 60])('of %i degrees of freedom', nu => {
    for (const q of [0.025, 0.05, 0.5, 0.95, 0.999]) {
      expect(chiSquare(q, nu)).toBeCloseTo(jstat.chisquare.inv(q, nu), 5)
      expect(fRatio(q, 2, nu)).toBeCloseTo(jstat.centralF.inv(q, 2, nu), 5)
    }
    expect(studentT(0.975, nu)).toBeCloseTo(jstat.studentt.inv(0.975, nu), 6)
    for (const [t, delta] of [
      [1, 0.5],
      [4, 3],
      [9, 7],
    ] as const)
      expect(noncentralTBelowOf(nu)(t, delta)).toBeCloseTo(jstat.noncentralt.cdf(t, nu, delta), 6)
  })

  test('normal', () => {
    for (const z of [-5, -1.96, -0.1, 0, 0.7, 3]) expect(normalBelow(z)).toBeCloseTo(jstat.normal.cdf(z, 0, 1), 8)
  })

  test('a noncentral chi-square of two is the square of a shifted vector: the mean is nu and what it is apart', () => {
    // Mean of the distribution from its chances, by the area above them.
    let mean = 0
    for (let x = 0.025; x < 120; x += 0.05) mean += (1 - chiSquareApartBelow(x, 2, 9)) * 0.05
    expect(mean).toBeCloseTo(11, 2)
  })
})

describe('capability', () => {
  // Worked example, exact noncentral t: computed twice, independently, in the reference of records.
  const DATA = [6, 8, 7, 9, 8, 10, 7, 8, 9, 11]

  test('the index and its exact limit of ten bores in 0 to 16', () => {
    const seen = capability(DATA, { lower: 0, upper: 16 })
    const upper = (16 - 8.3) / (3 * (seen?.spread ?? 1))
    expect(upper).toBeCloseTo(1.717, 3)
    expect(surely(upper, 10)).toBeCloseTo(1.02, 3)
    expect(bissell(upper, 10)).toBeCloseTo(1.029, 3)
    expect(seen?.Pp?.from).toBeCloseTo(0.977, 3)
    expect(seen?.Pp?.to).toBeCloseTo(2.594, 3)
  })

  // Derived table: the index that must be seen for 1.00, 1.33, 1.67 to be sure at 95 %.
  test.each([
    [5, 2.43, 3.2, 4.0],
    [12, 1.59, 2.09, 2.61],
    [25, 1.34, 1.77, 2.21],
    [50, 1.22, 1.61, 2.02],
  ])('of %i pieces', (n, one, good, best) => {
    for (const [seen, sure] of [
      [one, 1],
      [good, 1.33],
      [best, 1.67],
    ] as const) {
      expect(surely(seen - 0.006, n)).toBeLessThan(sure)
      expect(surely(seen + 0.006, n)).toBeGreaterThan(sure)
    }
  })

  test('four pieces have none, nor have pieces that are all alike', () => {
    expect(capability([1, 2, 3, 4], { upper: 5 })).toBeUndefined()
    expect(capability([2, 2, 2, 2, 2, 2], { upper: 5 })).toBeUndefined()
  })
})

describe('tolerance factors, confidence 95 % (memory: ISO 16269-6; the 95/95 row as a printed table has it)', () => {
  test.each([
    [5, 4.203, 5.077, 5.741, 6.598],
    [12, 2.736, 3.175, 3.747, 4.156],
    [20, 2.396, 2.76, 3.295, 3.621],
    [30, 2.22, 2.555, 3.064, 3.355],
  ])('n = %i', (n, k1, k2, k1Far, k2Far) => {
    expect(oneSidedToleranceFactor(n, 0.95, 0.95)).toBeCloseTo(k1, 3)
    expect(toleranceFactor(n, 0.95, 0.95)).toBeCloseTo(k2, 3)
    expect(oneSidedToleranceFactor(n, 0.99, 0.95)).toBeCloseTo(k1Far, 3)
    expect(toleranceFactor(n, 0.99, 0.95)).toBeCloseTo(k2Far, 3)
  })

  test('Howe comes near', () => {
    expect(howeFactor(10)).toBeCloseTo(3.382, 3)
  })
})

describe('a run of pieces', () => {
  test('has limits from its steps', () => {
    const chart = runChart(RUN)
    expect(chart?.meanStep).toBeCloseTo(1.409, 3)
    expect(chart?.spread).toBeCloseTo(1.249, 3)
    expect(chart?.lower).toBeCloseTo(7.17, 2)
    expect(chart?.upper).toBeCloseTo(14.66, 2)
    expect(chart?.mostStep).toBeCloseTo(4.6, 2)
    expect(runChart(RUN.slice(0, 7))).toBeUndefined()
  })

  test('leans', () => {
    const trend = trendOf(RUN)
    expect(trend?.S).toBe(40)
    expect(trendZ(40, 12, [2, 2])).toBeCloseTo(2.687, 3)
    expect(trend?.chance).toBeCloseTo(0.0072, 4)
    expect(trend?.slope).toBeCloseTo(0.2857, 4)
  })

  test('the exact chance of a lean counts orders', () => {
    expect(exactChance(10, 5)).toBeCloseTo(0.0167, 4)
    expect(exactChance(30, 12)).toBeCloseTo(0.0447, 4)
  })

  // Critical values of the table, 5 % two-sided: the next smaller S of the same parity is more likely than that.
  test.each([
    [5, 10],
    [8, 18],
    [12, 30],
    [20, 62],
  ])('of %i pieces is sure from %i', (n, S) => {
    expect(exactChance(S, n)).toBeLessThanOrEqual(0.05)
    expect(exactChance(S - 2, n)).toBeGreaterThan(0.05)
  })

  test.each([
    [5, 1.715],
    [7, 2.02],
    [12, 2.412],
    [30, 2.908],
  ])('of %i pieces has a value to measure again beyond %f spreads', (n, G) => {
    expect(grubbs(n)).toBeCloseTo(G, 3)
  })

  test('names the one that stands off, and none of a quiet run', () => {
    expect(askAgain([8, 9, 8.5, 9.2, 8.8, 8.6, 14])?.index).toBe(6)
    expect(askAgain(RUN)).toBeUndefined()
  })
})
