import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cutLife, cuttersNeeded } from '../../src/handbook/cutter-life.ts'
import {
  feedForChip,
  insideCornerFeed,
  meanChip,
  millingFeed,
  millingPower,
  runoutChip,
  runoutForce,
} from '../../src/handbook/end-milling.ts'
import { helixFeed, helixPath } from '../../src/handbook/helical-entry.ts'
import { specificCuttingForce } from '../../src/handbook/kienzle.ts'
import { spindleSpeed } from '../../src/handbook/turning.ts'
import { expectFigures } from './four-figures.ts'
import { meanChipShareNearly, SHOULDER_FACTORS, windowPath } from './second-models/end-milling.ts'

describe('engagement of an end mill (derived: geometry, worked by hand)', () => {
  it.each([
    [0.02, 0.1409, 0.1414, 3.571],
    [0.05, 0.2217, 0.2236, 2.294],
    [0.1, 0.3108, 0.3162, 1.667],
    [0.15, 0.3772, 0.3873, 1.4],
    [0.2, 0.4314, 0.4472, 1.25],
    [0.25, 0.4775, 0.5, 1.155],
    [0.3, 0.5176, 0.5477, 1.091],
    [0.4, 0.5842, 0.6325, 1.021],
    [0.5, 0.6366, Math.SQRT1_2, 1],
  ])('ae/D %d', (r, mean, nearly, multiplier) => {
    expectFigures(meanChip.value({ fz: 1, r }), mean)
    expectFigures(meanChipShareNearly.value({ r }), nearly)
    expectFigures(feedForChip.value({ hmax: 1, r }), multiplier)
  })

  it('a slot has a mean chip of 2/pi of the feed', () => {
    expectFigures(meanChip.value({ fz: 1, r: 1 }), 0.6366)
  })

  it('gives the feed multipliers that a maker prints (Dormer Pramet milling 2021-22, pp. 114-115) to their digits', () => {
    for (const { engagement, feed } of SHOULDER_FACTORS) {
      const unit = Number.isInteger(feed * 10) ? 0.05 : 0.005
      expect(Math.abs(feedForChip.value({ hmax: 1, r: engagement }) - feed)).toBeLessThanOrEqual(unit)
    }
  })

  it('keeps the mean under the thickest chip', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 0.5, noNaN: true }), r => {
        expect(meanChip.value({ fz: 1, r })).toBeLessThan(1 / feedForChip.value({ hmax: 1, r }))
      }),
    )
  })
})

describe('feeds and powers of small cutters (derived: worked by hand)', () => {
  it('4 mm, four teeth, 0.4 mm off the side, chip of 0.020 at 80 m/min', () => {
    const fz = feedForChip.value({ hmax: 0.02, r: 0.1 })
    const n = spindleSpeed.value({ vc: 80, D: 4 })
    expectFigures(fz, 0.03333)
    expectFigures(meanChip.value({ fz, r: 0.1 }), 0.01036)
    expectFigures(n, 6366)
    expectFigures(millingFeed.value({ fz, z: 4, n }), 848.8)
    const kc = specificCuttingForce.value({ kc11: 1725, mc: 0.24, h: meanChip.value({ fz, r: 0.1 }), K: 1.3 })
    expectFigures(kc, 6715)
    expectFigures(1000 * millingPower.value({ ap: 4, ae: 0.4, vf: millingFeed.value({ fz, z: 4, n }), kc }), 152)
  })

  // Mean force of a tooth, and of the two of four that half a turn has in the cut.
  it.each([
    ['annealed', 1775, 12_000, 0.01, 480, 0.006366, 5974, 7.606, 15.21],
    ['tempered, 300 HB', 1725, 9549.3, 0.008, 305.6, 0.005093, 6125, 6.239, 12.48],
  ])('a 2 mm slot 0.2 deep, %s', (_, kc11, n, fz, feed, chip, specific, tooth, all) => {
    const hm = meanChip.value({ fz, r: 1 })
    const kc = specificCuttingForce.value({ kc11, mc: 0.24, h: hm, K: 1 })
    expectFigures(millingFeed.value({ fz, z: 4, n }), feed)
    expectFigures(hm, chip)
    expectFigures(kc, specific)
    expectFigures(kc * 0.2 * hm, tooth)
    expectFigures(kc * 0.2 * hm * 2, all)
  })

  it('takes 19.12 W in the annealed slot', () => {
    const kc = specificCuttingForce.value({ kc11: 1775, mc: 0.24, h: meanChip.value({ fz: 0.01, r: 1 }), K: 1 })
    expectFigures(1e3 * millingPower.value({ ap: 0.2, ae: 2, vf: 480, kc }), 19.12)
    expectFigures(1e3 * millingPower.value({ ap: 0.2, ae: 2, vf: 480, kc: 1.3 * kc }), 24.85)
  })

  it.each([
    [0.003, 0.01212, 1.157],
    [0.005, 0.01354, 1.259],
    [0.01, 0.01707, 1.501],
    [0.015, 0.02061, 1.732],
  ])('runout of %d mm, four teeth, 0.010 a tooth', (t, chip, force) => {
    const Delta = runoutChip.value({ t, z: 4 })
    expectFigures(0.01 + Delta, chip)
    expectFigures(runoutForce.value({ Delta, fz: 0.01, mc: 0.24 }), force)
  })
})

