import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  arcFactor,
  inwardAtJaw,
  loadedLength,
  lobing,
  outwardBetweenJaws,
} from '../../src/handbook/chuck-distortion.ts'
import { momentOfCut, slipForce } from '../../src/handbook/holding.ts'
import { jawPull } from '../../src/handbook/jaws-at-speed.ts'
import { MOUTH_FACTOR } from './second-models/chuck-distortion.ts'

const STEEL = 210_000
/** Bore 50, wall 3, length 80: F·R³/(E·I) is 0.4923 mm at 1000 N. */
const LINER = { R: 26.5, t: 3, b: 80, E: STEEL }
const lobes = (F: number, N: number, b = LINER.b): number => {
  const given = { ...LINER, F, N, b }
  return lobing.value({ delta_L: inwardAtJaw.value(given), delta_M: outwardBetweenJaws.value(given), k: 1 })
}

describe('thin ring under N equal loads (derived: closed form, Fourier series and a beam-element ring agree)', () => {
  // Coefficients of F·R³/(E·I). N = 2 are the classical 0.149 / 2 and 0.137 / 2 of ring handbooks.
  it.each([
    [2, 0.07439, 0.06831, 105.4],
    [3, 0.01594, 0.01426, 14.87],
    [4, 0.006079, 0.005386, 4.234],
    [6, 0.001682, 0.00148, 0.778],
    [8, 0.000693, 0.000608, 0.24],
    [12, 0.000202, 0.000177, 0.047],
  ])('%d jaws: %d inward, %d outward, %d µm for 3000 N in all', (N, inward, outward, together) => {
    // I = b·t³/12 = 1 with b = 12, t = 1; F·R³/(E·I) = 1.
    const unit = { F: 1, R: 1, t: 1, b: 12, E: 1, N }
    const digits = (published: number) => (published < 0.001 ? 6 : published < 0.01 ? 6 : 5)
    expect(inwardAtJaw.value(unit)).toBeCloseTo(inward, digits(inward))
    expect(outwardBetweenJaws.value(unit)).toBeCloseTo(outward, digits(outward))
    const places = String(together).split('.')[1]?.length ?? 0
    expect(Math.abs(1000 * lobes(3000 / N, N) - together)).toBeLessThanOrEqual(0.5 * 10 ** -places)
  })

  it('adds up to the Fourier series of the same ring', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 12 }), N => {
        let sum = 0
        for (let n = N; n <= 20_000 * N; n += 2 * N) sum += (2 * N) / (Math.PI * (n ** 2 - 1) ** 2)
        const unit = { F: 1, R: 1, t: 1, b: 12, E: 1, N }
        expect(inwardAtJaw.value(unit) + outwardBetweenJaws.value(unit)).toBeCloseTo(sum, 9)
      }),
      { numRuns: 11 },
    )
  })

  it.each([
    [300, 4.46],
    [500, 7.433],
    [1000, 14.87],
    [2000, 29.73],
  ])('scales with the force: %d N gives %d µm', (F, expected) => {
    expect(Math.abs(1000 * lobes(F, 3) - expected)).toBeLessThan(0.005)
  })

  it.each([
    [2, 134.5],
    [3, 201.8],
    [5, 336.3],
  ])('leaves %d µm at %d N a jaw', (budget, force) => {
    expect((budget / (1000 * lobes(1, 3))).toFixed(1)).toBe(force.toFixed(1))
  })

  it('grows as the cube of what the wall loses', () => {
    const thinner = { ...LINER, F: 1000, N: 3, t: 2 }
    const ratio = inwardAtJaw.value(thinner) / inwardAtJaw.value({ ...thinner, t: 3 })
    expect(ratio).toBeCloseTo((3 / 2) ** 3, 9)
  })
})

describe('jaws on one end of a long liner', () => {
  const grip = (l_j: number) => 1000 * lobes(1000, 3, loadedLength.value({ l_j, R: LINER.R, L: LINER.b }))

  it('gives 37.9 µm in the middle of 20 mm jaws, within the fit of the thin-shell solution, 37.6', () => {
    expect(grip(20).toFixed(1)).toBe('37.9')
    expect(Math.abs(grip(20) - 37.6) / 37.6).toBeLessThan(0.05)
  })

  it('meets the thin-shell solution of 30 mm jaws, 28.8 µm, and both at the mouth, 49.4 and 39.0', () => {
    expect(Math.abs(grip(30) - 28.8) / 28.8).toBeLessThan(0.05)
    expect(Math.abs(MOUTH_FACTOR * grip(20) - 49.4) / 49.4).toBeLessThan(0.05)
    expect(Math.abs(MOUTH_FACTOR * grip(30) - 39) / 39).toBeLessThan(0.05)
  })

  it('never loads more than the length', () => {
    expect(loadedLength.value({ l_j: 70, R: 30, L: 80 })).toBe(80)
  })
})

describe('wide jaws (derived: Fourier series)', () => {
  it.each([
    [15, 0.971],
    [30, 0.893],
    [45, 0.774],
    [60, 0.627],
    [75, 0.464],
    [90, 0.298],
    [100, 0.19],
    [110, 0.09],
    [118, 0.017],
  ])('%d° leaves %d of the lobes', (arc, factor) => {
    // The table was rounded by way of four places: 0.89248 and 0.29749 stand in it as 0.893 and 0.298.
    const fourPlaces = Number(arcFactor.value({ arc }).toFixed(4))
    expect((Math.round(1000 * fourPlaces) / 1000).toFixed(3)).toBe(factor.toFixed(3))
  })
})

describe('force of the jaws (derived)', () => {
  const jawForce = ({ F_c, d_c, d_g, mu, F_f }: { F_c: number; d_c: number; d_g: number; mu: number; F_f: number }) =>
    slipForce.value({ S: 2, M: momentOfCut.value({ F_c, d_c }), T: F_f, mu, mu_a: mu, d_g }) / 3

  it('holds a finish cut with 198.4 N, which leaves 2.95 µm, 7.5 with a short grip', () => {
    const F = jawForce({ F_c: 50, d_c: 50, d_g: 56, F_f: 0, mu: 0.15 })
    expect(F.toFixed(1)).toBe('198.4')
    expect((1000 * lobes(F, 3)).toFixed(2)).toBe('2.95')
    expect((1000 * lobes(F, 3, loadedLength.value({ l_j: 20, R: 26.5, L: 80 }))).toFixed(1)).toBe('7.5')
  })

  it('holds a rough cut with 2129 N, with its feed force 2396 N', () => {
    const cut = { F_c: 660, d_c: 60, d_g: 62, mu: 0.2 }
    expect(jawForce({ ...cut, F_f: 0 }).toFixed(0)).toBe('2129')
    expect(jawForce({ ...cut, F_f: 330 }).toFixed(0)).toBe('2396')
  })

  it('loses 1316 N to a jaw of half a kilogram at 2000 rpm', () => {
    expect(jawPull.value({ m: 0.5, r: 60, n: 2000 }).toFixed(0)).toBe('1316')
    expect(jawPull.value({ m: 0.5, r: 60, n: 0 })).toBe(0)
  })
})
