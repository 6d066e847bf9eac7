import type { Plan, PlannedOperation } from '../../plan/plan.ts'
import { isColumn } from '../work-groups.ts'
import { checkRow } from './check-rows.ts'
import type { PaperFigures } from './paper-figures.ts'
import { whereOf } from './route-card-view.ts'

/** A line at the foot of a sheet: what is counted, sent, received or looked at before the pieces go on. */
export type SlipRow = {
  readonly number: string
  readonly name: string
  readonly where: string
  /** What to look at. */
  readonly look: string
}

export const slipRows = (
  plan: Plan,
  operations: readonly PlannedOperation[],
  figures: PaperFigures,
): readonly SlipRow[] =>
  operations.map(operation => ({
    number: String(operation.number),
    name: operation.name,
    where: operation.place === 'outside' ? whereOf(operation) : '',
    look: operation.process === 'inspect' ? looks(plan, operation, figures).join('; ') : '',
  }))

function looks(plan: Plan, { number }: PlannedOperation, figures: PaperFigures): readonly string[] {
  const here = plan.inspection.characteristics.filter(({ operation }) => operation === number)
  // A coupon is read where the pieces are.
  const lines = here.filter(one => !isColumn(one) && !one.plan.includes('coupon'))
  return [
    ...lines.map(one => {
      const { name, unit, limits, gauge } = checkRow(plan, one, figures)
      return unit === '' ? name : `${name} ${limits} ${unit}, ${gauge}`
    }),
    ...(here.some(isColumn) ? ['sizes: inspection sheet'] : []),
  ]
}
