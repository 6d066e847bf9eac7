import type { OrderedOperation, OrderSource } from './order-source.ts'

/** Work outside that follows on at one firm is one visit: the pieces go there once. */
export function visitsOf({ operations }: Pick<OrderSource, 'operations'>): readonly (readonly OrderedOperation[])[] {
  const visits: OrderedOperation[][] = []
  for (const [index, operation] of operations.entries()) {
    if (operation.place !== 'outside') continue
    const before = operations[index - 1]
    const last = visits.at(-1)
    if (last && before?.place === 'outside' && before.workCentre === operation.workCentre) last.push(operation)
    else visits.push([operation])
  }
  return visits
}
