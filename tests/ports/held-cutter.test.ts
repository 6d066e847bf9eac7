import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { toMachine } from '../../src/machine-frame.ts'
import { roomAt } from '../../src/ports/closest-place.ts'
import { heightUnder, type RoundBody } from '../../src/ports/height-under.ts'
import { heldCutter, stickOutNeeded } from '../../src/ports/held-cutter.ts'
import { planPorts } from '../../src/ports/plan-ports.ts'
import { FIXTURE, linerOf, milledAt, shopWith } from './liner.ts'

const at = (x: number, y: number) => ({ x: [x, x], y: [y, y] }) as const

// Two settings of a chuck of radius 50, its face 60 from the pivot, and a holder of radius 9.5, computed separately in the
// plane of the rotary's axis. The chuck's top corner leans over the work in the second.
describe.each([
  ['level with the nose', -10, 89.44252, 105.06, 37.54],
  ['at the top corner', 10, 122.29115, 70, 34.6],
] as const)('a holder beside the chuck, closest %s', (_, tilt, x, nose, clear) => {
  const chuck: RoundBody = { of: 'chuck', name: 'chuck', from: 20, to: 60, radius: 50 }
  it('is as far from it as computed separately', () => {
    const height = (radius: number) =>
      heightUnder({ fixture: { pivotHeight: 60 }, tilt, body: chuck, swept: at(x, 0), tool: radius })
    expect(roomAt(height, nose, 9.5)).toBeCloseTo(clear, 2)
  })
})

it('finds the highest place under the tool: none that the fixture’s own transform gives is higher', () => {
  const between = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true })
  fc.assert(
    fc.property(
      between(-60, 60),
      between(1, 30),
      between(-30, 90),
      between(-20, 20),
      fc.array(fc.tuple(between(0, 1), between(0, 1), between(0, 360)), { minLength: 400, maxLength: 400 }),
      (tilt, tool, x, y, places) => {
        const body: RoundBody = { of: 'part', name: 'seat', from: -12, to: 76, radius: 27.5 }
        const found = heightUnder({ fixture: FIXTURE, tilt, body, swept: at(x, y), tool })
        // Through the fixture's own transform: the part's axis points along +X, its top face stands at 80.
        for (const [along, out, turn] of places) {
          const depth = 80 - (body.from + along * (body.to - body.from))
          const radius = body.radius * Math.sqrt(out)
          const [across, up] = [radius * Math.cos((turn * Math.PI) / 180), radius * Math.sin((turn * Math.PI) / 180)]
          const [px, py, pz] = toMachine(FIXTURE, { tilt, rotary: 0 }, [across, up, -depth])
          if (Math.hypot(px - x, py - y) < tool) expect(pz).toBeLessThan(found + 0.05)
        }
      },
    ),
    { numRuns: 60 },
  )
})

describe('a level cylinder under an upright tool', () => {
  const body: RoundBody = { of: 'part', name: 'seat', from: 0, to: 100, radius: 30 }
  it('is as high as its chord there', () => {
    expect(heightUnder({ fixture: { pivotHeight: 50 }, tilt: 0, body, swept: at(50, 0), tool: 5 })).toBeCloseTo(80, 6)
    expect(heightUnder({ fixture: { pivotHeight: 50 }, tilt: 0, body, swept: at(50, 25), tool: 5 })).toBeCloseTo(
      50 + Math.sqrt(900 - 400),
      6,
    )
    expect(heightUnder({ fixture: { pivotHeight: 50 }, tilt: 0, body, swept: at(50, 36), tool: 5 })).toBe(
      Number.NEGATIVE_INFINITY,
    )
    expect(heightUnder({ fixture: { pivotHeight: 50 }, tilt: 0, body, swept: at(106, 0), tool: 5 })).toBe(
      Number.NEGATIVE_INFINITY,
    )
  })
  it('needs a stick-out of the wall to go through and the margin', () => {
    const setting = { fixture: FIXTURE, tilt: 0, bodies: [body], window: at(50, 0), tip: 76 }
    expect(stickOutNeeded(setting, 2, 2)).toBeCloseTo(6, 6)
    const held = heldCutter(setting, { diameter: 2, shank: 6, flutes: 6 }, 20, 2)
    expect(held).toMatchObject({ stickOut: 20, by: 'holder', to: 'seat' })
    expect(held.room).toBeCloseTo(16, 6)
    expect(heldCutter(setting, { diameter: 2, shank: 6 }, 3, 2).room).toBeCloseTo(-1, 6)
  })
})

it('needs as much more stick-out as a tilted wall rises under the holder', () => {
  const body: RoundBody = { of: 'part', name: 'seat', from: -200, to: 200, radius: 30 }
  const setting = { fixture: FIXTURE, tilt: 50, bodies: [body], window: at(60, 0), tip: 0 }
  const slim = stickOutNeeded(
    { ...setting, fixture: { ...FIXTURE, holder: { ...FIXTURE.holder, diameter: 10 } } },
    2,
    2,
  )
  const thick = stickOutNeeded(
    { ...setting, fixture: { ...FIXTURE, holder: { ...FIXTURE.holder, diameter: 20 } } },
    2,
    2,
  )
  expect(thick - slim).toBeCloseTo(5 * Math.tan((50 * Math.PI) / 180), 1)
})

it('judges the drill of the entry hole too: its point goes ahead of the cutter by the depth of the point', () => {
  const boost = { at: 180, up: 50, corner: { on: 'cutter', radius: 1.5 } } as const
  const [port] = planPorts(linerOf([boost]), shopWith(), milledAt(47.8, 55.2)).ports
  const { held, drillHeld, entryHole } = port?.windows[0] ?? {}
  expect(drillHeld?.stickOut).toBeGreaterThan(held?.stickOut ?? 0)
  // Both over one wall: the drill stands at one place only, but its point is as much lower as 140° make it.
  const point = (entryHole?.diameter ?? 0) / 2 / Math.tan((70 * Math.PI) / 180)
  expect(drillHeld?.stickOutNeeded).toBeLessThan((held?.stickOutNeeded ?? 0) + point)
  expect(drillHeld?.stickOutNeeded).toBeGreaterThan(20)
})
