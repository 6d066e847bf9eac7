import { describe, expect, it } from 'vitest'
import { barStiffness } from '../../src/handbook/boring-bar.ts'
import { burnThreshold } from '../../src/handbook/burn-screen.ts'
import {
  equivalentChip,
  equivalentDiameterInside,
  equivalentDiameterOutside,
  grindingForce,
  grindingPasses,
  grindingStroke,
  NORMAL_FORCE_SHARE,
  plungeTime,
  sparkOutRest,
  specificRemovalRate,
  traverseFeed,
  traverseTime,
  wheelSpindleSpeed,
} from '../../src/handbook/grinding.ts'
import { GRINDING_ROWS, PLUNGE_INFEED } from '../../src/handbook/grinding-data.ts'
import { spindleSpeed } from '../../src/handbook/turning.ts'
import { expectFigures } from './four-figures.ts'

describe('outside 60 by 80, wheel 350 by 40 at 30 m/s, work at 20 m/min (derived: worked by hand)', () => {
  const nw = spindleSpeed.value({ vc: 20, D: 60 })
  const de = equivalentDiameterOutside.value({ ds: 350, dw: 60 })

  it('turns and traverses', () => {
    expectFigures(wheelSpindleSpeed.value({ vs: 30, ds: 350 }), 1637)
    expectFigures(nw, 106.1)
    expectFigures(traverseFeed.value({ s: 1 / 4, b: 40, nw }), 1061)
    expectFigures(traverseFeed.value({ s: 1 / 8, b: 40, nw }), 530.5)
  })

  it('takes 0.10 in 4 roughing, 2 finishing and 3 spark-out passes, 0.8796 min', () => {
    const L_s = grindingStroke.value({ L: 80, ov: 40 / 3, b: 40 })
    expectFigures(L_s, 66.67)
    const rough = grindingPasses.value({ z: 0.08, ae: 0.01 })
    const finish = grindingPasses.value({ z: 0.02, ae: 0.005 })
    expect([rough, finish]).toEqual([4, 2])
    const slow = traverseFeed.value({ s: 1 / 8, b: 40, nw })
    const times = [
      traverseTime.value({ N: rough, L_s, vfa: traverseFeed.value({ s: 1 / 4, b: 40, nw }) }),
      traverseTime.value({ N: finish, L_s, vfa: slow }),
      traverseTime.value({ N: 3, L_s, vfa: slow }),
    ]
    for (const [i, printed] of [0.2513, 0.2513, 0.377].entries()) expectFigures(times[i] ?? 0, printed)
    expectFigures(
      times.reduce((sum, t) => sum + t),
      0.8796,
    )
  })

  it('has its removal, chip and contact', () => {
    expectFigures(specificRemovalRate.value({ ae: 0.01, vw: 20 }), 3.333)
    expectFigures(specificRemovalRate.value({ ae: 0.005, vw: 20 }), 1.667)
    expectFigures(equivalentChip.value({ ae: 0.01, vw: 20, vs: 30 }), 0.1111)
    expectFigures(equivalentChip.value({ ae: 0.005, vw: 20, vs: 30 }), 0.05556)
    expectFigures(de, 51.22)
  })

  it('may burn from 39.56, 62.31 and 26.04 J/mm³ (constants: memory, Malkin and Lenz 1978)', () => {
    expectFigures(burnThreshold.value({ de, ae: 0.01, vw: 20 }), 39.56)
    expectFigures(burnThreshold.value({ de, ae: 0.005, vw: 20 }), 62.31)
    expectFigures(burnThreshold.value({ de, ae: 0.02, vw: 20 }), 26.04)
  })

  it('at equal removal a faster work speed raises the threshold, at equal infeed it lowers it', () => {
    const at = (ae: number, vw: number): number => burnThreshold.value({ de, ae, vw })
    expect(at(0.005, 40)).toBeGreaterThan(at(0.01, 20))
    expect(at(0.01, 40)).toBeLessThan(at(0.01, 20))
  })

  it('plunges in 0.3672 min, infeeds radial, and in 0.6401 with half of them', () => {
    const soft = { zr: 0.04, zf: 0.01, fr: 0.003, ff: 0.00064, N: 10, nw }
    expectFigures(0.003 * nw, 0.3183)
    expectFigures(0.00064 * nw, 0.06791)
    expectFigures(plungeTime.value(soft), 0.3672)
    expectFigures(plungeTime.value({ ...soft, fr: 0.0015, ff: 0.00032 }), 0.6401)
  })
})

