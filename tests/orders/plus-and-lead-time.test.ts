import { expect, it } from 'vitest'
import { demo, NO_GRINDERS, ORDERS, planOf, quantitiesOf } from './planned-orders.ts'

it('a plus stands with a figure that is written with one and with no other, and is what its ends differ by', () => {
  const all = ORDERS.flatMap(([, order]) => quantitiesOf(order))
  expect(all.some(({ written }) => written === 'plus')).toBe(true)
  for (const { label, written, plus, least, most } of all) {
    const isWhole = written === 'plus' && least !== undefined && most !== undefined
    expect(plus !== undefined, label).toBe(isWhole)
    if (plus !== undefined && least !== undefined && most !== undefined) expect(plus).toBeCloseTo(most - least, 12)
  }
})

it('pieces that a firm gives back the same day are away for no day', () => {
  const shop = { ...NO_GRINDERS, firms: NO_GRINDERS.firms.map(firm => ({ ...firm, leadTime: 0 })) }
  const { orders } = planOf(demo('OX-105-02'), shop)
  expect(orders.length).toBeGreaterThan(0)
  expect(orders.map(({ leadTime }) => leadTime)).toEqual(orders.map(() => 0))
})
