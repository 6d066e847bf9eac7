import type { Plan } from '../plan/plan.ts'
import { table } from './table.ts'
import type { View } from './view.ts'

export const route: View = {
  data: ({ part, operations, findings }) => ({ part, operations, findings }),
  text: plan => `${heading(plan)}\n${operationTable(plan)}\n${reasons(plan)}`,
}

export const heading = ({ part, batch }: Pick<Plan, 'part' | 'batch'>): string =>
  `${part.number} ${part.title}, revision ${part.revision}: ${batch.quantity} wanted, ${batch.start} to start, batch ${batch.number}\n`

function operationTable({ operations }: Plan): string {
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

function reasons({ operations }: Plan): string {
  return operations
    .map(({ number, name, holding, because }) =>
      [`${number}  ${name}`, `    hold: ${holding}`, ...because.map(reason => `    because ${reason}`)].join('\n'),
    )
    .join('\n')
    .concat('\n')
}
