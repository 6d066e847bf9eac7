import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { LINER_TEXT, partFrom, sleeveText } from '../route/part-text.ts'
import { planned } from './planned.ts'

const sizes = fc.record({ outside: fc.integer({ min: 30, max: 100 }), wall: fc.integer({ min: 4, max: 12 }) })

describe('a stock that the planner chooses itself', () => {
  it('leaves what cleans up, and never more room there than the case has left to lose', () => {
    let raised = 0
    fc.assert(
      fc.property(sizes, ({ outside, wall }) => {
        const plan = planned(partFrom(sleeveText({ outside: `${outside} g6`, bore: `${outside - 2 * wall} H6` })))
        for (const { kind, margin, verdict } of plan.entries) {
          if (kind === 'face' || margin.case === undefined || verdict !== 'ok') continue
          expect(margin.cleanUp).toBeGreaterThan(-1e-9)
          // The least that cleans up is rounded up by a step of 0.01 on diameter.
          if (margin.cleanUp > 0.006) {
            raised += 1
            expect(margin.cleanUp).toBeLessThan(margin.case + 1e-6)
          }
        }
      }),
      { numRuns: 30 },
    )
    expect(raised).toBeGreaterThan(0)
  })
})

describe('the hardness that an order asks as hardened', () => {
  it.each([455, 471, 483, 499, 512, 526])('is not under the %d HV that the drawing asks after grinding', hardness => {
    const { case: order } = planned(partFrom(LINER_TEXT.replace('min 500 HV', `min ${hardness} HV`)))
    expect(order?.order?.surfaceLeast).toBeGreaterThanOrEqual(hardness)
  })
  it('is never less for a drawing that asks more', () => {
    const asked = (hardness: number): number =>
      planned(partFrom(LINER_TEXT.replace('min 500 HV', `min ${hardness} HV`))).case?.order?.surfaceLeast ?? 0
    const all = [440, 460, 480, 500, 520, 540].map(asked)
    expect(all).toEqual(all.toSorted((a, b) => a - b))
  })
})
