import type { Plan } from '../../plan/plan.ts'
import type { Order } from './paper-figures.ts'

/** A bore and a window are holes: the smaller limit is met first. */
export function orderOf(plan: Plan, feature: string): Order {
  const holes = new Set([
    'bore',
    ...plan.operations.flatMap(({ shape }) => shape.bore.map(({ name }) => name)),
    ...plan.ports.map(({ name }) => name),
  ])
  return holes.has(feature) ? 'hole' : 'shaft'
}
