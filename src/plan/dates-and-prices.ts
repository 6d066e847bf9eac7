import type { BatchRequest } from '../batch/batch.ts'
import { planCalendar } from '../calendar/plan-calendar.ts'
import type { CostSource } from '../cost/cost.ts'
import { planCost } from '../cost/plan-cost.ts'
import type { OutsideOrder } from '../orders/order.ts'
import type { Shop } from '../shop/shop.ts'
import type { Working } from '../working.ts'
import type { Plan, PlannedOperation } from './plan.ts'

type Made = {
  readonly shop: Shop
  readonly request: BatchRequest
  readonly operations: readonly PlannedOperation[]
  readonly orders: readonly OutsideOrder[]
} & Pick<CostSource, 'batch' | 'material'>

/** What a batch costs and when it is done, and the orders with their prices and days. */
export function datesAndPrices({ shop, request: { begins }, operations, orders, batch, material }: Made): Pick<
  Plan,
  'orders' | 'cost' | 'unpriced' | 'calendar' | 'delivery'
> & {
  readonly workings: readonly Working[]
} {
  const { cost, prices, missing, workings } = planCost({ ...shop, operations, orders, batch, material })
  const dated = begins === undefined ? undefined : planCalendar({ ...shop, operations, orders, begins })
  const ofOrder = (number: number) => dated?.delivery.visits.find(({ order }) => order === number)
  return {
    orders: orders.map(order => {
      const price = prices.get(order.number)
      const dates = ofOrder(order.number)
      return { ...order, ...(price && { price }), ...(dates && { sent: dates.sent, due: dates.back }) }
    }),
    ...(cost && { cost }),
    ...(shop.money && missing.length > 0 && { unpriced: missing }),
    ...dated,
    workings,
  }
}
