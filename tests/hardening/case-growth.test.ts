import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { growthFor } from '../../src/hardening/plan-case.ts'
import type { Measured, Shop } from '../../src/shop/shop.ts'
import { expectDigits } from '../handbook/to-the-digits.ts'
import { hardenedBy, SHOP, SLEEVE } from './case-part.ts'

const measured = (row: Partial<Measured>): Shop => ({
  ...SHOP,
  measured: [{ process: 'nitride', pieces: 24, date: '2026-09-01', ...row }],
})
const GROWTH = { least: 0.004, nominal: 0.006, most: 0.008 }

describe('growth of a sleeve Ø60 over Ø52, 0.3 mm of case on both sides (derived: elastic equilibrium)', () => {
  const { outside, bore } = growthFor(SLEEVE, SHOP, 0.3, 4)
  it('makes the outside 29.8 µm larger, not 19.0', () => {
    expectDigits(2000 * outside.nominal, '29.8')
  })
  it('makes the bore 9.6 µm smaller, not 19.0', () => {
    expectDigits(2000 * bore.nominal, '9.6')
  })
  it('keeps the spread of the coefficients on both: 8.6 µm a side', () => {
    for (const side of [outside, bore]) expectDigits(1000 * (side.most - side.least), '8.6')
  })
})

describe('a masked side', () => {
  it('takes no case, but moves as the wall stretches', () => {
    const { outside, bore } = growthFor(hardenedBy({ masked: ['bore'] }), SHOP, 0.3, 4)
    // Derived: one case of 0.3 in a wall of 4 stretches it by 8.266e-5.
    expectDigits(1e5 * ((-2 * bore.nominal) / 52), '8.266')
    expectDigits(2000 * outside.nominal, '23.96')
  })
  it('is known by its own name too', () => {
    const { outside } = growthFor(hardenedBy({ masked: ['seat'] }), SHOP, 0.3, 4)
    expect(outside.nominal).toBeLessThan(0.003)
  })
})

describe('growth that the works measured', () => {
  it('overrides the handbook, and says so', () => {
    const { outside, bore, workings } = growthFor(SLEEVE, measured({ growth: GROWTH }), 0.3, 4)
    expect(outside).toMatchObject(GROWTH)
    expect(bore).toMatchObject(GROWTH)
    expect(workings.map(({ source }) => source)).toEqual(['shop: measured on 24 pieces, 2026-09-01'])
  })
  it('is left alone on another grade, another process, or without a growth', () => {
    for (const row of [
      { grade: '31CrMoV9', growth: GROWTH },
      { process: 'case-harden' as const, growth: GROWTH },
      { ovality: 0.02 },
    ]) {
      expectDigits(2000 * growthFor(SLEEVE, measured(row), 0.3, 4).outside.nominal, '29.8')
    }
  })
  it('on the grade itself goes before any grade', () => {
    const shop: Shop = {
      ...SHOP,
      measured: [
        { process: 'nitride', pieces: 5, date: '2026-01-01', growth: { least: 0, nominal: 0.001, most: 0.002 } },
        { process: 'nitride', pieces: 9, date: '2026-02-01', grade: '42CrMo4', growth: GROWTH },
      ],
    }
    expect(growthFor(SLEEVE, shop, 0.3, 4).outside).toMatchObject(GROWTH)
  })
})

describe('quenched parts', () => {
  it('a carburised sleeve may go either way by 0.1 % of its diameter (common practice, no source)', () => {
    const { outside, bore } = growthFor(hardenedBy({ process: 'carburising' }), SHOP, 0.7, 4)
    expectDigits(2 * outside.most, '0.060')
    expectDigits(2 * outside.least, '-0.060')
    expectDigits(2 * bore.most, '0.052')
  })
  it('an induction-hardened ring gets larger outside and in the bore', () => {
    const { outside, bore } = growthFor(hardenedBy({ process: 'induction hardening' }), SHOP, 1, 10)
    expect(outside.least).toBeGreaterThan(0)
    expect(bore.most).toBeLessThan(0)
    expect(bore.least).toBeLessThanOrEqual(bore.nominal)
    expect(bore.nominal).toBeLessThanOrEqual(bore.most)
  })
})

describe('always', () => {
  it('least, nominal and most are in order; deeper grows more outside; an unhardened part does not grow', () => {
    const holds = fc.property(
      fc.double({ min: 0.1, max: 0.6, noNaN: true }),
      fc.double({ min: 3, max: 10, noNaN: true }),
      (depth, wall) => {
        const shallow = growthFor(SLEEVE, SHOP, { least: depth, most: depth + 0.1 }, wall)
        const deeper = growthFor(SLEEVE, SHOP, { least: depth + 0.05, most: depth + 0.15 }, wall)
        for (const side of [shallow.outside, shallow.bore]) {
          expect(side.least).toBeLessThan(side.nominal)
          expect(side.nominal).toBeLessThan(side.most)
        }
        expect(deeper.outside.nominal).toBeGreaterThan(shallow.outside.nominal)
      },
    )
    fc.assert(holds)
    const { hardening: _none, ...soft } = SLEEVE
    expect(growthFor(soft, SHOP, 0.3, 4).outside).toMatchObject({ least: 0, nominal: 0, most: 0 })
  })
})
