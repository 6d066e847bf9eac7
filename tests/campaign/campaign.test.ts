import { describe, expect, it } from 'vitest'
import { firstOf, plannedWithoutShop } from './first-of.ts'

/** Many more in `npm run test:long`, and in CI. */
describe('whatever the files say, the program refuses or plans: no fall, no hang, no figure that is none', () => {
  it('30 damaged part, shop and batch files', { timeout: 60_000 }, async () => {
    const { done, faults, refusals } = await firstOf('mutants', 30)
    expect(faults).toEqual([])
    expect(done).toBe(30)
    // The damage is damage: the reader refuses many of them, and for many reasons.
    expect(refusals.size).toBeGreaterThan(5)
  })

  it('12 plausible parts, some of them through the whole packet', { timeout: 60_000 }, async () => {
    const { done, faults, statuses } = await firstOf('plausible', 12)
    expect(faults).toEqual([])
    expect(done).toBe(12)
    expect(statuses.get('status 0')).toBeGreaterThan(0)
  })

  it('60 plausible parts without a shop file: nine of ten are planned without an error', {
    timeout: 60_000,
  }, async () => {
    const { done, faults, statuses } = await plannedWithoutShop(60)
    expect(faults).toEqual([])
    expect(done).toBe(60)
    expect(statuses.get('status 0')).toBeGreaterThanOrEqual(54)
  })
})
