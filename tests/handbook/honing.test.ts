import { describe, expect, it } from 'vitest'
import {
  axialSpeed,
  crossHatchAngle,
  doubleStrokes,
  honedVolume,
  honingSpeed,
  honingStroke,
  honingTime,
  landShare,
  landUnderStone,
} from '../../src/handbook/honing.ts'
import { HONING_GRITS } from '../../src/handbook/honing-data.ts'
import { cuttingSpeed, spindleSpeed } from '../../src/handbook/turning.ts'
import { expectFigures } from './four-figures.ts'

describe('honing 54 by 80 with 50 mm stones (derived: geometry, worked by hand)', () => {
  const S = honingStroke.value({ L: 80, ov: 50 / 3, l_s: 50 })

  it('at 30 m/min and 45 deg', () => {
    expectFigures(S, 63.33)
    expectFigures(honingStroke.value({ L: 80, ov: 50 / 4, l_s: 50 }), 55)
    const va = axialSpeed.value({ vt: 30, alpha: 45 })
    const n = spindleSpeed.value({ vc: 30, D: 54 })
    const strokes = doubleStrokes.value({ va, S })
    expectFigures(va, 12.43)
    expectFigures(n, 176.8)
    expectFigures(strokes, 98.1)
    expectFigures(honingSpeed.value({ vt: 30, va }), 32.47)
    expectFigures(n / strokes, 1.803)
  })

  it('at 200 rpm and 60 double strokes', () => {
    const vt = cuttingSpeed.value({ n: 200, D: 54 })
    const va = (2 * S * 60) / 1000
    expectFigures(vt, 33.93)
    expectFigures(va, 7.6)
    expectFigures(crossHatchAngle.value({ va, vt }), 25.25)
    const slower = va / Math.tan(Math.PI / 8)
    expectFigures(slower, 18.35)
    expectFigures(spindleSpeed.value({ vc: slower, D: 54 }), 108.2)
    expect(crossHatchAngle.value({ va, vt: slower })).toBeCloseTo(45, 10)
  })

  it.each([
    [20, 0.1763],
    [30, 0.2679],
    [40, 0.364],
    [45, 0.4142],
    [50, 0.4663],
    [60, 0.5774],
    [70, 0.7002],
    [90, 1],
  ])('runs %d deg at va/vt %d', (alpha, ratio) => {
    expectFigures(axialSpeed.value({ vt: 1, alpha }), ratio)
  })

  it('takes 0.03 mm in 2 min at 15 µm/min', () => {
    const V = honedVolume.value({ d: 54, L: 80, z: 0.03 })
    expectFigures(V, 203.6)
    expectFigures(honingTime.value({ z: 0.03, rate: 15 }), 2)
    expectFigures(honingTime.value({ z: 0.03, rate: 25 }), 1.2)
    expectFigures(V / 2 / ((6 * 50 * 6) / 100), 5.655)
    expectFigures(honingTime.value({ z: 0.034, rate: 20 }) + honingTime.value({ z: 0.006, rate: 6 }), 2.7)
  })

  it('cuts 1.576 times as fast on the belt of ports, 1.192 under a stone that spans it', () => {
    const lambda = landShare.value({ w: 14 + 14 + 12 + 12 + 10, d: 54 })
    expectFigures(lambda, 0.6345)
    expectFigures(1 / lambda, 1.576)
    expectFigures(5 / lambda, 7.88)
    expectFigures(landShare.value({ w: 50, d: 54 }), 0.7053)
    const under = landUnderStone.value({ lambda, h_p: 22, l_s: 50 })
    expectFigures(under, 0.8392)
    expectFigures(1 / under, 1.192)
  })

  it('has its stroke on a short bore', () => {
    expectFigures(honingStroke.value({ L: 40, ov: 50 / 3, l_s: 50 }), 23.33)
    expectFigures(honingStroke.value({ L: 40, ov: 100 / 3, l_s: 100 }), 6.67, 3)
  })
})

describe('grit against Ra (memory: honing-tool guides)', () => {
  it('gets finer with every grit, and CBN leaves more than alumina', () => {
    for (const [index, row] of HONING_GRITS.entries()) {
      const finer = HONING_GRITS[index + 1]
      if (finer) {
        expect(finer.grit).toBeGreaterThan(row.grit)
        expect(finer.alumina[1]).toBeLessThan(row.alumina[1])
        expect(finer.cbn[1]).toBeLessThan(row.cbn[1])
      }
      expect(row.alumina[1]).toBeLessThan(row.cbn[1])
    }
  })

  it('lies within the range of common honed finishes, 0.076 to 1.27 µm, but for the two ends', () => {
    // Machinery's Handbook, 31st ed., p. 1338: 3 to 50 microinches.
    const common = HONING_GRITS.filter(({ grit }) => grit >= 120 && grit <= 500)
    for (const { alumina } of common) expect(alumina[0] >= 0.076 && alumina[1] <= 1.27).toBe(true)
  })
})
