import { describe, expect, it } from 'vitest'
import { offsetAngle } from '../../src/handbook/timing-datums.ts'
import type { Datum } from '../../src/part/part.ts'
import type { PlannedPort } from '../../src/ports/port.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Shop } from '../../src/shop/shop.ts'
import { cut, partOf, portOf, stateOf, tube, windowOf } from './hand-made.ts'

const walls = { outside: 27, bore: 24, finished: 24 }
const tilted = (tilts: readonly number[], back = 0): readonly PlannedPort[] =>
  tilts.map((tilt, i) =>
    portOf([windowOf({ tilt, walls })], { name: `port ${i + 1}`, at: 90 * i, back: i === 0 ? 0 : back }),
  )
const POWERED: Shop = { ...BUILT_IN_SHOP, ncWords: { tiltAxis: 'B' } }
const wall = tube(54, 48)
function milled(ports: readonly PlannedPort[], datum?: Datum, shop: Shop = BUILT_IN_SHOP) {
  const state = stateOf('mill-ports', wall, { ...wall, ported: true })
  return cut(partOf(datum ? { datum } : {}), state, shop, ports, 18)
}
const onRim = (kind: Datum['kind'], depth: number): Datum => ({ kind, on: 'seat', at: 0, depth, path: '/body/datum' })
/** One loading against a key in a window: 0.03 of clearance at the bore of 24, worked by hand. */
const KEY = (180 / Math.PI) * (0.015 / 24)
/** Rotary at both, 60 seconds of arc each: common practice, no source. */
const ROTARY = 2 / 60

describe('where a port stands round the bore', () => {
  it('is off by an error in Y as the coordinates of a tilted fixture say: 0.316° for 0.05 at radius 10, heading 25°', () => {
    // Worked from the homogeneous transforms: azimuth +0.3165 for Y +0.05.
    expect(offsetAngle.value({ dY: 0.05, r: 10, psi: 25 })).toBeCloseTo(0.3165, 2)
  })

  it('is off by one clocking against the window that the key stands in, and by two against another pass', () => {
    const { places } = milled(tilted([5, 0, 50]))
    const y = (180 / Math.PI) * (0.01 / 24)
    // The first port is milled in the second pass, the second one carries the key.
    const [second, third] = places
    expect(second?.place.from).toBe('port 1')
    expect(second?.place.members.map(({ name }) => name)).toEqual([
      'clocking for port 1',
      'rotary at port 2',
      'rotary at port 1',
      'Y picked up',
    ])
    expect(second?.place.worstCase.angle).toBeCloseTo(KEY + ROTARY + y, 9)
    expect(third?.place.worstCase.angle).toBeCloseTo(2 * KEY + ROTARY + y, 9)
    expect(third?.place.rootSumSquare.angle).toBeCloseTo(Math.hypot(KEY, KEY, 1 / 60, 1 / 60, y), 9)
  })

  it('moves both side edges by its arc on the finished bore', () => {
    for (const { place } of milled(tilted([0, 5, 50])).places)
      for (const { angle, side } of [...place.members, place.worstCase, place.rootSumSquare, place.allowed])
        expect(side).toBeCloseTo((angle * Math.PI * 24) / 180, 9)
  })

  it('owes nothing to clocking where a piece stays in its jaws', () => {
    for (const [shop, tilts] of [
      [POWERED, [0, 5, 50]],
      [BUILT_IN_SHOP, [0, 0, 0]],
    ] as const)
      for (const { place } of milled(tilted(tilts), undefined, shop).places)
        expect(place.worstCase.angle).toBeCloseTo(ROTARY, 9)
  })

  it('is measured from a datum of the drawing, and from one made before the first pass every port is off', () => {
    const hole = milled(tilted([0, 15]), onRim('dowel hole', 4)).places
    expect(hole.map(({ place }) => place.members[0]?.name)).toEqual(['clocking for port 1', 'clocking for port 2'])
    expect(hole[0]?.place.from).toBe('dowel hole in seat')
    // One milled with the first pass costs that pass nothing.
    const notch = milled(tilted([0, 15]), onRim('notch', 2)).places
    expect(notch.map(({ place }) => place.members.some(({ name }) => name.startsWith('clocking')))).toEqual([
      false,
      true,
    ])
  })

  it('is told where it does not close: a flat by an indicator, 0.072° a loading', () => {
    const { codes } = milled(tilted([0, 15], 32), onRim('flat', 1.5))
    expect(codes).toContain('ports/place-open')
    expect(milled(tilted([0, 15], 32), onRim('dowel hole', 4)).codes).not.toContain('ports/place-open')
  })
})
