import { describe, expect, it } from 'vitest'
import { endInRotary } from '../../src/chucking.ts'
import { tilted } from '../../src/machine-frame.ts'
import { demo, OXMERE, planOf } from '../orders/planned-orders.ts'

describe.each(['+X', '-X'] as const)('a liner whose head faces %s', headFaces => {
  const fixture = { ...OXMERE.fixture, headFaces, tiltLimits: [-60, 60] as const }
  const plan = planOf(demo('OX-098-21'), { ...OXMERE, fixture, habits: { ...OXMERE.habits, leastGrip: 4 } })
  const operation = plan.operations.find(({ purpose }) => purpose === 'mill-ports')
  const { grip, pickUp, tilts = [] } = plan.fixture ?? {}
  const held = endInRotary(headFaces)

  it('is held by one end in the route, in the chucking and in what the jaws grip', () => {
    expect(grip?.end).toBe(held)
    expect(operation?.gripsAt).toBe(held)
    expect(operation?.chuckings?.[0]?.end).toBe(held === 'bottom' ? 'top' : 'bottom')
    const surface = held === 'bottom' ? 'seat' : 'flange'
    expect(grip?.surface).toBe(surface)
    expect(operation?.locatedBy).toContain(surface)
    expect(operation?.holding).toContain(held === 'bottom' ? 'top face outward' : 'lower end outward')
    expect(operation?.holding).toContain(surface)
  })

  it('has the jaws over the held end, the rest of it out toward +X', () => {
    const s = headFaces === '+X' ? 1 : -1
    const topStock = -(operation?.shape?.top ?? 0)
    const x = (depth: number): number => 80 - s * (depth + topStock)
    const ends = [x(operation?.shape?.top ?? 0), x(operation?.shape?.bottom ?? 0)]
    expect(grip?.chuckFace).toBeCloseTo(Math.min(...ends) + (grip?.length ?? 0), 9)
    expect(Math.max(...ends)).toBeGreaterThan(grip?.chuckFace ?? 0)
  })

  it('is picked up by a face that looks toward the ball', () => {
    expect(pickUp?.face.x).toBeGreaterThan(80)
    expect(pickUp?.face.on).toBe(held === 'bottom' ? 'top face' : 'shoulder in the jaws')
  })

  it('has blocks under the end of the plate that the tilt lifts', () => {
    for (const { tilt, blocksUnder } of tilts.filter(({ tilt }) => tilt !== 0)) {
      const lifted = tilted([-100, 0, 0], tilt)[2] > 0 ? 'chuck end' : 'free end'
      expect(blocksUnder).toBe(lifted)
    }
    expect(tilts).toHaveLength(3)
  })
})
