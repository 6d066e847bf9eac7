import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { BAKE_ROWS, bakeHours } from '../../src/handbook/hydrogen-bake.ts'
import {
  boreAsPlated,
  boreBeforePlating,
  depositionTime,
  layerLeast,
  layerMost,
  PLATINGS,
} from '../../src/handbook/plating.ts'
import { expectDigits } from './to-the-digits.ts'

describe('sizes of a plated bore (derived: geometry)', () => {
  it.each([
    ['nickel silicon carbide', 60, 0.075, 0.025, '60.150', '59.950'],
    ['hard chrome', 60, 0.08, 0.03, '60.160', '59.940'],
  ])('%s on Ø%d: %d left, %d honed', (_coating, d, t, s, before, plated) => {
    const d_pre = boreBeforePlating.value({ d, t })
    expectDigits(d_pre, before)
    expectDigits(boreAsPlated.value({ d_pre, t, s }), plated)
  })

  it('hones twice the hone stock, whatever was plated, and leaves the thickness', () => {
    const balanced = fc.property(
      fc.double({ min: 20, max: 120, noNaN: true }),
      fc.double({ min: 0.02, max: 0.4, noNaN: true }),
      fc.double({ min: 0, max: 0.05, noNaN: true }),
      (size, t, s) => {
        const d_pre = boreBeforePlating.value({ d: size, t })
        const bore = boreAsPlated.value({ d_pre, t, s })
        expect(size - bore).toBeCloseTo(2 * s, 9)
        expect(layerLeast.value({ d_pre, d: size, u: 0, f: 0 })).toBeCloseTo(t, 9)
        expect(layerMost.value({ d_pre, d: bore, u: 0, f: 0 })).toBeCloseTo(t + s, 9)
      },
    )
    fc.assert(balanced)
  })

  it('0.10 mm of chrome takes 3.3 to 4.0 h at 25 to 30 µm/h', () => {
    expectDigits(depositionTime.value({ t: 0.08, s: 0.02, v: 30 }), '3.3')
    expectDigits(depositionTime.value({ t: 0.08, s: 0.02, v: 25 }), '4.0')
  })

  it('has every range in order', () => {
    for (const { thickness, honeStock } of PLATINGS)
      for (const { least, usual, most } of [thickness, honeStock]) {
        expect(least).toBeLessThanOrEqual(usual)
        expect(usual).toBeLessThanOrEqual(most)
      }
  })
})

describe("bake after plating, ASTM B850-98(2009), a plater's copy", () => {
  it('has rows that meet, two hours apart', () => {
    BAKE_ROWS.slice(1).forEach((row, index) => {
      expect(row.over).toBe(BAKE_ROWS[index]?.upTo)
      expect(row.hours - (BAKE_ROWS[index]?.hours ?? 0)).toBe(2)
    })
  })
  it.each([
    [320, undefined, 8],
    [390, undefined, 12],
    // ISO 9587:2007 sets 1000 MPa at 300 HV10.
    [300, undefined, 8],
    [290, undefined, 0],
    [300, 650, 22],
    [290, 950, 22],
  ])('%d HV, surface %s: %d h', (hardness, surface, hours) => {
    expect(bakeHours(hardness, surface)).toBe(hours)
  })
  it('never falls with hardness', () => {
    for (let HV = 200; HV < 700; HV += 5) expect(bakeHours(HV + 5)).toBeGreaterThanOrEqual(bakeHours(HV))
  })
})
