import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  bendingStress,
  breakageMargin,
  endMillDeflection,
  fluteDiameter,
} from '../../src/handbook/end-mill-strength.ts'
import { type MillingCut, peakMillingForce } from '../../src/handbook/milling-force.ts'
import { expectFigures } from './four-figures.ts'

const SLOT: MillingCut = {
  kc11: 1775,
  mc: 0.24,
  feedPerTooth: 0.01,
  teeth: 4,
  diameter: 2,
  axialDepth: 0.2,
  radialDepth: 2,
  helix: 0,
  radialShare: 0.5,
}
const SIDE: MillingCut = {
  ...SLOT,
  kc11: 1725 * 1.3,
  feedPerTooth: 0.02 / 0.6,
  diameter: 4,
  axialDepth: 4,
  radialDepth: 0.4,
}

describe('peak force across an end mill (derived: summed numerically over a revolution; forces after Kienzle)', () => {
  it('2 mm slot, annealed: 13.03 N sharp, 16.93 worn', () => {
    expectFigures(peakMillingForce(SLOT), 13.03)
    expectFigures(peakMillingForce({ ...SLOT, kc11: 1.3 * 1775 }), 16.93)
  })

  it('2 mm slot, 30 HRC: 10.68 N sharp, 13.89 worn, 6.945 at half the depth', () => {
    const hard = { ...SLOT, kc11: 1725, feedPerTooth: 0.008 }
    expectFigures(peakMillingForce(hard), 10.68)
    expectFigures(1.3 * peakMillingForce(hard), 13.89)
    expectFigures(1.3 * peakMillingForce({ ...hard, axialDepth: 0.1 }), 6.945)
  })

  it('4 mm side cut: 512.9 N with straight flutes, 136.0 with a helix of 35 deg', () => {
    expectFigures(peakMillingForce(SIDE), 512.9)
    expectFigures(peakMillingForce({ ...SIDE, helix: 35 }), 136)
  })

  it('finishing a window of 3.3 mm in two levels: 26.52 N', () => {
    const finishing = { ...SLOT, kc11: 1.3 * 1775, feedPerTooth: 0.009 / 0.43589, axialDepth: 1.65, radialDepth: 0.1 }
    expectFigures(peakMillingForce({ ...finishing, helix: 35 }), 26.52)
  })
})

/** The same sum the long way: 2000 slices of the flute, 400 positions of the cutter. */
function summedSlices(cut: MillingCut): number {
  const engaged = Math.acos(1 - (2 * cut.radialDepth) / cut.diameter)
  const slices = 2000
  let greatest = 0
  for (let turn = 0; turn < 400; turn++) {
    let [x, y] = [0, 0]
    for (let tooth = 0; tooth < cut.teeth; tooth++) {
      for (let slice = 0; slice < slices; slice++) {
        const a = ((slice + 0.5) / slices) * cut.axialDepth
        const lag = (2 * a * Math.tan((cut.helix * Math.PI) / 180)) / cut.diameter
        const angle = ((turn / 400 + tooth / cut.teeth) * 2 * Math.PI - lag + 20 * Math.PI) % (2 * Math.PI)
        if (angle > engaged) continue
        const h = cut.feedPerTooth * Math.sin(angle)
        const t = cut.kc11 * h ** (1 - cut.mc) * (cut.axialDepth / slices)
        const r = cut.radialShare * t
        x += t * Math.cos(angle) + r * Math.sin(angle)
        y += t * Math.sin(angle) - r * Math.cos(angle)
      }
    }
    greatest = Math.max(greatest, Math.hypot(x, y))
  }
  return greatest
}

describe('peak force against a sum of thin slices', () => {
  it.each([
    ['deep slot', { ...SLOT, axialDepth: 2, helix: 30 }],
    ['side cut', { ...SIDE, helix: 35 }],
    ['two teeth, half immersed', { ...SLOT, teeth: 2, radialDepth: 1, axialDepth: 1, helix: 40 }],
  ])('%s agrees within 0.3 %%', (_, cut) => {
    expect(peakMillingForce(cut) / summedSlices(cut)).toBeGreaterThan(0.997)
    expect(peakMillingForce(cut) / summedSlices(cut)).toBeLessThan(1.003)
  })

  it('goes with the material, and with the feed to the power 1 - mc', () => {
    const cuts = fc.record({
      axialDepth: fc.double({ min: 0.05, max: 4, noNaN: true }),
      radialDepth: fc.double({ min: 0.02, max: 2, noNaN: true }),
      helix: fc.constantFrom(0, 30, 45),
    })
    fc.assert(
      fc.property(cuts, fc.double({ min: 0.2, max: 3, noNaN: true }), (changes, factor) => {
        const cut = { ...SLOT, ...changes }
        const once = peakMillingForce(cut)
        expect(peakMillingForce({ ...cut, kc11: factor * cut.kc11 }) / once).toBeCloseTo(factor, 9)
        const fed = peakMillingForce({ ...cut, feedPerTooth: factor * cut.feedPerTooth })
        expect(fed / once).toBeCloseTo(factor ** 0.76, 9)
      }),
    )
  })
})

describe('end mill as a stepped cantilever (derived: beam theory, worked by hand)', () => {
  const cutter = { E: 580_000, l1: 6, d1: fluteDiameter.value({ D: 2 }), L: 20, d2: 6 }
  const bend = (F: number, l1 = 6, L = 20): number => endMillDeflection.value({ ...cutter, F, l1, L })
  const stress = (F: number, l1 = 6): number => bendingStress.value({ F, l1, d1: cutter.d1 })

  it('2 mm under 16.93 N', () => {
    expectFigures(bend(16.93), 7.724)
    expectFigures(stress(16.93), 252.6)
    expectFigures(breakageMargin.value({ sigma: stress(16.93) }), 4.75)
    expectFigures(bend(16.93, 4, 18), 2.818)
    expectFigures(stress(16.93, 4), 168.4)
    expectFigures(bend(16.93, 8, 22), 17.04)
    expectFigures(stress(16.93, 8), 336.8)
  })

  it('with 10 µm of runout', () => {
    const F = 16.93 * 1.501
    expectFigures(bend(F), 11.59)
    expectFigures(stress(F), 379.2)
    expectFigures(breakageMargin.value({ sigma: stress(F) }), 3.165)
  })

  it('finishing under 26.52 N', () => {
    expectFigures(bend(26.52), 12.1)
    expectFigures(stress(26.52), 395.7)
    expectFigures(breakageMargin.value({ sigma: stress(26.52) }), 3.033)
  })

  it('4 mm under 136 N, at the tip and 1.165 mm above it', () => {
    const thick = { F: 136.03, E: 580_000, d1: fluteDiameter.value({ D: 4 }), d2: 6 }
    expectFigures(endMillDeflection.value({ ...thick, l1: 11, L: 30 }), 51.76)
    expectFigures(bendingStress.value({ F: thick.F, l1: 11, d1: thick.d1 }), 465.1)
    expectFigures(endMillDeflection.value({ ...thick, l1: 11 - 1.165, L: 30 - 1.165 }), 42.74)
  })

  it('is far stiffer than a plain rod of the tip, 117.1 µm under 20 N', () => {
    expectFigures(endMillDeflection.value({ F: 20, E: 580_000, l1: 20, d1: 2, L: 20, d2: 2 }), 117.1)
  })
})
