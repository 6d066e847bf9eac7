import fc from 'fast-check'
import { combinations } from 'mathjs'
import { binomialDistribution } from 'simple-statistics'
import { describe, expect, it } from 'vitest'
import { chanceOfAcceptance, rejectableCount, zeroAcceptanceSize } from '../../src/handbook/lot-odds.ts'
import { chanceOfEnough } from '../../src/handbook/start-quantity.ts'

const hypergeometric = (N: number, D: number, n: number, Ac: number): number =>
  chanceOfAcceptance.value({ N, D, n, Ac })
/** Of a long series: no more than Ac of n are bad when each is bad with chance p. */
const binomial = (p: number, n: number, Ac: number): number => chanceOfEnough.value({ Q: n - Ac, s: Ac, Y: 1 - p })

describe('40 liners, level II, AQL 2.5: 5 pieces, accept on 0 (derived)', () => {
  it.each([
    [1, 0.875, 0.8811],
    [2, 0.7628, 0.7738],
    [4, 0.5729, 0.5905],
    [6, 0.4229, 0.4437],
    [8, 0.306, 0.3277],
  ])('%d bad ones', (D, exact, series) => {
    expect(hypergeometric(40, D, 5, 0)).toBeCloseTo(exact, 4)
    expect(binomial(D / 40, 5, 0)).toBeCloseTo(series, 4)
  })
})

describe('200 pins, level II, AQL 1.5: 32 pieces, accept on 1 (derived)', () => {
  it.each([
    [3, 0.9328, 0.917],
    [6, 0.754, 0.7507],
    [10, 0.504, 0.52],
    [16, 0.2366, 0.2624],
    [20, 0.1333, 0.1564],
    [24, 0.0719, 0.0897],
  ])('%d bad ones', (D, exact, series) => {
    expect(hypergeometric(200, D, 32, 1)).toBeCloseTo(exact, 4)
    expect(binomial(D / 200, 32, 1)).toBeCloseTo(series, 4)
  })
})

describe('quality that common plans pass in 95, 50 and 10 of 100 lots (derived: binomial)', () => {
  it.each([
    [5, 0, 1.021, 12.94, 36.9],
    [8, 0, 0.639, 8.3, 25.01],
    [13, 0, 0.394, 5.19, 16.23],
    [20, 0, 0.256, 3.41, 10.87],
    [13, 1, 2.805, 12.58, 26.78],
    [20, 1, 1.807, 8.25, 18.1],
    [32, 1, 1.122, 5.19, 11.62],
    [50, 1, 0.715, 3.33, 7.56],
    [32, 2, 2.604, 8.27, 15.79],
    [80, 2, 1.03, 3.33, 6.52],
  ])('%d pieces, accept on %d: %d, %d and %d %% bad', (n, Ac, ...percents) => {
    for (const [index, percent] of percents.entries()) {
      const places = index === 0 ? 3 : 2
      const passed = [0.95, 0.5, 0.1][index] ?? 0
      const halfUnit = 0.5 * 10 ** -places
      expect(binomial((percent - halfUnit) / 100, n, Ac)).toBeGreaterThanOrEqual(passed)
      expect(binomial((percent + halfUnit) / 100, n, Ac)).toBeLessThanOrEqual(passed)
    }
  })
})

describe('chance of acceptance against general libraries', () => {
  const lot = fc
    .integer({ min: 2, max: 60 })
    .chain(N => fc.tuple(fc.constant(N), fc.integer({ min: 0, max: N }), fc.integer({ min: 1, max: N })))

  it('is the share of all samples with so few bad ones, by combinations of a maths library', () => {
    fc.assert(
      fc.property(lot, fc.integer({ min: 0, max: 5 }), ([N, D, n], Ac) => {
        let ways = 0
        for (let k = 0; k <= Math.min(Ac, D, n); k++) {
          if (n - k <= N - D) ways += combinations(D, k) * combinations(N - D, n - k)
        }
        expect(hypergeometric(N, D, n, Ac)).toBeCloseTo(ways / combinations(N, n), 9)
      }),
    )
  })

  it('nears the binomial distribution of a statistics library as the lot grows', () => {
    const library = (binomialDistribution(5, 0.1) ?? [])[0] ?? 0
    const away = [40, 200, 1000].map(N => Math.abs(hypergeometric(N, N / 10, 5, 0) - library))
    expect(away).toEqual(away.toSorted((a, b) => b - a))
    expect(away.at(-1)).toBeLessThan(1e-3)
  })

  it('passes a good lot always, and a wholly bad one never', () => {
    expect(hypergeometric(30, 0, 5, 0)).toBe(1)
    expect(hypergeometric(30, 30, 5, 0)).toBe(0)
    expect(() => hypergeometric(30, 31, 5, 0)).toThrow(RangeError)
    expect(() => hypergeometric(30, 3, 31, 0)).toThrow(RangeError)
  })
})

describe('smallest sample that accepts on none (derived: hypergeometric)', () => {
  const LOTS = [5, 8, 10, 12, 15, 20, 25, 30, 40, 50, 100, 200]

  it.each([
    [0.1, 0.9, [5, 8, 9, 8, 10, 14, 13, 16, 17, 18, 20, 21], 22],
    [0.1, 0.95, [5, 8, 10, 9, 12, 16, 16, 19, 21, 22, 25, 27], 29],
    [0.05, 0.95, [5, 8, 10, 12, 15, 19, 19, 23, 31, 31, 45, 51], 59],
    [0.2, 0.95, [5, 6, 8, 7, 9, 10, 11, 11, 12, 12, 13, 13], 14],
  ])('share %d, confidence %d', (q, C, sizes, endless) => {
    expect(LOTS.map(N => zeroAcceptanceSize(N, rejectableCount.value({ q, N }), C))).toEqual(sizes)
    // Of an endless lot: ln(1 − C) / ln(1 − q).
    expect(Math.ceil(Math.log(1 - C) / Math.log(1 - q))).toBe(endless)
    expect(zeroAcceptanceSize(1000, 1000 * q, C)).toBeLessThanOrEqual(endless)
  })

  it('keeps a whole share whole: 7 of 100, where binary gives a little more', () => {
    expect(0.07 * 100).toBeGreaterThan(7)
    expect(rejectableCount.value({ q: 0.07, N: 100 })).toBe(7)
  })
})
