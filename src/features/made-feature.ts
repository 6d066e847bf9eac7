import type { OperationSize } from '../operation-size.ts'
import type { PlannedFeature } from './feature-plan.ts'

/** A feature with its sizes as its operation must leave them, and as the drawing wants them. */
export type MadeFeature = {
  readonly planned: PlannedFeature
  readonly cut: readonly OperationSize[]
  readonly finished: readonly OperationSize[]
}
