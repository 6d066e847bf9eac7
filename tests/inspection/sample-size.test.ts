import { combinations } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { sampleOf } from '../../src/inspection/sample-size.ts'

/** Chance that a sample of n finds none of the bad ones, counted with a general-purpose library. */
const missed = (lot: number, bad: number, n: number): number => combinations(lot - bad, n) / combinations(lot, n)

describe('major sizes: no bad piece accepted, one in ten bad found with 95 %', () => {
  // Computed from the hypergeometric distribution, N = 30, 40, 50.
  it.each([
    [30, 19],
    [40, 21],
    [50, 22],
  ])('of %d pieces %d', (lot, sample) => {
    expect(sampleOf(lot, 'major').sample).toBe(sample)
  })

  it.each([26, 33, 47, 80, 120])('is the least sample that mathjs finds enough, of %d', lot => {
    const bad = Math.ceil(lot / 10)
    const { sample } = sampleOf(lot, 'major')
    expect(missed(lot, bad, sample)).toBeLessThanOrEqual(0.05)
    expect(missed(lot, bad, sample - 1)).toBeGreaterThan(0.05)
  })
})

describe('minor ones', () => {
  it('of 40 are 3, accepted on none: ISO 2859-1, level S-3, AQL 4.0, letter B', () => {
    expect(sampleOf(40, 'minor')).toEqual({
      sample: 3,
      plan: 'ISO 2859-1, level S-3, AQL 4.0: accept on 0, reject on 1',
    })
  })
})

// Common practice, no source: up to 25 pieces, and whatever the fit hangs on, every piece.
describe('every piece', () => {
  it.each(['critical', 'major', 'minor'] as const)('of a small lot, %s', weight => {
    for (const lot of [1, 12, 25]) expect(sampleOf(lot, weight)).toEqual({ sample: lot, plan: 'every piece' })
  })

  it.each([26, 40, 500])('of what is critical, of %d', lot => {
    expect(sampleOf(lot, 'critical').sample).toBe(lot)
  })

  it('no longer, from 26 on', () => {
    expect(sampleOf(26, 'major').sample).toBeLessThan(26)
    expect(sampleOf(26, 'minor').sample).toBeLessThan(26)
  })
})
