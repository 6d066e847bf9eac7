import { describe, expect, it } from 'vitest'
import { GRIP_LEVERS, slipForce, tiltForce } from '../../src/handbook/holding.ts'
import type { Chuck } from '../../src/shop/shop.ts'
import { demo, OXMERE, planOf } from '../orders/planned-orders.ts'

describe('what holds a part against a cut', () => {
  const soft = { S: 2.25, k: GRIP_LEVERS.jaws.k, c: GRIP_LEVERS.jaws.c, mu_a: 0.13, d_g: 57.27 }
  // Reckoned separately, by a linear programme over the jaws: three soft jaws on a turned diameter of 57.27.
  it.each([
    [Math.hypot(960, 384), 40, 25, 18_304],
    [Math.hypot(463, 185.2), 40, 50, 6351],
  ])('against tilt: %d N at %d before the jaws, %d gripped', (P, a, l_g, wanted) => {
    expect(Math.abs(tiltForce.value({ ...soft, P, h: a + l_g / 2, l_g }) - wanted)).toBeLessThan(2)
  })
  it('against a drill without a stop: 123 N m and 5800 N want 18 823 N a jaw', () => {
    expect(slipForce.value({ S: 2.25, M: 123, T: 5800, mu: 0.28, mu_a: 0.28, d_g: 62 }) / 3).toBeCloseTo(18_823, -1)
  })
})

describe('the demo liner in its chuck', () => {
  const plan = (chuck: Partial<Chuck>, habits = {}) => {
    const { fixture, set } = OXMERE
    const given = { ...fixture, chuck: { diameter: 68, length: 40, ...chuck } }
    const said = 'force' in chuck ? set : new Set([...set].filter(key => key !== '/fixture/chuck/force'))
    return planOf(demo('OX-098-21'), { ...OXMERE, fixture: given, set: said, habits: { ...OXMERE.habits, ...habits } })
  }
  const findingOf = ({ findings }: ReturnType<typeof plan>) =>
    findings.find(({ code }) => code === 'cutting/grip-too-light')

  it('is held by a collet of 18 kN', () => {
    const held = plan({ kind: 'collet', force: 18_000 })
    expect(findingOf(held)).toBeUndefined()
    expect(held.millingGrip?.needed).toBeLessThan(18_000)
    expect(held.millingGrip).not.toHaveProperty('lengthNeeded')
  })

  it('slips where the works presses with less than the force balance asks, and is warned of within the safety of 2.25', () => {
    const { needed = Number.NaN } = plan({ force: 6000 }).millingGrip ?? {}
    const balance = needed / 2.25
    expect(findingOf(plan({ force: balance - 10 }))).toMatchObject({
      severity: 'error',
      message: expect.stringMatching(/: it slips$/),
    })
    expect(findingOf(plan({ force: balance + 10 }))).toMatchObject({
      severity: 'warning',
      message: expect.stringMatching(/, 1\.0 times what holds it and not 2\.25$/),
    })
    expect(findingOf(plan({ force: needed + 10 }))).toBeUndefined()
  })

  it('may slip in jaws of 6 kN that nobody set: a warning', () => {
    expect(findingOf(plan({}))).toMatchObject({ severity: 'warning' })
  })

  it('is held by them over the length that the finding names, and not over less', () => {
    const { lengthNeeded = Number.NaN, needed = 0 } = plan({ force: 6000 }).millingGrip ?? {}
    expect(needed).toBeGreaterThan(6000)
    expect(plan({ force: 6000 }, { leastGrip: lengthNeeded + 0.01 }).millingGrip?.needed).toBeLessThan(6000)
    expect(plan({ force: 6000 }, { leastGrip: lengthNeeded - 0.1 }).millingGrip?.needed).toBeGreaterThan(6000)
  })

  it('that holds nothing of it, or stands over its ports, has another finding', () => {
    for (const faceDistance of [-40, 60, 200]) {
      const { findings, millingGrip } = plan({ force: 18_000, faceDistance })
      expect(findings.map(({ code }) => code)).toContain(faceDistance < 0 ? 'ports/short-grip' : 'ports/grip-on-port')
      expect(millingGrip?.needed ?? 0).toBeGreaterThanOrEqual(0)
    }
  })

  it('is judged by its worst cut: no other of its steps asks more', () => {
    const { millingGrip, operations } = plan({ kind: 'collet', force: 18_000 })
    const steps = operations.find(({ purpose }) => purpose === 'mill-ports')?.steps ?? []
    expect(steps.map(({ force = 0 }) => force)).toContain(millingGrip?.cutForce)
    expect(millingGrip?.tilt).toBeLessThan(millingGrip?.needed ?? 0)
  })
})
