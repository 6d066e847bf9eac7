import { describe, expect, it } from 'vitest'
import { firstOf, plannedWithoutShop } from '../campaign/first-of.ts'

describe('whatever the files say, the program refuses or plans: no fall, no hang, no figure that is none', () => {
  it('300 damaged part, shop and batch files', { timeout: 300_000 }, async () => {
    const { done, faults, refusals } = await firstOf('mutants', 300)
    expect(faults).toEqual([])
    expect(done).toBe(300)
    // The damage is damage: the reader refuses many of them, and for many reasons.
    expect(refusals.size).toBeGreaterThan(20)
  })

  it('60 plausible parts of all kinds, some of them through the whole packet', { timeout: 300_000 }, async () => {
    const { done, faults, statuses } = await firstOf('plausible', 60)
    expect(faults).toEqual([])
    expect(done).toBe(60)
    expect(statuses.get('status 0')).toBeGreaterThan(0)
  })

  /**
   * 1,957 are planned; the floor lies two standard deviations of such a draw (6.5) under that. Of the 43 refused, 17 carburise
   * more of the wall than it bears, seven nitride deeper than the grade is nitrided however close it is turned, three ask for
   * a hardness that the grade does not reach, and three for a plating whose limits are closer than bore and bath.
   */
  it('2,000 plausible parts without a shop file: 97 of 100 are planned without an error', {
    timeout: 1_800_000,
  }, async () => {
    const { done, faults, statuses, refusals } = await plannedWithoutShop(2000)
    expect(faults).toEqual([])
    expect(done).toBe(2000)
    expect(statuses.get('status 0'), JSON.stringify([...refusals])).toBeGreaterThanOrEqual(1944)
  })
})
