import { describe, expect, it } from 'vitest'
import { withMeasuring } from '../../src/cutting/operation-time.ts'
import { demoPlan } from '../sheets/demo-packet.ts'

/** Minutes a piece in a small works, element by element, and ten in a hundred for rest and trouble: common practice, no source. */
const SMALL_SHOP = { 'rough-turn': 12.0, 'finish-turn': 17.3, 'grind-outside': 8.0, 'final-inspection': 34.6 } as const

describe('the times of the demo liner', () => {
  const { operations } = demoPlan()

  it.each(Object.entries(SMALL_SHOP))('%s takes %d min, give or take a third', (purpose, usual) => {
    const each = operations.find(operation => operation.purpose === purpose)?.time.each ?? 0
    expect(each).toBeGreaterThan((usual * 2) / 3)
    expect(each).toBeLessThan((usual * 4) / 3)
  })

  it('are none for what goes outside', () => {
    for (const { place, time } of operations)
      if (place === 'outside') expect(time).toEqual({ setup: 0, each: 0, batch: 0 })
  })
})

it('measuring and the allowance come on every piece, and not on the setting up', () => {
  // By hand: 1.1 × (5 + 2) = 7.7; 20 + 10 × 7.7 = 97.
  const { setup, each, batch } = withMeasuring({ setup: 20, each: 5, batch: 70 }, 2, 10)
  expect([setup, each, batch].map(value => value.toFixed(6))).toEqual(['20.000000', '7.700000', '97.000000'])
})
