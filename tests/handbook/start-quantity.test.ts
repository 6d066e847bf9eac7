import fc from 'fast-check'
import { combinations } from 'mathjs'
import { binomialDistribution } from 'simple-statistics'
import { describe, expect, it } from 'vitest'
import { chanceOfEnough } from '../../src/handbook/start-quantity.ts'

const chance = (Q: number, N: number, Y: number): number => chanceOfEnough.value({ Q, s: N - Q, Y })

describe('chance of enough good pieces (derived: binomial distribution)', () => {
  const Y = 0.98 * 0.99 * 0.95 * 0.97

  it.each([
    [20, 23, Y, 0.778],
    [20, 24, Y, 0.8969],
    [20, 25, Y, 0.9573],
    [6, 7, 0.9, 0.8503],
    [6, 8, 0.9, 0.9619],
    [24, 27, 0.92, 0.8342],
    [24, 28, 0.92, 0.9314],
    [24, 29, 0.92, 0.9749],
  ])('%d wanted of %d at %d: %d', (Q, N, y, expected) => {
    expect(chance(Q, N, y)).toBeCloseTo(expected, 4)
  })

  it('agrees with the distribution of a statistics library', () => {
    const wanted = fc.integer({ min: 1, max: 60 })
    const spare = fc.integer({ min: 0, max: 12 })
    const y = fc.double({ min: 0.5, max: 0.999, noNaN: true })
    fc.assert(
      fc.property(wanted, spare, y, (Q, s, Y) => {
        const table = binomialDistribution(Q + s, Y) ?? []
        const library = table.slice(Q).reduce((sum, p) => sum + p, 0)
        // The library stops its table where its own sum reaches 1 less 1e-4.
        expect(Math.abs(chanceOfEnough.value({ Q, s, Y }) - library)).toBeLessThan(1.1e-4)
      }),
    )
  })

  it('agrees with the plain sum over good pieces, by combinations of a maths library', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 0, max: 20 }), (Q, s) => {
        let sum = 0
        for (let good = Q; good <= Q + s; good++) sum += combinations(Q + s, good) * 0.9 ** good * 0.1 ** (Q + s - good)
        expect(chanceOfEnough.value({ Q, s, Y: 0.9 })).toBeCloseTo(sum, 10)
      }),
    )
  })

  it('is certain when nothing is ever lost, and rises with every spare piece', () => {
    expect(chance(24, 24, 1)).toBe(1)
    for (let s = 0; s < 10; s++) expect(chance(24, 25 + s, 0.9)).toBeGreaterThan(chance(24, 24 + s, 0.9))
  })
})
