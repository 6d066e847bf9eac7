import type { Operation, Purpose } from './operation.ts'

/** Orders looked at: past these, what differs is only where a bench job stands. */
const MOST_LOOKED_AT = 24

type Ordered = Pick<Operation, 'number' | 'purpose' | 'waits'>

/**
 * Other orders that every rule allows, nearest to the route first: each differs from one before it by two neighbours that
 * change places. Every order that the rules allow can be reached so, and neighbours that no wait holds no chain of waits holds.
 */
export function otherOrders(operations: readonly Ordered[]): readonly (readonly Purpose[])[] {
  const tied = new Set(
    operations.flatMap(({ number, waits }) =>
      waits.flatMap(({ side, operation }) => (side === 'before' ? [`${number} ${operation}`] : [])),
    ),
  )
  const seen = new Set([keyOf(operations)])
  const queue: (readonly Ordered[])[] = [operations]
  const found: (readonly Ordered[])[] = []
  for (const order of queue) {
    for (const [index, first] of order.entries()) {
      const then = order[index + 1]
      if (!then || tied.has(`${first.number} ${then.number}`)) continue
      const swapped = order.with(index, then).with(index + 1, first)
      if (seen.has(keyOf(swapped)) || found.length >= MOST_LOOKED_AT) continue
      seen.add(keyOf(swapped))
      queue.push(swapped)
      found.push(swapped)
    }
  }
  return found.map(order => order.map(({ purpose }) => purpose))
}

const keyOf = (order: readonly Ordered[]): string => order.map(({ number }) => number).join(' ')
