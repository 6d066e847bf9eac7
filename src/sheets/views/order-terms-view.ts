import { grindingCautions, grindingOrder } from '../../orders/grinding-order.ts'
import { hardeningCautions, hardeningOrder } from '../../orders/hardening-order.ts'
import { platingCautions, platingOrder } from '../../orders/plating-order.ts'
import type { Plan, PlannedOperation } from '../../plan/plan.ts'
import { HARDENING_PROCESSES } from '../../process.ts'
import type { PaperFigures } from './paper-figures.ts'

/** The specification behind an order, point by point, so that it can be worked from with the telephone off. */
export type OrderTermsView = {
  readonly points: readonly { readonly number: string; readonly label: string; readonly text: readonly string[] }[]
  readonly cautions: readonly string[]
}

/** Hardening, plating, grinding and honing are ordered by their points; nothing for other work. */
export function orderTermsView(
  plan: Plan,
  operation: PlannedOperation,
  figures: PaperFigures,
): OrderTermsView | undefined {
  const { process } = operation
  const numbered = (points: readonly { readonly label: string; readonly text: readonly string[] }[]) =>
    points.filter(({ text }) => text.length > 0).map((point, index) => ({ number: String(index + 1), ...point }))
  if (HARDENING_PROCESSES.has(process)) {
    return { points: numbered(hardeningOrder(plan, operation, figures)), cautions: hardeningCautions(plan) }
  }
  if (process === 'plate') {
    return { points: numbered(platingOrder(plan, operation, figures)), cautions: platingCautions(plan) }
  }
  if (process === 'grind' || process === 'hone') {
    return { points: numbered(grindingOrder(plan, operation, figures)), cautions: grindingCautions(plan, operation) }
  }
  return undefined
}
