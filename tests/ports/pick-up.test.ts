import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { clockPosition } from '../../src/clock-position.ts'
import { crownFall, edgePerX, pivotFactor, sidePerRotary, tiltPerStack, xPerTilt } from '../../src/handbook/pick-up.ts'
import { toMachine, type Vector } from '../../src/machine-frame.ts'
import { planPorts } from '../../src/ports/plan-ports.ts'
import type { Fixture } from '../../src/shop/shop.ts'
import { type Asked, FIXTURE, linerOf, milledAt, shopWith } from './liner.ts'

const PORTS: readonly Asked[] = [
  { name: 'exhaust', at: 0, width: 27, bridge: 3 },
  { name: 'main', at: 78, up: 15, width: 17, back: 32, corner: { on: 'bore', radius: 2.8 } },
  { name: 'boost', at: 180, up: 50, corner: { on: 'cutter', radius: 1.5 } },
]
const plan = (fixture: Partial<Fixture> = {}) => planPorts(linerOf(PORTS), shopWith(fixture), milledAt(47.8, 55))

/** Where the ball's tip is when it lies on the cylinder: the ball's middle is a radius and a ball's radius off the axis. */
function tipOver(fixture: Fixture, tilt: number, x: number, radius: number): number {
  // Along the axis until the middle stands at x, found by halving through the fixture's own transform.
  const middle = (depth: number): Vector =>
    toMachine(fixture, { tilt, rotary: 0 }, [radius + fixture.ball / 2, 0, -depth])
  let [low, high] = [-300, 300]
  const rises = middle(1)[0] > middle(0)[0]
  for (let i = 0; i < 80; i++) {
    const depth = (low + high) / 2
    if (middle(depth)[0] < x === rises) low = depth
    else high = depth
  }
  return middle(low)[2] - fixture.ball / 2
}

describe.each(['+X', '-X'] as const)('the touches with the head facing %s', headFaces => {
  const { fixture } = plan({ headFaces })
  const shop = shopWith({ headFaces }).fixture
  it('are a ball against sides, crown and face of the part as it stands', () => {
    const { pickUp } = fixture ?? {}
    expect(pickUp).toMatchObject({ surface: 'seat', diameter: 55, side: 27.5 + 3, crown: 50 + 27.5 })
    // The face at 80 looks toward +X; turned round it stops against a shoulder of the jaws there, which does too. The ball stands before it, its middle half-way up the rim between bore 47.8 and flange 62.
    expect(pickUp?.face.x).toBe(83)
    expect(pickUp?.face.on).toBe(headFaces === '+X' ? 'top face' : 'shoulder in the jaws')
    expect(pickUp?.face.z).toBeCloseTo(50 + (23.9 + 31) / 2 - 3, 9)
  })
  it('lie where the fixture’s own transform puts the part, at every tilt', () => {
    expect(fixture?.tilts).toHaveLength(3)
    for (const { tilt, check } of fixture?.tilts ?? []) {
      expect(check.z).toBeCloseTo(tipOver(shop, tilt, check.x, 27.5), 6)
      expect(check.move).toBeGreaterThan(0)
      expect(check.z + check.fall).toBeCloseTo(tipOver(shop, tilt, check.x + check.move, 27.5), 6)
    }
  })
  it('stay on the surface, off the jaws and the flange', () => {
    for (const { tilt, check } of fixture?.tilts ?? []) {
      const t = (tilt * Math.PI) / 180
      for (const x of [check.x, check.x + check.move]) {
        const along = (x - (50 + 27.5) * Math.sin(t)) / Math.cos(t)
        const depth = headFaces === '+X' ? 80 - along : along - 80
        expect(depth).toBeGreaterThan(4)
        expect(depth).toBeLessThan(headFaces === '+X' ? 82 : 92)
      }
    }
  })
  it('lift the end of the plate that the tilt raises', () => {
    for (const { tilt, blocksUnder } of fixture?.tilts ?? []) {
      if (tilt === 0) expect(blocksUnder).toBe('none')
      // The chuck stands toward -X of the part.
      const height = (x: number): number => {
        const t = (tilt * Math.PI) / 180
        return -x * Math.sin(t)
      }
      if (tilt !== 0) expect(blocksUnder).toBe(height(-50) > height(50) ? 'chuck end' : 'free end')
    }
  })
})

it('reads -10.72 after 40 mm at 15°: the tangent of a printed table, 0.26795', () => {
  expect(crownFall.value({ dX: 40, tilt: 15 })).toBeCloseTo(-40 * 0.26795, 3)
})

