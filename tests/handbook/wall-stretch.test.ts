import fc from 'fast-check'
import { all, create } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { CASE_STRESSES, caseStressOf } from '../../src/handbook/case-stress.ts'
import { gamma, lowerGammaShare } from '../../src/handbook/gamma-function.ts'
import { MATERIALS } from '../../src/handbook/material-rows.ts'
import {
  bandStretch,
  coreTension,
  profileFactor,
  releasedShare,
  releaseFlare,
  releaseMove,
  wallMove,
} from '../../src/handbook/wall-stretch.ts'

const math = create(all ?? {}, {})
const STEEL = { nu: 0.3, E: 206_000 }
const SHAPE = 1.7

/** Derived, by two routes: closed form, and quadrature of the hardness curve. Compared within 0.1 %. */
const within = (value: number, expected: number, share = 1e-3) =>
  expect(Math.abs(value / expected - 1)).toBeLessThan(share)

describe('mean stress over that at the surface (derived: area under the hardness curve to the depth)', () => {
  it.each([
    [650, 320, 0.614123],
    [800, 340, 0.558263],
    [950, 300, 0.512683],
    [680, 330, 0.603131],
    [520, 260, 0.664905],
    [820, 330, 0.54912],
    [380, 200, 0.771317],
  ])('%d over %d HV', (H_s, H_c, phi) => within(profileFactor.value({ H_s, H_c, n: SHAPE }), phi, 2e-6))

  it.each([
    [1, 0.529922],
    [2, 0.645136],
  ])('650 over 320 HV by shape %d', (n, phi) => within(profileFactor.value({ H_s: 650, H_c: 320, n }), phi, 2e-6))

  it('is the area of the stretched exponential, summed in small steps', () => {
    const [dH, n] = [330, SHAPE]
    const w = 1 / Math.log(dH / 50) ** (1 / n)
    const steps = 200_000
    const sum = Array.from({ length: steps }, (_, i) => Math.exp(-(((i + 0.5) * (20 / steps)) ** n) / w ** n))
    within(profileFactor.value({ H_s: 650, H_c: 320, n }), (sum.reduce((a, b) => a + b, 0) * 20) / steps, 1e-6)
  })

  it('is refused where the case is hardly harder than the core', () =>
    expect(() => profileFactor.value({ H_s: 350, H_c: 300, n: SHAPE })).toThrow('50 HV'))
})

describe('share of the force that a removal takes (derived: area under the hardness curve down to the removal)', () => {
  it.each([
    [0.3, 0.05, 650, 320, 1.7, 0.262614],
    [0.3, 0.1, 650, 320, 1.7, 0.489068],
    [0.4, 0.1, 650, 320, 1.7, 0.381548],
    [0.5, 0.1, 650, 320, 1.7, 0.31145],
    [0.3, 0.1, 650, 320, 1, 0.466888],
    [0.3, 0.1, 650, 320, 2, 0.482738],
    [0.4, 0.06, 800, 340, 1.7, 0.260145],
    [0.35, 0.06, 950, 300, 1.7, 0.319133],
  ])('%d mm deep, %d mm off, %d over %d HV, shape %d', (N, s, H_s, H_c, n, share) =>
    within(releasedShare({ s, N, H_s, H_c, n }), share, 4e-6),
  )

  it('is nothing for nothing off, and all for all', () => {
    expect(releasedShare({ s: 0, N: 0.3, H_s: 650, H_c: 320, n: SHAPE })).toBe(0)
    expect(releasedShare({ s: 9, N: 0.3, H_s: 650, H_c: 320, n: SHAPE })).toBeCloseTo(1, 9)
  })
})

