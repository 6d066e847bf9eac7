import type { OperationSize } from '../operation-size.ts'
import type { Operation } from '../route/operation.ts'
import type { Shape } from '../shape.ts'

/** An operation with the sizes it must hold and the part as it comes and goes. */
export type OperationState = {
  readonly operation: Operation
  readonly sizes: readonly OperationSize[]
  readonly before: Shape
  readonly after: Shape
  /** Between roughing and finishing, where one operation does both. */
  readonly roughed?: Shape
}
