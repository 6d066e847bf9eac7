import { expect, it } from 'vitest'
import { demo, orderFor, planOf, quantityOf } from './planned-orders.ts'

it('gives the plater a chamfer in tenths, as a drawing does: common practice, no source', () => {
  const order = orderFor(planOf(demo('OX-105-02')), 'plate')
  expect(quantityOf(order, 'chamfer for plating')).toMatchObject({ places: 1, standing: 'given' })
})
