import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Band } from '../../src/band.ts'
import { landsToBands } from '../../src/ports/checks/land-to-bands.ts'
import type { Ported } from '../../src/ports/checks/port-check.ts'
import { meetingPoint } from '../../src/ports/streams.ts'

describe('the streams of a mirrored pair (geometry in plan)', () => {
  const unit = (degrees: number) => [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)] as const

  it('run side by side where both head straight away from the exhaust, or straight to it', () => {
    for (const azimuth of [30, 60, 85]) expect(meetingPoint(azimuth, azimuth, 20)).toEqual({ exit: 180 - azimuth })
    for (const azimuth of [100, 120, 150]) expect(meetingPoint(azimuth, azimuth - 180, 20).behind).toBeUndefined()
  })
  it('meet far off where they are nearly so', () => {
    expect(Math.abs(meetingPoint(60, 59.999, 20).behind ?? 0)).toBeGreaterThan(1e5)
  })
  it('meet where the line of a stream crosses the plane between the two ports', () => {
    const azimuths = fc.double({ min: 5, max: 175, noNaN: true })
    const headings = fc.double({ min: -80, max: 80, noNaN: true })
    const drawn = fc.record({ azimuth: azimuths, back: headings, radius: fc.double({ min: 10, max: 80, noNaN: true }) })
    fc.assert(
      fc.property(drawn, ({ azimuth, back, radius }) => {
        fc.pre(Math.abs(unit(azimuth - back)[1]) > 0.05)
        const { behind = Number.NaN, fraction } = meetingPoint(azimuth, back, radius)
        // From the port on the wall to the meeting point, the exhaust standing at +x: along the heading or against it.
        const [x, y] = unit(azimuth)
        const [hx, hy] = unit(azimuth + 180 - back)
        const along = [-behind - radius * x, -radius * y] as const
        expect(Math.abs(along[0] * hy - along[1] * hx)).toBeLessThan(1e-9 * (radius + Math.abs(behind)))
        expect(fraction).toBeCloseTo((radius + behind) / (2 * radius), 9)
      }),
    )
  })
})

describe('the land from a window to the bands of the outside', () => {
  const band = (name: string, from: number, to: number): Band => ({
    name,
    size: { nominal: 60, lower: 60, upper: 60, written: '60' },
    from,
    to: { nominal: to, lower: to, upper: to, written: String(to) },
    path: '',
  })
  const landsIn = (bands: readonly Band[], depths: readonly number[]) =>
    landsToBands(
      {
        part: { outside: bands },
        windows: [{ port: { name: 'exhaust' }, window: { outline: { outside: depths.map(depth => ({ depth })) } } }],
      } as unknown as Ported,
      (other, own) => other !== own,
    ).map(({ name, land }) => [name, land])

  it('runs up to what ends over its highest edge, and down to what begins under its lowest', () => {
    const bands = [band('flange', 0, 8), band('seat', 8, 50), band('groove', 50, 53), band('tail', 53, 80)]
    expect(landsIn(bands, [35, 20, 41, 30])).toEqual([
      ['flange', 12],
      ['groove', 9],
      ['tail', 12],
    ])
  })
  it('is nothing, and not absent, where the window begins at a shoulder or ends at one', () => {
    expect(landsIn([band('flange', 0, 20), band('seat', 20, 80)], [20, 40])).toEqual([['flange', 0]])
    expect(landsIn([band('seat', 0, 40), band('groove', 40, 80)], [20, 40])).toEqual([['groove', 0]])
  })
  it('is to every other band but its own, in which its middle lies', () => {
    expect(landsIn([band('flange', 0, 29), band('seat', 29, 80)], [30, 40]).map(([name]) => name)).toEqual(['flange'])
    expect(landsIn([band('seat', 0, 41), band('groove', 41, 80)], [30, 40]).map(([name]) => name)).toEqual(['groove'])
  })
})
