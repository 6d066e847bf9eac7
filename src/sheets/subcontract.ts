import type { OutsideOrder } from '../orders/order.ts'
import type { Plan } from '../plan/plan.ts'
import { type PacketOptions, printSets } from './packet.ts'
import type { Printed } from './print-document.ts'
import { nameOfOrder, type PacketSet } from './sets.ts'

/** The order and specification of one visit with its return form, as a document of its own. */
export function subcontract(plan: Plan, order: OutsideOrder, options: PacketOptions): Promise<Printed> {
  const isAsked = ({ name }: PacketSet): boolean => name === nameOfOrder(order)
  return printSets(plan, options, { onPaper: isAsked, onScreen: isAsked })
}
