import type { OutsideOrder } from '../orders/order.ts'
import { drawPictures } from '../pictures/draw-pictures.ts'
import type { Plan } from '../plan/plan.ts'
import { orderSheets } from './order-sheets.ts'
import type { PacketOptions } from './packet.ts'
import { type Printed, printDocument } from './print-document.ts'
import { titleBlock } from './title-block.ts'
import { paperFigures } from './views/paper-figures.ts'

/** The order and specification of one visit with its return form, as a document of its own. */
export function subcontract(plan: Plan, order: OutsideOrder, options: PacketOptions): Promise<Printed> {
  const { paper, units, typeface } = options
  const sheets = orderSheets(plan, order, paperFigures(units))
  const pictures = drawPictures(plan, typeface.measure, units)
  return printDocument({ block: titleBlock(plan), sheets, pictures, paper }, options)
}
