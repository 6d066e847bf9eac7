import type { Plan, PlannedOperation } from '../plan/plan.ts'
import type { SheetToPrint } from './lay-out-document.ts'
import { inspectionView } from './views/inspection-view.ts'
import { orderView } from './views/order-view.ts'
import type { PaperFigures } from './views/paper-figures.ts'

/** The order of one outside operation, which stands alone, and the form that comes back with the pieces. */
export function orderSheets(plan: Plan, operation: PlannedOperation, figures: PaperFigures): readonly SheetToPrint[] {
  const { number, name } = operation
  const corner = String(number)
  const here = plan.inspection.characteristics.filter(characteristic => characteristic.operation === number)
  return [
    {
      template: 'order',
      documentType: 'Order, outside work',
      corner,
      heading: `Order: ${name}`,
      view: orderView(plan, operation, figures),
    },
    ...(here.length === 0
      ? []
      : [
          {
            template: 'return-form',
            documentType: 'Return inspection form',
            corner,
            heading: `Return: ${name}`,
            view: inspectionView(plan, here, figures),
          },
        ]),
  ]
}
