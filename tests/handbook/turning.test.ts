import { describe, expect, it } from 'vitest'
import {
  chipThickness,
  chipWidth,
  cuttingForce,
  cuttingPower,
  specificCuttingForce,
} from '../../src/handbook/kienzle.ts'
import {
  cuttingSpeed,
  facingTime,
  feedForRoughness,
  ridgeHeightOfRa,
  spindleSpeed,
  turningTime,
} from '../../src/handbook/turning.ts'
import { expectFigures } from './four-figures.ts'

describe('spindle speed and roughness (formulas: Kyocera catalogues 2016 to 2022; figures derived, worked by hand)', () => {
  it('turns a 65 mm bar at 160 m/min and a 2 mm cutter at 100', () => {
    expectFigures(spindleSpeed.value({ vc: 160, D: 65 }), 783.5)
    expectFigures(spindleSpeed.value({ vc: 100, D: 2 }), 15_920)
  })

  it.each([
    [60, [19_100, 12_730, 9549, 6366, 4775, 3183]],
    [100, [31_830, 21_220, 15_920, 10_610, 7958, 5305]],
  ])('turns cutters of 1, 1.5, 2, 3, 4 and 6 mm at %d m/min', (vc, printed) => {
    for (const [i, D] of [1, 1.5, 2, 3, 4, 6].entries()) expectFigures(spindleSpeed.value({ vc, D }), printed[i] ?? 0)
  })

  it('says what a 2 mm cutter reaches on slower spindles', () => {
    const reached = [37.7, 50.27, 62.83, 75.4, 94.25, 150.8]
    for (const [i, n] of [6000, 8000, 10_000, 12_000, 15_000, 24_000].entries()) {
      expectFigures(cuttingSpeed.value({ n, D: 2 }), reached[i] ?? 0)
    }
  })

  it('leaves ridges of 3.125 and 9.766 µm', () => {
    expectFigures(feedForRoughness.value({ Rz: 3.125, r: 0.4 }), 0.1)
    expectFigures(feedForRoughness.value({ Rz: 9.765625, r: 0.8 }), 0.25)
  })

  it('takes Ra of a ridge as the mean deviation of a parabola, by adding up a thousand heights', () => {
    const heights = Array.from({ length: 1000 }, (_, i) => ((i + 0.5) / 1000) ** 2)
    const mean = heights.reduce((sum, y) => sum + y, 0) / heights.length
    const Ra = heights.reduce((sum, y) => sum + Math.abs(y - mean), 0) / heights.length
    expect(ridgeHeightOfRa.value({ Ra })).toBeCloseTo(1, 5)
  })
})

describe('facing and parting at constant cutting speed (derived: worked by hand)', () => {
  it('faces 65 to 50 mm in 0.04234 min and 65 to the centre, not over 3000 rpm, in 0.1108 min', () => {
    expectFigures(facingTime.value({ Do: 65, Di: 50, vc: 160, f: 0.2, n: 3000 }), 0.04234)
    expectFigures(facingTime.value({ Do: 65, Di: 0, vc: 160, f: 0.2, n: 3000 }), 0.1108)
  })

  it('parts a tube of 65 and of 61 mm down to 50', () => {
    expectFigures(facingTime.value({ Do: 65, Di: 50, vc: 110, f: 0.1, n: 4000 }), 0.1232)
    expectFigures(facingTime.value({ Do: 61, Di: 50, vc: 110, f: 0.1, n: 4000 }), 0.08718)
    expectFigures(spindleSpeed.value({ vc: 110, D: 65 }), 538.7)
    expectFigures(spindleSpeed.value({ vc: 110, D: 50 }), 700.3)
  })

  it('parts with 1564 N and 2.867 kW at a blade of 3 mm', () => {
    const h = chipThickness.value({ f: 0.1, kappa: 90 })
    const kc = specificCuttingForce.value({ kc11: 1775, mc: 0.24, h, K: 1.3 * 1.3 })
    const Fc = cuttingForce.value({ kc, b: chipWidth.value({ ap: 3, kappa: 90 }), h })
    expectFigures(Fc, 1564)
    expectFigures(cuttingPower.value({ Fc, vc: 110 }), 2.867)
  })

  it('takes as long as a spindle at its limit where the limit rules the whole face', () => {
    expect(facingTime.value({ Do: 10, Di: 0, vc: 400, f: 0.1, n: 500 })).toBeCloseTo(10 / (2 * 0.1 * 500), 12)
  })

  it('spends half of 3.001 min cutting: face, rough, finish, part, with tools, rapids, load and gauge', () => {
    const n = spindleSpeed.value({ vc: 200, D: 61 })
    const finish = turningTime.value({ L: 85, La: 2, Lo: 2, i: 1, f: 0.1, n })
    expectFigures(n, 1044)
    expectFigures(finish, 0.8528)
    const rough = turningTime.value({ L: 85, La: 2, Lo: 2, i: 1, f: 0.25, n: spindleSpeed.value({ vc: 160, D: 65 }) })
    const cutting =
      facingTime.value({ Do: 65, Di: 0, vc: 160, f: 0.2, n: 3000 }) +
      rough +
      finish +
      facingTime.value({ Do: 65, Di: 50, vc: 110, f: 0.1, n: 4000 })
    expectFigures(cutting, 1.541)
    const whole = cutting + 4 * 0.08 + 8 * 0.03 + 0.8 + 0.5 / 5
    expectFigures(whole, 3.001)
    expectFigures((100 * cutting) / whole, 51.35)
  })
})
