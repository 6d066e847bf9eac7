import { describe, expect, it } from 'vitest'
import { entryLength, pointLength, slopeOfEntry } from '../../src/handbook/drill-entry.ts'
import {
  CHISEL,
  drillChipThickness,
  drillPower,
  drillThrust,
  drillTorque,
  handbookThrust,
  STEEL_DRILL_CONSTANT,
} from '../../src/handbook/drilling.ts'
import { specificCuttingForce } from '../../src/handbook/kienzle.ts'
import { feedRate, spindleSpeed } from '../../src/handbook/turning.ts'
import { expectFigures } from './four-figures.ts'
import { handbookTorque, MAKERS_DRILL_CONSTANT, makersThrust, makersTorque } from './second-models/drilling.ts'

const kienzle = (kc11: number, f: number, D: number, sigma: number) => {
  const h = drillChipThickness.value({ f, sigma })
  const kc = specificCuttingForce.value({ kc11, mc: 0.24, h, K: 1.2 * 1.3 })
  return { h, kc, M: drillTorque.value({ kc, f, D }), F: drillThrust.value({ kc, f, D, sigma }) }
}
const Kd = (HB: number): number => STEEL_DRILL_CONSTANT.find(row => row.HB === HB)?.Kd ?? 0
const K = (work: string, HB: number): number =>
  MAKERS_DRILL_CONSTANT.find(row => row.work === work && row.HB === HB)?.K ?? 0

describe('a 2 mm drill at 15 m/min and 0.04 mm through a 3 mm wall tilted 15 deg, 200 HB', () => {
  it('travels and takes as long as worked by hand (derived: geometry)', () => {
    const n = spindleSpeed.value({ vc: 15, D: 2 })
    const vf = feedRate.value({ f: 0.04, n })
    const run = entryLength.value({ D: 2, theta: 15, sigma: 118 })
    const wall = 3 / Math.cos(Math.PI / 12)
    expectFigures(n, 2387)
    expectFigures(vf, 95.49)
    expectFigures(run, 0.8688)
    expectFigures(pointLength.value({ D: 2, sigma: 118 }), 0.6009)
    expectFigures(wall, 3.106)
    const path = 1 + wall + run + 0.5
    expectFigures(path, 5.475)
    expectFigures((60 * path) / vf, 3.44)
    expectFigures((60 * (path + (1 + run) + (run + 0.5))) / vf, 5.474)
  })

  it('by Kienzle (memory: Kienzle; figures derived)', () => {
    const { h, kc, F, M } = kienzle(1775, 0.04, 2, 118)
    expectFigures(h, 0.01714)
    expectFigures(kc, 7348)
    expectFigures(F, 126)
    expectFigures(M, 0.147)
  })

  it("by Machinery's Handbook, 31st ed., pp. 1152-1153, standard and split point", () => {
    const cut = { Kd: Kd(200), f: 0.04, D: 2, W: 1 }
    expectFigures(handbookThrust.value({ ...cut, ...CHISEL.standard }), 235.7)
    expectFigures(handbookTorque.value({ ...cut, ...CHISEL.standard }), 0.1726)
    expectFigures(handbookThrust.value({ ...cut, ...CHISEL.split }), 175.7)
    expectFigures(handbookTorque.value({ ...cut, ...CHISEL.split }), 0.1591)
  })

  it('by the formula of Tungaloy general catalogue 2020-21, p. L068', () => {
    const cut = { K: K('low-carbon steel', 160), D: 2, f: 0.04 }
    expectFigures(makersThrust.value(cut), 164.1)
    expectFigures(makersTorque.value(cut), 0.1158)
  })
})

describe('larger drills by the three methods', () => {
  it('8.5 mm, 140 deg, 280 HB, 70 m/min, 0.18 mm', () => {
    const n = spindleSpeed.value({ vc: 70, D: 8.5 })
    const vf = feedRate.value({ f: 0.18, n })
    expectFigures(n, 2621)
    expectFigures(vf, 471.8)
    const point = pointLength.value({ D: 8.5, sigma: 140 })
    expectFigures(point, 1.547)
    expectFigures((60 * (20 + point + 2 + 1)) / vf, 3.121)
    const { h, kc, M, F } = kienzle(1700, 0.18, 8.5, 140)
    expectFigures(h, 0.08457)
    expectFigures(kc, 4798)
    expectFigures(M, 7.799)
    expectFigures(F, 1724)
    expectFigures(drillPower.value({ M, n }), 2.141)
    const handbook = { Kd: 30_000, f: 0.18, D: 8.5, W: 1, ...CHISEL.split }
    expectFigures(handbookThrust.value(handbook), 2334)
    expectFigures(handbookTorque.value(handbook), 8.958)
    expectFigures(drillPower.value({ M: handbookTorque.value(handbook), n }), 2.459)
    const maker = { K: K('chromium-molybdenum steel', 269), D: 8.5, f: 0.18 }
    expectFigures(makersThrust.value(maker), 2718)
    expectFigures(makersTorque.value(maker), 6.375)
  })

  it('10 mm, 0.2 mm, 269 HB: they differ by two in thrust', () => {
    const handbook = { Kd: 29_000, f: 0.2, D: 10, W: 1, ...CHISEL.standard }
    expectFigures(handbookThrust.value(handbook), 4030)
    expectFigures(handbookTorque.value(handbook), 13.7)
    const maker = { K: K('chromium-molybdenum steel', 269), D: 10, f: 0.2 }
    expectFigures(makersThrust.value(maker), 3498)
    expectFigures(makersTorque.value(maker), 9.635)
    const { F, M } = kienzle(1675, 0.2, 10, 118)
    expectFigures(F, 2019)
    expectFigures(M, 11.78)
  })
})

describe('points and faces (derived: exact geometry)', () => {
  it.each([
    [90, 0.5],
    [118, 0.3004],
    [130, 0.2332],
    [135, 0.2071],
    [140, 0.182],
  ])('a point of %d deg', (sigma, length) => {
    expectFigures(pointLength.value({ D: 1, sigma }), length)
  })

  it('a hole 5 mm off the axis of R 30 meets 9.594 deg, and 17.75 with a tilt of 15', () => {
    expectFigures(slopeOfEntry.value({ theta: 0, q: 5 / 30 }), 9.594)
    expectFigures(slopeOfEntry.value({ theta: 15, q: 5 / 30 }), 17.75)
    expect(slopeOfEntry.value({ theta: 15, q: 0 })).toBeCloseTo(15, 10)
  })
})
