import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { COMPOUND_LAYERS } from '../../src/handbook/compound-layer.ts'
import { GROWTH_COEFFICIENTS, growthPerSide } from '../../src/handbook/nitriding-growth.ts'
import { formError } from '../../src/handbook/stock-at-worst-place.ts'
import { expectDigits } from './to-the-digits.ts'

const { diffusion, compound } = GROWTH_COEFFICIENTS
const growth = (N: number, C: number, end: 'least' | 'usual' | 'most'): number =>
  growthPerSide.value({ k_d: diffusion[end], N, k_c: compound[end], C })

describe('growth per side, µm, low / default / high (derived; coefficients memory/estimate)', () => {
  const ROWS: readonly (readonly [number, number, string, string, string])[] = [
    [0.15, 12, '3.9', '6.2', '9.0'],
    [0.2, 8, '4.1', '6.6', '10.0'],
    [0.3, 10, '5.9', '9.5', '14.5'],
    [0.4, 12, '7.7', '12.4', '19.0'],
    [0.5, 15, '9.6', '15.5', '23.8'],
  ]
  it.each(ROWS)('%d mm deep, %d µm compound layer', (N, C, low, usual, high) => {
    expectDigits(1000 * growth(N, C / 1000, 'least'), low)
    expectDigits(1000 * growth(N, C / 1000, 'usual'), usual)
    expectDigits(1000 * growth(N, C / 1000, 'most'), high)
  })

  it('is in the range of a crankshaft journal 12.7 µm larger on diameter (hobby note on nitrided crankshafts)', () => {
    expect(growth(0.3, 0.01, 'least') * 2000).toBeLessThan(12.7)
    expect(growth(0.3, 0.01, 'most') * 2000).toBeGreaterThan(12.7)
  })

  it('has a default that the pairs of lattice volumes bear out: 13.8 to 15.6 % of the layer stands outside, and more with pores', () => {
    // Memory: iron nitrides take 1.160 and 1.185 times the volume of ferrite for each iron atom.
    for (const volume of [1.16, 1.185]) {
      const outside = 1 - 1 / volume
      expect(outside).toBeGreaterThan(0.13)
      expect(outside).toBeLessThan(compound.usual)
    }
    expectDigits(100 * (1 - 1 / 1.16), '13.8')
    expectDigits(100 * (1 - 1 / 1.185), '15.6')
  })
})

describe('always', () => {
  it('grows with depth and with the compound layer, and nothing grows by nothing', () => {
    const grows = fc.property(
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 0.05, noNaN: true }),
      (N, C) => {
        expect(growth(N + 0.05, C, 'usual')).toBeGreaterThan(growth(N, C, 'usual'))
        expect(growth(N, C + 0.001, 'usual')).toBeGreaterThan(growth(N, C, 'usual'))
        expect(growth(N, C, 'least')).toBeLessThanOrEqual(growth(N, C, 'usual'))
        expect(growth(N, C, 'usual')).toBeLessThanOrEqual(growth(N, C, 'most'))
      },
    )
    fc.assert(grows)
    expect(growth(0, 0, 'most')).toBe(0)
  })

  it('has no compound layer twice, each range in order, none over the 5 to 50 µm of Industrial Heating', () => {
    const ways = COMPOUND_LAYERS.map(({ process, stages }) => `${process}, ${stages.length}`)
    expect(new Set(ways).size).toBe(COMPOUND_LAYERS.length)
    for (const { stages, ordered, most } of COMPOUND_LAYERS) {
      expect(stages.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12)
      expect(ordered).toBeLessThanOrEqual(most)
    }
    for (const { least, usual, most } of COMPOUND_LAYERS) {
      expect(least).toBeLessThanOrEqual(usual)
      expect(usual).toBeLessThanOrEqual(most)
      expect(most).toBeLessThanOrEqual(50)
    }
  })
})

describe('form error (derived: worked by hand)', () => {
  it('0.10 a side with 0.02 eccentric, 0.03 oval and 0.02 bowed runs from 0.0625 to 0.1375', () => {
    const spread = 0.02 + formError.value({ o: 0.03, b: 0.02 })
    expectDigits(spread, '0.0375')
    expectDigits(0.1 - spread, '0.0625')
    expectDigits(0.1 + spread, '0.1375')
  })
})
