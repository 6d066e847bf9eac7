import type { OperationSize } from '../../operation-size.ts'
import type { Plan } from '../../plan/plan.ts'
import type { Order } from './paper-figures.ts'

/** How a size is called at the bench: `bore Ø`, `length`, `exhaust top edge`. */
export function featureWords({ feature, measure, edge }: Pick<OperationSize, 'feature' | 'measure' | 'edge'>): string {
  if (edge) return `${feature} ${edge} edge`
  if (measure === 'diameter') return `${feature} Ø`
  return feature === measure ? feature : `${feature} ${measure}`
}

/** A bore and a window are holes: the smaller limit is met first. */
export function orderOf(plan: Plan, feature: string): Order {
  const holes = new Set([
    'bore',
    ...plan.operations.flatMap(({ shape }) => shape.bore.map(({ name }) => name)),
    ...plan.ports.map(({ name }) => name),
  ])
  return holes.has(feature) ? 'hole' : 'shaft'
}
