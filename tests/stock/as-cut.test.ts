import { describe, expect, it } from 'vitest'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Shop } from '../../src/shop/shop.ts'
import { judgeAsCut } from '../../src/stock/as-cut.ts'
import { LINER_TEXT, partFrom } from '../route/part-text.ts'
import { planned } from './planned.ts'

const part = partFrom(LINER_TEXT)
const plan = planned(part)
const { operations, entries } = plan
const known = (habits: Partial<Shop['habits']>): Shop => ({
  ...BUILT_IN_SHOP,
  habits: { ...BUILT_IN_SHOP.habits, ...habits },
})
const judged = (facts: Shop) => judgeAsCut({ part, shop: BUILT_IN_SHOP, facts, operations })
const seatOf = (facts: Shop) => judged(facts).find(({ surface }) => surface === 'seat')
const planSeat = entries.find(({ surface }) => surface === 'seat')

describe('sizes as cut', () => {
  it('are to be ground as planned where nothing new is known, with the margins of the plan', () => {
    for (const { surface, operation, margin, verdict } of judged(BUILT_IN_SHOP)) {
      const own = entries.find(entry => entry.surface === surface && entry.operation === operation)
      expect(verdict).toBe('grind as planned')
      expect(margin.cleanUp).toBeCloseTo(own?.margin.cleanUp ?? Number.NaN, 9)
      if (margin.case !== undefined) expect(margin.case).toBeCloseTo(own?.margin.case ?? Number.NaN, 9)
    }
  })

  // Derived: the radius varies by a quarter of the ovality, so what is more eats a quarter of itself of the margin.
  it('lose a quarter of what they are more oval than planned, and choose no stock anew', () => {
    expect((seatOf(known({ ovality: 0.04 }))?.margin.cleanUp ?? 9) - (planSeat?.margin.cleanUp ?? 0)).toBeCloseTo(
      -0.01 / 4,
      9,
    )
  })

  it('are to be set closer where that serves, by as much as is missing', () => {
    const bears = planSeat?.bears?.ovality ?? 0
    const found = seatOf(known({ ovality: bears + 0.02 }))
    expect(found?.verdict).toBe('set closer')
    expect(found?.runout.borne).toBeCloseTo((found?.runout.planned ?? 0) - 0.02 / 4, 9)
  })

  it('cannot clean up where no set-up serves', () => {
    expect(['cannot clean up', 'case too thin']).toContain(seatOf(known({ ovality: 0.3 }))?.verdict)
  })

  it('stand as they are when the facts are those that were planned with', () => {
    const rests = new Map((planSeat?.basis ?? []).map(({ figure, value }) => [figure, Number(value)]))
    const same = seatOf(known({ ovality: rests.get('ovality') ?? 0, bow: rests.get('bow') ?? 0 }))
    expect(same?.margin.cleanUp).toBeCloseTo(planSeat?.margin.cleanUp ?? Number.NaN, 9)
  })
})
