import { describe, expect, it } from 'vitest'
import { demo, OXMERE, planOf } from '../orders/planned-orders.ts'

const DEMO = ['OX-098-21', 'OX-098-31', 'OX-105-02', 'OX-112-03', 'OX-131-07']
const drilled = DEMO.flatMap(name => {
  return planOf(demo(name)).operations.flatMap(({ steps, workCentre }) =>
    steps
      .filter(({ action, feed }) => action.startsWith('drill ') && feed > 0)
      .map(step => ({ ...step, part: name, workCentre })),
  )
})

describe('every drill of the demo, whatever it drills', () => {
  it('is one of several kinds: through, blind, in a wall', () => {
    const actions = new Set(drilled.map(({ action }) => action.replace(/,.*/, '')))
    expect(actions.size).toBeGreaterThan(3)
  })

  // Common practice, no source: solid drills in a small works up to 0.2 mm/rev, those with changeable edges 0.12.
  it.each(drilled)('$part: $action is fed no faster than its edges bear', ({ feed, tool }) => {
    const diameter = Number(/drill ([\d.]+)/.exec(tool)?.[1])
    expect(feed).toBeLessThanOrEqual(diameter >= 16 ? 0.12 : 0.2)
  })

  it.each(drilled)('$part: $action says what it pushes with, and takes no more than the motor gives', step => {
    expect(step.force).toBeGreaterThan(0)
    const { power = 0 } = OXMERE.machines.find(({ workCentre }) => workCentre === step.workCentre) ?? {}
    expect(step.power ?? Number.NaN).toBeLessThan(power)
    expect(step.tableFeed).toBeCloseTo(step.feed * step.spindleSpeed, 6)
  })

  it('blind in a piston: two millimetres before it and its depth, at its feed, and the tool back', () => {
    const inside = drilled.find(({ part, action }) => part === 'OX-098-31' && action === 'drill inside')
    const deep = Number(/above the crown's ([\d.]+)/.exec(inside?.remarks.join() ?? '')?.[1])
    expect(inside?.time).toBeCloseTo((2 + deep) / (inside?.tableFeed ?? 0) + 0.03, 6)
  })
})
