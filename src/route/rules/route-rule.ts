import type { Operation } from '../operation.ts'

/** An operation that has no place in the route yet: why it is done is known, why it is done there is not. */
export type Task = Omit<Operation, 'number' | 'because' | 'waits' | 'checks'> & { readonly why: readonly string[] }

/** Why one operation must come before another. A part may waive one by its name; reason and source are printed. */
export type RouteRule = {
  readonly name: string
  readonly because: string
  /** What happens where the order is not kept. */
  readonly otherwise: string
  readonly source: string
  readonly applies: (first: Task, then: Task) => boolean
}