describe('bore 54 by 80, wheel 40 by 25 at 30 m/s, work at 20 m/min (derived: worked by hand)', () => {
  const nw = spindleSpeed.value({ vc: 20, D: 54 })

  it('turns, traverses and has its contact', () => {
    expectFigures(wheelSpindleSpeed.value({ vs: 30, ds: 40 }), 14_320)
    expectFigures(wheelSpindleSpeed.value({ vs: 25, ds: 40 }), 11_940)
    expectFigures(nw, 117.9)
    const de = equivalentDiameterInside.value({ dw: 54, q: 40 / 54 })
    expectFigures(de, 154.3)
    expectFigures(equivalentDiameterInside.value({ dw: 54, q: 35 / 54 }), 99.47)
  })

  it('takes 0.12 in 10, 4 and 4 passes, 2.529 min', () => {
    const L_s = grindingStroke.value({ L: 80, ov: 25 / 3, b: 25 })
    const fast = traverseFeed.value({ s: 1 / 4, b: 25, nw })
    const slow = traverseFeed.value({ s: 1 / 8, b: 25, nw })
    expectFigures(L_s, 71.67)
    expectFigures(fast, 736.8)
    expectFigures(slow, 368.4)
    const passes = [grindingPasses.value({ z: 0.1, ae: 0.005 }), grindingPasses.value({ z: 0.02, ae: 0.0025 }), 4]
    expect(passes).toEqual([10, 4, 4])
    const times = passes.map((N, i) => traverseTime.value({ N, L_s, vfa: i === 0 ? fast : slow }))
    for (const [i, printed] of [0.9726, 0.7781, 0.7781].entries()) expectFigures(times[i] ?? 0, printed)
    expectFigures(
      times.reduce((sum, t) => sum + t),
      2.529,
    )
  })

  it('bends its quill 5.755 µm, less after each spark-out pass', () => {
    const ks = barStiffness.value({ L: 90, E: 210_000, d: 20 })
    const Ft = grindingForce.value({ ae: 0.005, vw: 20, s: 1 / 4, b: 25, u: 45, vs: 30 })
    const Fn = NORMAL_FORCE_SHARE * Ft
    expectFigures(ks, 6.787)
    // 15.625 exactly, printed rounded to the even digit.
    expect(Ft).toBeCloseTo(15.625, 9)
    expectFigures(30 * Ft, 468.8)
    expectFigures(Fn, 39.06)
    expectFigures(Fn / ks, 5.755)
    expectFigures(Fn / barStiffness.value({ L: 90, E: 580_000, d: 20 }), 2.084)
    expectFigures(Fn / barStiffness.value({ L: 100, E: 210_000, d: 25 }), 3.234)
    const kc = Fn / 5
    for (const [i, x] of [0.5351, 0.2863, 0.1532, 0.08199, 0.04387, 0.02348].entries()) {
      expectFigures(sparkOutRest.value({ kc, ks, N: i + 1 }), x)
    }
  })
})

describe('speeds that wheels are marked for (derived: worked by hand)', () => {
  it.each([
    [50, 40, 23_870],
    [35, 350, 1910],
    [45, 350, 2456],
    [45, 40, 21_490],
  ])('%d m/s on %d mm', (vs, ds, rpm) => {
    expectFigures(wheelSpindleSpeed.value({ vs, ds }), rpm)
  })
})

describe("tables of Machinery's Handbook, 31st ed., p. 1318", () => {
  it.each([
    ['plain carbon steel, annealed', 30.5, 0.013, 1 / 2, 1 / 6],
    ['plain carbon steel, hardened', 21, 0.013, 1 / 4, 1 / 8],
    ['alloy steel, annealed', 30.5, 0.013, 1 / 2, 1 / 6],
    ['alloy steel, hardened', 21, 0.013, 1 / 4, 1 / 8],
    ['tool steel, hardened', 15, 0.013, 1 / 4, 1 / 8],
    ['copper alloys', 30.5, 0.013, 1 / 3, 1 / 6],
    ['aluminium alloys', 45.7, 0.013, 1 / 3, 1 / 6],
  ])('%s', (work, speed, finish, roughTraverse, finishTraverse) => {
    const row = GRINDING_ROWS.find(known => known.work === work)
    expect(row).toMatchObject({ workSpeed: speed, roughInfeed: 0.05, roughTraverse, finishTraverse })
    expect(row?.finishInfeed[1]).toBe(finish)
  })

  it('plunges hardened alloy steel at 0.003 and 0.00064 a turn', () => {
    expect(PLUNGE_INFEED['alloy or tool steel, hardened']).toEqual({ rough: 0.003, finish: 0.00064 })
    expect(PLUNGE_INFEED['soft steel']).toEqual({ rough: 0.013, finish: 0.005 })
  })

  it('does not add a pass for a whole quotient', () => {
    expect(grindingPasses.value({ z: 2.2, ae: 0.1 })).toBe(11)
  })
})
