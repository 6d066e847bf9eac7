import type { Plan } from '../plan/plan.ts'
import { chosenOf } from './operation.ts'
import { table } from './table.ts'
import type { View } from './view.ts'

export const route: View = {
  data: ({ part, batch, operations, findings }, { operation }) => ({
    part,
    batch,
    operations: chosenOf(operations, operation),
    findings,
  }),
  text: (plan, { operation }) => {
    const operations = chosenOf(plan.operations, operation)
    return `${heading(plan)}\n${operationTable(operations)}\n${reasons(operations)}`
  },
}

export const heading = ({ part, batch }: Pick<Plan, 'part' | 'batch'>): string =>
  `${part.number} ${part.title}, revision ${part.revision}: ${batch.quantity} wanted, ${batch.start} to start, batch ${batch.number}\n`

function operationTable(operations: Plan['operations']): string {
  return table(
    [{ head: '', align: 'right' }, { head: 'operation' }, { head: 'process' }, { head: 'where' }, { head: 'makes' }],
    operations.map(({ number, name, process, place, workCentre, surfaces }) => [
      String(number),
      name,
      process,
      place === 'house' ? workCentre : 'outside',
      surfaces.join(', '),
    ]),
  )
}

function reasons(operations: Plan['operations']): string {
  return operations
    .map(({ number, name, holding, because }) =>
      [`${number}  ${name}`, `    hold: ${holding}`, ...because.map(reason => `    because ${reason}`)].join('\n'),
    )
    .join('\n')
    .concat('\n')
}
