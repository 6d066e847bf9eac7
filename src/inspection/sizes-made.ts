import type { OperationSize } from '../operation-size.ts'
import type { Operation } from '../route/operation.ts'

export type SizesByOperation = ReadonlyMap<number, readonly OperationSize[]>

/** A size with the operation that leaves it so. */
export type Made = { readonly size: OperationSize; readonly by: Operation }

/** The sizes that an operation cuts. The outside of a sawn blank is the bar's own, as bought. */
export const sizesMade = (by: Operation, sizes: SizesByOperation): readonly Made[] =>
  (sizes.get(by.number) ?? [])
    .filter(({ feature }) => !(by.purpose === 'saw-blanks' && feature === 'outside'))
    .map(size => ({ size, by }))

/** The size that each feature is left with: the last of the operations that makes it. */
export function latestSizes(operations: readonly Operation[], sizes: SizesByOperation): readonly Made[] {
  const latest = new Map<string, Made>()
  for (const made of operations.flatMap(operation => sizesMade(operation, sizes))) {
    const { feature, measure, edge, item, of } = made.size
    latest.set([feature, measure, edge, item, of].join(), made)
  }
  return [...latest.values()]
}
