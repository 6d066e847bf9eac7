import { describe, expect, it } from 'vitest'
import { CUT_OFFS, cutOffFor, ROUGHNESS_LEFT } from '../../src/handbook/roughness-measurement.ts'
import { warmReading } from '../../src/handbook/thermal-expansion.ts'
import { BUILT_IN_GAUGES } from '../../src/shop/built-in-gauges.ts'
import { expandedUncertainty } from './second-models/measurement-uncertainty.ts'

/** Budgets after the GUM, worked by hand; limits of error of the micrometers: DIN 863 and 862 on one page. µm. */
const BUDGETS = [
  ['outside micrometer', { MPE: 5, r: 1, s: 1, D: 55, dT: 2, u_o: 0 }, 6.31],
  ['outside micrometer set on a block', { MPE: 1, r: 1, s: 0.8, D: 55, dT: 1, u_o: 0.5 }, 2.4],
  ['two-point bore gauge set on a ring', { MPE: 1.5, r: 1, s: 1, D: 48, dT: 1, u_o: 0.5 }, 2.96],
  ['air plug with two setting rings', { MPE: 0.5, r: 0.1, s: 0.3, D: 48, dT: 0.5, u_o: 0.5 }, 1.34],
] as const

describe('expanded uncertainty of a gauge, by its budget (derived: GUM)', () => {
  it.each(BUDGETS)('%s', (name, given, U) => {
    expect(expandedUncertainty.value({ alpha: 11.7, ...given }).toFixed(2)).toBe(U.toFixed(2))
    // Common practice rounds the budget of the built-in gauge: to half a micrometre either way.
    const built = BUILT_IN_GAUGES.find(gauge => gauge.name === name)
    expect(Math.abs(1000 * (built?.uncertainty ?? 0) - U)).toBeLessThan(0.65)
  })

  it('is nothing for a perfect gauge, and twice the master for one that is else perfect', () => {
    const perfect = { MPE: 0, r: 0, s: 0, alpha: 11.7, D: 48, dT: 0, u_o: 0 }
    expect(expandedUncertainty.value(perfect)).toBe(0)
    expect(expandedUncertainty.value({ ...perfect, u_o: 0.5 })).toBeCloseTo(1, 12)
  })
})

describe('a warm part (derived: linear expansion)', () => {
  it('reads 2.81 µm large in a 48 mm steel bore 5 K warm, an aluminium piston 5.5', () => {
    expect(warmReading.value({ alpha: 11.7, D: 48, dT: 5 }).toFixed(2)).toBe('2.81')
    expect(warmReading.value({ alpha: 23, D: 48, dT: 5 }).toFixed(1)).toBe('5.5')
  })
})

describe('roughness', () => {
  // Memory: ISO 4288.
  it.each([
    [0.05, 0.25, 1.25],
    [0.1, 0.25, 1.25],
    [0.3, 0.8, 4],
    [1.6, 0.8, 4],
    [3.2, 2.5, 12.5],
  ])('Ra %d is measured with a cut-off of %d over %d mm', (Ra, cutOff, evaluation) => {
    expect(cutOffFor(Ra)).toMatchObject({ cutOff, evaluation })
  })

  it('has ranges that meet, five cut-offs each', () => {
    for (const [index, { over, cutOff, evaluation }] of CUT_OFFS.rows.entries()) {
      expect(evaluation).toBeCloseTo(5 * cutOff, 9)
      if (index > 0) expect(over).toBe(CUT_OFFS.rows[index - 1]?.upTo)
    }
    expect(cutOffFor(0.001)).toBeUndefined()
  })

  // GOST R 70117-2022, Table 3, fine grades: grinding 0.05 to 0.4, honing 0.025 to 0.2, lapping 0.025 to 0.8.
  it('goes as low as the tables say, and lower from process to process', () => {
    expect(Object.values(ROUGHNESS_LEFT).map(({ least }) => least)).toEqual([0.4, 0.05, 0.025, 0.025])
    for (const { least, most } of Object.values(ROUGHNESS_LEFT)) expect(most).toBeGreaterThan(least)
  })
})
