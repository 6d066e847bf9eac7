import { drawPictures } from '../pictures/draw-pictures.ts'
import type { Plan, PlannedOperation } from '../plan/plan.ts'
import { orderSheets } from './order-sheets.ts'
import type { PacketOptions } from './packet.ts'
import { type Printed, printDocument } from './print-document.ts'
import { titleBlock } from './title-block.ts'
import { paperFigures } from './views/paper-figures.ts'

/** The order and specification of one outside operation with its return form, as a document of its own. */
export function subcontract(plan: Plan, operation: PlannedOperation, options: PacketOptions): Promise<Printed> {
  const { paper, units, typeface } = options
  const sheets = orderSheets(plan, operation, paperFigures(units))
  const pictures = drawPictures(plan, typeface.measure, units)
  return printDocument({ block: titleBlock(plan), sheets, pictures, paper }, options)
}