describe('a window of 10 by 8 with corners of 1.5 in a 3 mm wall, 2 mm cutter (derived: worked by hand)', () => {
  const U = windowPath.value({ W: 10, H: 8, R: 1.5, D: 2 })
  const inset = windowPath.value({ W: 9.8, H: 7.8, R: 1.4, D: 2 })

  it('has its paths', () => {
    expectFigures(U, 27.14)
    expectFigures(inset, 26.51)
  })

  it.each([
    ['annealed', 0.01, 480, 0.2, 17, 450.7, 0.939, 0.02065, 991.1, 330.4, 0.06745, 0.505],
    ['30 HRC', 0.008, 305.58, 0.15, 22, 583.3, 1.909, 0.01652, 630.9, 210.3, 0.106, 0.6376],
  ])('%s', (_, fz, vf, ap, passes, rough, roughTime, finishFeed, finishVf, corner, finishTime, metres) => {
    expect(Math.ceil(3.3 / ap - 1e-9)).toBe(passes)
    expectFigures(passes * inset, rough)
    expectFigures((passes * inset) / vf, roughTime)
    const thinned = feedForChip.value({ hmax: 0.9 * fz, r: 0.05 })
    const feed = (vf / fz) * thinned
    const slow = insideCornerFeed.value({ vf: feed, R: 1.5, rc: 1 })
    expectFigures(thinned, finishFeed)
    expectFigures(feed, finishVf)
    expectFigures(slow, corner)
    expectFigures(2 * (24 / feed + Math.PI / slow), finishTime)
    expectFigures((passes * inset + 2 * U) / 1000, metres)
  })

  it('wears out 12 cutters for 24 liners annealed and 29 at 30 HRC, a quarter over (lives: common practice, no source)', () => {
    expect(cuttersNeeded.value({ N: 24, n_w: (6 * 0.505) / cutLife.value({ life2: 8, D: 2 }) })).toBe(12)
    expect(cuttersNeeded.value({ N: 24, n_w: (6 * 0.6376) / cutLife.value({ life2: 4, D: 2 }) })).toBe(29)
  })

  it('does not buy one more for a whole quotient', () => {
    expect(cuttersNeeded.value({ N: 1, n_w: 8.8 / 1.1 })).toBe(10)
  })
})

describe('winding a 2 mm cutter down a 3 mm hole, 3.3 deep at 2 deg (derived: worked by hand)', () => {
  it('takes 30 turns and 1.182 min', () => {
    const pitch = Math.PI * Math.tan(Math.PI / 90)
    const path = helixPath.value({ a: 3.3, epsilon: 2 })
    const feed = helixFeed.value({ vf: 240, Dh: 3, D: 2 })
    expectFigures(pitch, 0.1097)
    expectFigures(3.3 / pitch, 30.08)
    expectFigures(path, 94.56)
    expectFigures(feed, 80)
    expectFigures(path / feed, 1.182)
  })
})
