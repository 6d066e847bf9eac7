import type { Plan, PlannedOperation } from '../plan/plan.ts'
import { operationOf } from './operation.ts'
import { heading } from './route.ts'
import type { View } from './view.ts'

/** One operation: why it is done, and the rules that hold it after and before others, each with what happens otherwise. */
export const routeWhy = (number: number): View => ({
  data: ({ part, batch, operations, findings }) => ({
    part,
    batch,
    operation: operationOf(operations, number),
    findings,
  }),
  text: plan => {
    const operation = operationOf(plan.operations, number)
    const { name, because, waits, checks = [] } = operation
    // What the rules below say is not said twice.
    const own = because.filter(reason => !waits.some(wait => reason.endsWith(`: ${wait.because}`)))
    return [
      `${heading(plan)}\n${number}  ${name}`,
      ...own.map(reason => `    ${reason}`),
      ...held(plan, operation),
      ...checks.map(({ kind, of, because: why }) => `\n${kind} of ${of.join(', ')}\n    ${why}`),
      '',
    ].join('\n')
  },
})

const held = ({ operations }: Plan, { waits }: PlannedOperation): readonly string[] =>
  waits.map(({ side, operation, rule, because, otherwise, source }) =>
    [
      `\n${side} ${operation}  ${operationOf(operations, operation).name}`,
      `    because ${because}`,
      `    otherwise ${otherwise}`,
      `    rule ${rule}: ${source}`,
    ].join('\n'),
  )
