import fc from 'fast-check'
import { linearRegression } from 'simple-statistics'
import { describe, expect, it } from 'vitest'
import {
  chipThickness,
  chipWidth,
  cuttingForce,
  cuttingPower,
  specificCuttingForce,
} from '../../src/handbook/kienzle.ts'
import { SPECIFIC_FORCE_ROWS, TEXTBOOK_FORCE } from '../../src/handbook/specific-force.ts'
import { feedRate, spindleSpeed, turningTime } from '../../src/handbook/turning.ts'
import { expectFigures } from './four-figures.ts'
import { POWER_CONSTANTS } from './second-models/specific-force.ts'

const kc = (kc11: number, mc: number, h: number, K = 1): number => specificCuttingForce.value({ kc11, mc, h, K })

describe('specific cutting force over chip thickness (derived: the published kc1.1 and mc, worked by hand)', () => {
  const thickness = [0.01, 0.05, 0.1, 0.2, 0.3, 0.4]

  // kc1.1 and mc: ISCAR material groups after VDI 3323, turning catalogue 2017, p. 558; the textbook pair: memory.
  it.each([
    ['low-alloy steel, annealed', 1775, 0.24, [5360, 3643, 3085, 2612, 2370, 2212]],
    ['tempered, 300 HB', 1725, 0.24, [5209, 3540, 2998, 2538, 2303, 2149]],
    ['42CrMo4, textbook', 2500, 0.26, [8278, 5448, 4549, 3799, 3419, 3173]],
    ['C45', 1500, 0.22, [4131, 2899, 2489, 2137, 1955, 1835]],
    ['grey iron, group 15', 1150, 0.2, [2889, 2094, 1823, 1587, 1463, 1381]],
    ['aged aluminium', 800, 0.25, [2530, 1692, 1423, 1196, 1081, 1006]],
  ] as const)('%s', (_, kc11, mc, printed) => {
    for (const [index, h] of thickness.entries()) expectFigures(kc(kc11, mc, h), printed[index] ?? 0)
  })

  it('falls as the chip gets thicker, whatever the material', () => {
    const rows = fc.constantFrom(...SPECIFIC_FORCE_ROWS)
    const chips = fc.double({ min: 0.002, max: 2, noNaN: true })
    fc.assert(
      fc.property(rows, chips, chips, ({ kc11, mc }, a, b) => {
        expect(kc(kc11, mc, Math.min(a, b))).toBeGreaterThanOrEqual(kc(kc11, mc, Math.max(a, b)))
      }),
    )
  })

  it('refuses a chip that only rubs', () => {
    expect(() => kc(1775, 0.24, 0.001)).toThrow('h must be from 0.002')
  })
})

describe('fit of the cutting-force table of a chuck manual (Röhm, p. 43, kappa 45 deg) by a statistics library', () => {
  const feeds = [0.16, 0.25, 0.4, 0.63, 1, 1.6]
  const fitted = (row: readonly number[]) => {
    const points = row.map((kN, i) => [
      Math.log(chipThickness.value({ f: feeds[i] ?? 0, kappa: 45 })),
      Math.log(1000 * kN),
    ])
    const { m, b } = linearRegression(points)
    return { kc11: Math.exp(b), mc: -m }
  }

  it('grey iron 250 comes out at 1186 and 0.2459, near the textbook pair', () => {
    const { kc11, mc } = fitted([2.05, 1.8, 1.6, 1.45, 1.3, 1.15])
    expectFigures(kc11, 1186)
    expectFigures(mc, 0.2459)
    const textbook = TEXTBOOK_FORCE['EN-GJL-250']
    expect(Math.abs((textbook?.kc11 ?? 0) / kc11 - 1)).toBeLessThan(0.03)
    expect(Math.abs((textbook?.mc ?? 0) / mc - 1)).toBeLessThan(0.06)
  })

  it('42CrMo4 comes out at 2526 and 0.2496', () => {
    const { kc11, mc } = fitted([4.35, 3.9, 3.45, 3.1, 2.75, 2.45])
    expectFigures(kc11, 2526)
    expectFigures(mc, 0.2496)
  })

  it("material group 8 and Machinery's Handbook (31st ed., p. 1147) agree within 4 % at a chip of 0.3 mm", () => {
    const group8 = SPECIFIC_FORCE_ROWS.find(({ group }) => group === 8)
    const Kp = POWER_CONSTANTS.find(({ over, upTo }) => 290 > over && 290 <= upTo)?.Kp ?? 0
    expect(Math.abs((1000 * Kp) / kc(group8?.kc11 ?? 0, group8?.mc ?? 0, 0.3) - 1)).toBeLessThan(0.04)
  })
})

describe('roughing 42CrMo4, annealed, 65 to 61 mm at 160 m/min, 0.25 mm, 2 mm deep (derived: worked by hand)', () => {
  const n = spindleSpeed.value({ vc: 160, D: 65 })
  const h = chipThickness.value({ f: 0.25, kappa: 95 })
  const b = chipWidth.value({ ap: 2, kappa: 95 })
  const sharp = cuttingForce.value({ kc: kc(1775, 0.24, h, 0.94), b, h })
  const worn = 1.3 * sharp

  it('turns, feeds and lasts as worked', () => {
    expectFigures(n, 783.5)
    expectFigures(feedRate.value({ f: 0.25, n }), 195.9)
    expectFigures(turningTime.value({ L: 85, La: 2, Lo: 2, i: 1, f: 0.25, n }), 0.4544)
  })

  it('takes the force and power worked, sharp and worn', () => {
    expectFigures(h, 0.249)
    expectFigures(b, 2.008)
    expectFigures(kc(1775, 0.24, h), 2478)
    expectFigures(kc(1775, 0.24, h, 0.94), 2329)
    expectFigures(sharp, 1165)
    expectFigures(worn, 1514)
    expectFigures(cuttingPower.value({ Fc: sharp, vc: 160 }), 3.106)
    expectFigures(cuttingPower.value({ Fc: worn, vc: 160 }), 4.037)
  })

  it('takes half as much again by the textbook value', () => {
    const older = kc(2500, 0.26, h)
    expectFigures(older, 3588)
    expectFigures(cuttingForce.value({ kc: older, b, h }), 1794)
    expectFigures(cuttingPower.value({ Fc: cuttingForce.value({ kc: older, b, h }), vc: 160 }), 4.785)
  })
})

describe('other materials at their usual cuts (derived: worked by hand)', () => {
  it.each([
    ['16MnCr5, annealed', 1775, 0.24, 0.94, 0.3, 2.5, 95, 220, 2230, 1672, 6.131],
    ['grey iron, group 15', 1150, 0.2, 1, 0.3, 2, 75, 250, 1473, 884, 3.683],
    ['grey iron, group 16', 1350, 0.28, 1, 0.3, 2, 75, 250, 1910, 1146, 4.774],
    ['6082', 800, 0.25, 1, 0.2, 1.5, 90, 400, 1196, 358.9, 2.393],
  ] as const)('%s', (_, kc11, mc, K, f, ap, kappa, vc, specific, force, power) => {
    const h = chipThickness.value({ f, kappa })
    const Fc = cuttingForce.value({ kc: kc(kc11, mc, h, K), b: chipWidth.value({ ap, kappa }), h })
    expectFigures(kc(kc11, mc, h, K), specific)
    expectFigures(Fc, force)
    expectFigures(cuttingPower.value({ Fc, vc }), power)
  })
})
