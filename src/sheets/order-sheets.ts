import type { OutsideOrder } from '../orders/order.ts'
import type { Plan } from '../plan/plan.ts'
import type { SheetToPrint } from './lay-out-document.ts'
import { orderView } from './views/order-view.ts'
import type { PaperFigures } from './views/paper-figures.ts'

/** Named by its set. */
type OrderSheet = Omit<SheetToPrint, 'names'>

/** The order of one visit: order, specification and the form that comes back with the pieces are one document. */
export function orderSheets(plan: Plan, order: OutsideOrder, figures: PaperFigures): readonly OrderSheet[] {
  return [
    {
      template: 'order',
      documentType: 'Order, outside work',
      corner: order.operations.join('+'),
      heading: `Order ${order.reference}: ${order.firm}`,
      view: orderView(plan, order, figures),
    },
  ]
}