describe('stretch of a wall by its case (derived: equilibrium, mean strain is mean eigenstrain)', () => {
  it.each([
    [300, 3, 0.6, 2.03883e-4],
    [300, 4, 0.6, 1.52913e-4],
    [300, 4, 1.0, 2.54854e-4],
    [300, 8, 0.6, 7.64563e-5],
    [276.3, 3.5, 0.8, 2.14602e-4],
    [276.3, 3.5, 1.0, 2.68252e-4],
    [276.3, 3.5, 1.4, 3.75553e-4],
    [450, 2, 1.3, 9.93932e-4],
    [450, 10, 0.8, 1.2233e-4],
    [276.3, 2, 0.5, 2.34721e-4],
  ])('%d MPa, wall %d, %d mm of case on both sides', (s_0, t, h, epsilon) =>
    within(bandStretch.value({ ...STEEL, s_0, h_o: h / 2, h_i: h / 2, t }), epsilon, 4e-6),
  )

  it.each([
    [300, 3, 0.6, 28.5, 11.621],
    [276.3, 3.5, 1.4, 22.25, 16.712],
    [450, 2, 1.3, 19, 37.769],
  ])('%d MPa, wall %d, %d mm of case: a radius of %d gives %d µm on diameter', (s_0, t, h, R, diameter) => {
    const epsilon = bandStretch.value({ ...STEEL, s_0, h_o: h / 2, h_i: h / 2, t })
    within(2000 * wallMove.value({ R, epsilon }), diameter, 4e-5)
  })

  it('does not stop at a deep case: every depth that is ordered, up to 1.25 mm', () => {
    const at = (h: number) => bandStretch.value({ ...STEEL, s_0: 276, h_o: h, h_i: h, t: 10 })
    expect(at(1.2) / at(0.6)).toBeCloseTo(2, 12)
    expect(() => at(1.3)).toThrow('h_o')
  })

  it('balances the case: what the core bears over the wall is what the layers bear over theirs', () => {
    const given = { s_0: 276.3, h_o: 0.7, h_i: 0.7, t: 3.5 }
    const tension = coreTension.value(given)
    expect(tension).toBeCloseTo(110.52, 2)
    const left = given.s_0 - tension
    expect(left).toBeCloseTo(165.78, 2)
    expect(tension * (given.t - 1.4)).toBeCloseTo(left * 1.4, 6)
  })
})

describe('release when the outside of a tube 54/60 is ground (derived; finite elements 1.14 µm for the first)', () => {
  it.each([
    [0.3, 0.1, 82.907, 35.02, -1.1674, 1.683],
    [0.4, 0.06, 110.54, 21.845, -0.7188, 1.0125],
  ])('%d mm deep, %d off', (N, s, F, F_x, dw, end) => {
    const phi = profileFactor.value({ H_s: 650, H_c: 320, n: SHAPE })
    const force = 450 * phi * N
    within(force, F, 4e-5)
    const gone = releasedShare({ s, N, H_s: 650, H_c: 320, n: SHAPE })
    const net = force * gone - s * ((2 * force) / 3)
    within(net, F_x, 1e-4)
    const left = { ...STEEL, F_x: net, R: 28.5 - s / 2 }
    within(1000 * releaseMove.value({ ...left, t: 3 - s }), dw, 2e-4)
    within(
      1000 * (releaseMove.value({ ...left, t: 3 - s }) + releaseFlare.value({ ...left, t: 3, t_left: 3 - s })),
      end,
      4e-4,
    )
  })
})

describe('gamma functions against a general maths library', () => {
  it('of numbers from 0.1 to 20', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 20, noNaN: true }), x => {
        within(gamma(x), Number(math.gamma(x)), 1e-10)
      }),
    ))

  it('of a share below: the normal distribution, as the library has its error function', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 4, noNaN: true }), x => {
        expect(lowerGammaShare(0.5, x * x)).toBeCloseTo(Number(math.erf(x)), 9)
      }),
    ))
})

describe('stress rows', () => {
  it('are in order, no grade twice, and every steel that can be named has one', () => {
    const grades = CASE_STRESSES.flatMap(row => row.grades)
    expect(new Set(grades).size).toBe(grades.length)
    for (const { least, usual, most, surface, core } of CASE_STRESSES) {
      expect(least).toBeLessThan(usual)
      expect(usual).toBeLessThan(most)
      expect(surface - core).toBeGreaterThan(100)
    }
    for (const { grade } of MATERIALS) expect(caseStressOf(grade)).toBeDefined()
  })
})
