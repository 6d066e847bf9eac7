import type { Characteristic } from '../inspection/characteristic.ts'
import type { Plan, PlannedOperation } from '../plan/plan.ts'
import type { SheetToPrint } from './lay-out-document.ts'
import { inspectionView } from './views/inspection-view.ts'
import { orderTermsView } from './views/order-terms-view.ts'
import { orderView } from './views/order-view.ts'
import type { PaperFigures } from './views/paper-figures.ts'

/** The order of one outside operation, which stands alone, and the form that comes back with the pieces. */
export function orderSheets(plan: Plan, operation: PlannedOperation, figures: PaperFigures): readonly SheetToPrint[] {
  const { number, name } = operation
  const corner = String(number)
  const here = toReturn(plan, operation)
  const terms = orderTermsView(plan, operation, figures)
  return [
    {
      template: 'order',
      documentType: 'Order, outside work',
      corner,
      heading: `Order: ${name}`,
      view: orderView(plan, operation, figures),
    },
    ...(terms === undefined
      ? []
      : [
          {
            template: 'order-terms',
            documentType: 'Specification of the order',
            corner,
            heading: `Specification: ${name}`,
            view: terms,
          },
        ]),
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

/** What the firm measures: the sizes of its own operation, or where it makes none, what we look at when the work is back. */
function toReturn({ operations, inspection }: Plan, { number, purpose }: PlannedOperation): readonly Characteristic[] {
  // The two heats beside a plating are one visit with it: its form is theirs.
  if (purpose === 'relieve-for-plating' || purpose === 'bake-after-plating') return []
  const at = (where: number | undefined) => inspection.characteristics.filter(({ operation }) => operation === where)
  const back = operations.find(check => check.number > number && check.guards?.includes(purpose))
  const own = at(number)
  return own.length > 0 ? own : at(back?.number)
}
