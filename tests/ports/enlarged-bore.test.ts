import { describe, expect, it } from 'vitest'
import { azimuthOn, cutFrame, heightOn, runToFarWall, runToNearWall } from '../../src/ports/cut-frame.ts'
import { edgesOn } from '../../src/ports/edges-on.ts'
import { greatest, least } from '../../src/ports/extreme.ts'
import { radians } from '../../src/units.ts'
import { G1, G2, G3, G5, G6, G7, G8, slotOf } from './slots.ts'

describe('a bore enlarged after the ports were cut', () => {
  it.each([
    ['H1', 10, 0.1, 0, 50, 0, -0.11918, 0],
    ['H2', 10, 0.1, 0, 50, 2.5, -0.12313, -0.14948],
    ['H3', 10, 0.1, 25, 10, 0, -0.01948, -0.27017],
    ['H4', 12, 0.15, 35, 15, 3.25, -0.07625, -1.16187],
    ['H5', 33, 0.2, 40, 18, 0, -0.08501, -0.29378],
    ['H6', 12, 0.1, 0, -8, 0, 0.01405, 0],
    ['H7', 10, 0.05, 25, 10, 3, -0.01279, -0.30182],
  ])('%s moves the edge and the azimuth', (_, r, delta, psi, beta, a, dz, dphi) => {
    const frame = cutFrame(0, psi, beta)
    const point = { l: r * Math.sin(radians(psi)) + a, b: 0 }
    expect(heightOn(frame, r, point) - heightOn(frame, r - delta, point)).toBeCloseTo(dz, 5)
    expect(azimuthOn(frame, r, point.l) - azimuthOn(frame, r - delta, point.l)).toBeCloseTo(dphi, 5)
  })

  it.each([
    [G2, -16.02021, -15.89942],
    [G3, -15.94396, -15.92101],
    [G5, -15.90091, -15.85851],
  ])('slot %o: the edge to measure before the grind', (slot, finished, before) => {
    const { frame, m, contour } = slotOf(slot)
    expect(-edgesOn({ frame, contour, radius: slot.r, middle: m, above: 0 }).highest).toBeCloseTo(finished, 5)
    expect(-edgesOn({ frame, contour, radius: slot.r - 0.1, middle: m, above: 0 }).highest).toBeCloseTo(before, 5)
  })
})

describe('how deep the cutter may go, from the point on the finished bore', () => {
  it.each([
    ['G1', G1, 0.8348, 19.165],
    ['G2', G2, 1.9903, 29.124],
    ['G3', G3, 2.3394, 16.066],
    ['G5', G5, 3.7498, 16.603],
    ['G6', G6, 2.443, 21.793],
    ['G7', G7, 13.663, 39.498],
    ['G8', G8, 1.6691, 23.215],
  ])('%s', (_, slot, through, far) => {
    const { frame, m, b, contour } = slotOf(slot)
    const reference = runToNearWall(frame, slot.r, { l: m, b })
    const deepest = greatest(contour, point => runToNearWall(frame, slot.r, point), m).value - reference
    const strike = least(contour, point => runToFarWall(frame, slot.r, point), m).value - reference
    expect(deepest).toBeCloseTo(through, through > 10 ? 3 : 4)
    expect(strike).toBeCloseTo(far, 3)
  })
  it('G3 in a bore still 0.1 a side smaller', () => {
    const { frame, m, b, contour } = slotOf(G3)
    const reference = runToNearWall(frame, 10, { l: m, b })
    expect(greatest(contour, point => runToNearWall(frame, 9.9, point), m).value - reference).toBeCloseTo(2.4868, 4)
    expect(least(contour, point => runToFarWall(frame, 9.9, point), m).value - reference).toBeCloseTo(15.919, 3)
  })
})
