import type { OutsideOrder } from '../orders/order.ts'
import type { Plan } from '../plan/plan.ts'
import type { SheetToPrint } from './lay-out-document.ts'
import { isShort, orderTermsView, orderView } from './views/order-view.ts'
import type { PaperFigures } from './views/paper-figures.ts'
import { returnView } from './views/return-view.ts'

/** Named by its set. */
type OrderSheet = Omit<SheetToPrint, 'names'>

/** The order of one visit, its specification, and the form that comes back with the pieces. */
export function orderSheets(plan: Plan, order: OutsideOrder, figures: PaperFigures): readonly OrderSheet[] {
  const { number, firm, operations, returns } = order
  const corner = operations.join('+')
  return [
    {
      template: 'order',
      documentType: 'Order, outside work',
      corner,
      heading: `Order ${number}: ${firm}`,
      view: orderView(plan, order, figures),
    },
    ...(isShort(order)
      ? []
      : [
          {
            template: 'order-terms',
            documentType: 'Specification of the order',
            corner,
            heading: `Specification of order ${number}`,
            view: orderTermsView(order, figures),
          },
        ]),
    ...(returns.length === 0
      ? []
      : [
          {
            template: 'return-form',
            documentType: 'Return inspection form',
            corner,
            heading: `Return form of order ${number}`,
            view: returnView(order, figures),
          },
        ]),
  ]
}
