import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { profileFactor } from '../../src/handbook/wall-stretch.ts'
import type { Growth } from '../../src/hardening/growth.ts'
import { growthFor } from '../../src/hardening/plan-case.ts'
import type { Measured } from '../../src/shop/record.ts'
import type { Shop } from '../../src/shop/shop.ts'
import { expectDigits } from '../handbook/to-the-digits.ts'
import { hardenedBy, SHOP, SLEEVE } from './case-part.ts'

const measured = (row: Partial<Measured>): Shop => ({
  ...SHOP,
  measured: [{ process: 'nitride', pieces: 24, date: '2026-09-01', ...row }],
})
const GROWTH = { least: 0.004, nominal: 0.006, most: 0.008 }

/** Derived by hand: both of the seat Ø60 and the bore of 52, a wall of 4, cases of h_o and h_i at 450 MPa of surface stress. */
const phi = profileFactor.value({ H_s: 650, H_c: 320, n: 1.7 })
/** Its second stage leaves eight tenths of it: estimate, creep of the core while the case forms. */
const wallMoves = (s_s: number, h: number): number => (28 * 0.7 * 0.8 * s_s * phi * h) / (206_000 * 4)
const band = (surface: string, growth: Growth) => {
  const found = growth.bands.find(one => one.surface === surface)
  if (!found) throw new Error(`no ${surface}`)
  return found
}

describe('growth of a sleeve Ø60 over Ø52, 0.3 mm of case on both sides (derived: equilibrium of the layers)', () => {
  const { outside, bore } = growthFor(SLEEVE, SHOP, 0.3)
  // Along the band the flange holds it back and the end lets it go: a few tenths of a micrometre about the plain wall.
  it('makes the outside larger by free growth and by what the wall moves, the bore smaller by the difference', () => {
    expect(1000 * outside.nominal).toBeCloseTo(9.5 + 1000 * wallMoves(450, 0.6), 0)
    expect(1000 * bore.nominal).toBeCloseTo(9.5 - 1000 * wallMoves(450, 0.6), 0)
  })
  it('has the spread of every input: coefficients, and 350 to 600 MPa of stress', () => {
    expect(outside.least).toBeLessThan(0.0059 + wallMoves(350, 0.6))
    expect(outside.most).toBeGreaterThan(0.0145 + wallMoves(600, 0.6))
    expect(bore.least).toBeLessThan(0.0059 - wallMoves(600, 0.6))
    expect(bore.most).toBeGreaterThan(0.0145 - wallMoves(350, 0.6))
  })
  it('has the spread of the depth ordered too', () => {
    const wide = growthFor(SLEEVE, SHOP, { least: 0.3, most: 0.4 })
    expect(wide.outside.least).toBeCloseTo(outside.least, 9)
    expect(wide.outside.most).toBeGreaterThan(0.04 * 0.4 + 0.0025 + wallMoves(600, 0.8))
  })
  it('is that of a coupon where the wall is thick', () => {
    const thick = { ...SLEEVE, outside: [{ ...at(1), from: 0, size: { ...at(1).size, nominal: 92 } }] }
    const { outside, bore } = growthFor(thick, SHOP, 0.3)
    expect(1000 * outside.nominal).toBeCloseTo(9.5 + (36 * 0.7 * 0.8 * 450 * phi * 0.6) / (206 * 20), 0)
    expect(1000 * bore.nominal).toBeLessThan(9.5)
  })
  it('goes on over 0.70 mm of mid depth, where the wall does too', () => {
    const [one, two] = [growthFor(SLEEVE, SHOP, 0.69), growthFor(SLEEVE, SHOP, 0.71)]
    expect(two.outside.nominal - one.outside.nominal).toBeGreaterThan(0.0005)
    expect(band('seat', two).wallMoves.nominal / band('seat', one).wallMoves.nominal).toBeCloseTo(0.71 / 0.69, 3)
  })
})

function at(index: number) {
  const found = SLEEVE.outside[index]
  if (!found) throw new Error('no such band')
  return found
}

describe('a groove', () => {
  const grooved = (width: number, diameter: number) => {
    const [flange, seat] = [at(0), at(1)]
    const end = (nominal: number) => ({ ...seat.to, nominal })
    return {
      ...SLEEVE,
      outside: [
        flange,
        { ...seat, name: 'upper seat', to: end(40) },
        { ...seat, name: 'groove', from: 40, to: end(40 + width), size: { ...seat.size, nominal: diameter } },
        { ...seat, from: 40 + width },
      ],
    }
  }
  const whole = growthFor(SLEEVE, SHOP, 0.3)
  const cut = growthFor(grooved(2.4, 57.4), SHOP, 0.3)
  it('changes the growth of its own band, and of its neighbours by no more than a micrometre', () => {
    expect(1000 * Math.abs(cut.outside.nominal - whole.outside.nominal)).toBeLessThan(0.3)
    expect(1000 * Math.abs(cut.outside.most - whole.outside.most)).toBeLessThan(1)
    expect(1000 * Math.abs(cut.bore.nominal - whole.bore.nominal)).toBeLessThan(0.3)
    expect(band('groove', cut).wallMoves.nominal).toBeGreaterThan(band('seat', cut).wallMoves.nominal)
  })
  it('of any depth and of a width under 3 mm moves the bore by less than a micrometre more', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 2.9, noNaN: true }),
        fc.double({ min: 56, max: 59.8, noNaN: true }),
        (width, diameter) => {
          const found = growthFor(grooved(width, diameter), SHOP, 0.3)
          expect(1000 * Math.abs(found.bore.nominal - whole.bore.nominal)).toBeLessThan(1)
        },
      ),
      { numRuns: 30 },
    )
  })
})

