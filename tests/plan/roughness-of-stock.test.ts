import { describe, expect, it } from 'vitest'
import { demo, OXMERE, planOf } from '../orders/planned-orders.ts'

/** Ridges that a feed leaves in theory, µm: f² / 8r. Source: geometry. */
const ridges = (feed: number, nose: number): number => (1000 * feed ** 2) / (8 * nose)

describe('the roughness that a stock is planned for is the one that the feed leaves (common practice, no source)', () => {
  it.each([
    // Fine bored for honing: Rz 6.3 (memory: Kosilova & Meshcheryakov, vol. 1).
    ['OX-112-03', 'bore', 6.3],
    // The works leaves Rz 8 by its own habit.
    ['OX-098-21', 'bore', OXMERE.habits.turnedRoughness],
    ['OX-098-21', 'seat', OXMERE.habits.turnedRoughness],
  ] as const)(
    '%s, %s: within Rz %d even where half as much again is measured as the nose would leave',
    (name, surface, Rz) => {
      const plan = planOf(demo(name))
      const turned = plan.operations.find(({ purpose }) => purpose === 'finish-turn' || purpose === 'turn')
      const step = turned?.steps?.find(({ action, feature }) => feature === surface && /^finish/.test(action))
      const nose = OXMERE.tools.find(tool => tool.name === step?.tool)
      if (!step?.feed || !nose || !('noseRadius' in nose)) throw new Error('no finishing cut')
      expect(1.5 * ridges(step.feed, nose.noseRadius)).toBeLessThanOrEqual(Rz + 1e-9)
      const rests = plan.stock.find(entry => entry.surface === surface)?.basis ?? []
      expect(rests.find(({ figure }) => figure === 'roughness before')?.value).toBe(Rz)
    },
  )
})
