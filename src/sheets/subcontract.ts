import type { Picture } from '../pictures/picture.ts'
import type { Plan, PlannedOperation } from '../plan/plan.ts'
import { orderSheets } from './order-sheets.ts'
import type { PacketOptions } from './packet.ts'
import { type Printed, printDocument } from './print-document.ts'
import { titleBlock } from './title-block.ts'
import { paperFigures } from './views/paper-figures.ts'

/** The order and specification of one outside operation with its return form, as a document of its own. */
export function subcontract(
  plan: Plan,
  operation: PlannedOperation,
  pictures: ReadonlyMap<string, Picture>,
  options: PacketOptions,
): Promise<Printed> {
  const sheets = orderSheets(plan, operation, paperFigures(options.units))
  return printDocument({ block: titleBlock(plan), sheets, pictures, paper: options.paper }, options)
}