it('turns the widest wall up for the touches, where no window is', () => {
  const { fixture, ports } = plan({ positiveRotary: 'Y to Z' })
  const rotary = fixture?.pickUp.rotary ?? 0
  // Through the transform: the azimuth that faces the spindle is the one whose point stands highest.
  const heights = Array.from({ length: 360 }, (_, azimuth) => {
    const phi = (azimuth * Math.PI) / 180
    return toMachine(FIXTURE, { tilt: 0, rotary }, [Math.cos(phi), Math.sin(phi), 0])[2]
  })
  const up = heights.indexOf(Math.max(...heights))
  const azimuths = ports.flatMap(({ windows }) => windows.flatMap(({ outline }) => outline.outside.map(p => p.azimuth)))
  const off = Math.min(...azimuths.map(azimuth => Math.abs(((azimuth - up + 540) % 360) - 180)))
  expect(off).toBeGreaterThan(15)
  expect(fixture?.pickUp.clock).toBe(clockPosition(up))
})

it('finds a pivot from a ball read at two tilts', () => {
  const place = fc.double({ min: -200, max: 200, noNaN: true })
  fc.assert(
    fc.property(place, place, place, place, fc.double({ min: 5, max: 60, noNaN: true }), (px, pz, bx, bz, tilt) => {
      const t = (tilt * Math.PI) / 180
      const [x1, z1] = [px + bx, pz + bz]
      const [x2, z2] = [px + bx * Math.cos(t) + bz * Math.sin(t), pz + bz * Math.cos(t) - bx * Math.sin(t)]
      const k = pivotFactor.value({ tilt })
      expect((x1 + x2) / 2 + k * (z2 - z1)).toBeCloseTo(px, 7)
      expect((z1 + z2) / 2 - k * (x2 - x1)).toBeCloseTo(pz, 7)
    }),
  )
})

// Computed separately with the matrices of the set-up: a port that rises by 10° at Z 85.89962, one that rises by 18° at
// Z 186.13558, both from the pivot, bore radius 10.
describe('what an error of the setting does', () => {
  it('is a little more than the error in X', () => {
    expect(edgePerX.value({ dX: 0.05, beta: 10 })).toBeCloseTo(0.0508, 4)
  })
  it('is the height over the pivot for each radian of tilt', () => {
    expect(xPerTilt.value({ Z: 85.89962, dtilt: 0.01 })).toBeCloseTo(0.01499, 5)
    expect(xPerTilt.value({ Z: 186.13558, dtilt: 0.01 })).toBeCloseTo(0.03249, 5)
  })
  it('is an angle of the bore for the rotary', () => {
    expect((sidePerRotary.value({ r: 10, dA: 0.1 }) / 10) * (180 / Math.PI)).toBeCloseTo(0.1, 9)
  })
  it('is 0.0058° at 10° and 0.0089° at 50° for a hundredth under a bar of 100', () => {
    expect(tiltPerStack.value({ e: 0.01, l: 100, tilt: 10 })).toBeCloseTo(0.0058, 4)
    expect(tiltPerStack.value({ e: 0.01, l: 100, tilt: 50 })).toBeCloseTo(0.0089, 4)
  })
  it('stands beside every window, as the transform itself shifts the window’s middle', () => {
    const { fixture, ports } = plan()
    for (const step of fixture?.order ?? []) {
      const window = ports.find(({ name, at }) => name === step.port && at === step.at)?.windows[step.window - 1]
      const t = (step.tilt * Math.PI) / 180
      // A point of the part at X, Z: one more hundredth of a degree moves it along X by Z of it, along the bore by 1/cos.
      const d = (0.01 * Math.PI) / 180
      const moved = (window?.x ?? 0) * Math.cos(d) + (window?.z ?? 0) * Math.sin(d) - (window?.x ?? 0)
      expect(step.errors.tilt.edge).toBeCloseTo(Math.abs(moved) / Math.cos(t), 4)
      expect(step.errors.x.edge).toBeCloseTo(0.01 / Math.cos(t), 9)
      expect(step.errors.rotary.side).toBeCloseTo(24 * 0.1 * (Math.PI / 180), 9)
    }
  })
})

it('says azimuths as the floor says them, by the clock seen from the head, counter-clockwise from 12', () => {
  // 30° of the face to the hour, common practice.
  expect([0, 90, 180, -90, -75, 78, -78, 345, -0.4, -7.6, 7.4, 359.5].map(clockPosition)).toEqual([
    '12 o’clock',
    '9 o’clock',
    '6 o’clock',
    '3 o’clock',
    'half past 2',
    'about half past 9',
    'about half past 2',
    'half past 12',
    '12 o’clock',
    'about half past 12',
    'about 12 o’clock',
    '12 o’clock',
  ])
})

it('stacks the sine bar of the works', () => {
  const stacks = (sineBar: number) => plan({ sineBar }).fixture?.tilts.map(({ stack }) => Number(stack.toFixed(3)))
  expect(stacks(100)).toEqual([0, 25.882, 76.604])
  // 127 × 0.258819, 127 × 0.766044 of a printed sine table.
  expect(stacks(127)).toEqual([0, 32.87, 97.288])
})