describe('a masked side', () => {
  it('takes no case, but moves as the wall does, and its ends close or open', () => {
    const { outside, bore } = growthFor(hardenedBy({ masked: ['bore'] }), SHOP, 0.3)
    expect(1000 * bore.nominal).toBeCloseTo(-1000 * wallMoves(450, 0.3), 0)
    expect(1000 * outside.nominal).toBeCloseTo(9.5 + 1000 * wallMoves(450, 0.3), 0)
    // Ends close where the outside alone is treated: there the wall moves in.
    expect(bore.most).toBeGreaterThan(-wallMoves(350, 0.3))
  })
  it('is known by its own name too', () => {
    const { outside } = growthFor(hardenedBy({ masked: ['seat'] }), SHOP, 0.3)
    expect(outside.nominal).toBeLessThan(0.003)
  })
})

describe('growth that the works measured', () => {
  it('overrides the handbook, and says so', () => {
    const { outside, bore, workings } = growthFor(SLEEVE, measured({ growth: GROWTH }), 0.3)
    expect(outside).toMatchObject(GROWTH)
    expect(bore).toMatchObject(GROWTH)
    expect(workings.map(({ source }) => source)).toContain('shop: measured on 24 pieces, 2026-09-01')
  })
  it('is left alone on another grade, another process, or without a growth', () => {
    for (const row of [
      { grade: '31CrMoV9', growth: GROWTH },
      { process: 'case-harden' as const, growth: GROWTH },
      { ovality: 0.02 },
    ]) {
      expect(growthFor(SLEEVE, measured(row), 0.3).outside).toEqual(growthFor(SLEEVE, SHOP, 0.3).outside)
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
    expect(growthFor(SLEEVE, shop, 0.3).outside).toMatchObject(GROWTH)
  })
})

describe('quenched parts', () => {
  // Common practice/estimate, no source: sleeve in oil, length +0.06 ±0.10 %, outside and bore +0.08 ±0.10 %.
  it('a carburised sleeve may go either way, outside and bore alike, and grows by its length', () => {
    const growth = growthFor(hardenedBy({ process: 'carburising', quench: 'free' }), SHOP, 0.7)
    const { outside, bore, face, along } = growth
    expectDigits(2 * outside.most, '0.108')
    expectDigits(2 * outside.least, '-0.012')
    expectDigits(2 * bore.most, '0.010')
    expectDigits(2 * bore.least, '-0.094')
    expect(face).toMatchObject({ least: 0, nominal: 0, most: 0 })
    expect([along.least, along.nominal, along.most].map(share => share.toFixed(6))).toEqual([
      '-0.000400',
      '0.000600',
      '0.001600',
    ])
  })
  it('moves a masked surface with the rest of it', () => {
    const growth = growthFor(hardenedBy({ process: 'carburising', masked: ['bore'] }), SHOP, 0.7)
    expectDigits(2 * growth.bore.nominal, '-0.042')
  })
  // Common practice/estimate, no source: outside +0.03 to +0.10 %, a bore hardened inside -0.02 to -0.10 %.
  it('an induction-hardened ring gets larger outside, and smaller in a bore that is hardened', () => {
    const both = growthFor(hardenedBy({ process: 'induction hardening' }), SHOP, 1)
    expect([2 * both.outside.least, 2 * both.outside.most].map(value => value.toFixed(3))).toEqual(['0.018', '0.060'])
    expect([2 * both.bore.least, 2 * both.bore.most].map(value => value.toFixed(3))).toEqual(['0.010', '0.052'])
    expect(growthFor(hardenedBy({ process: 'induction hardening', masked: ['bore'] }), SHOP, 1).bore.most).toBeLessThan(
      0,
    )
  })
})

describe('always', () => {
  it('least, nominal and most are in order; deeper grows more outside; an unhardened part does not grow', () => {
    const holds = fc.property(fc.double({ min: 0.1, max: 0.6, noNaN: true }), depth => {
      const shallow = growthFor(SLEEVE, SHOP, { least: depth, most: depth + 0.1 })
      const deeper = growthFor(SLEEVE, SHOP, { least: depth + 0.05, most: depth + 0.15 })
      for (const side of [shallow.outside, shallow.bore]) {
        expect(side.least).toBeLessThan(side.nominal)
        expect(side.nominal).toBeLessThan(side.most)
      }
      expect(deeper.outside.nominal).toBeGreaterThan(shallow.outside.nominal)
    })
    fc.assert(holds)
    const { hardening: _none, ...soft } = SLEEVE
    expect(growthFor(soft, SHOP, 0.3).outside).toMatchObject({ least: 0, nominal: 0, most: 0 })
  })
})
