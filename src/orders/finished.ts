import { placesShowing } from '../decimal-places.ts'
import type { Characteristic } from '../inspection/characteristic.ts'
import type { PlacedSize } from '../inspection/size-places.ts'
import { featureWords } from '../operation-size.ts'
import type { Finished, Quantity, Returned } from './order.ts'
import type { OrderedOperation, OrderSource } from './order-source.ts'
import { length } from './quantity.ts'

/** What every operation of the visit must leave: its sizes, then form and roughness, each with the pair that we judge by. */
export function finishedSizes(source: OrderSource, operations: readonly OrderedOperation[]): readonly Finished[] {
  return operations.flatMap((operation, index) => {
    const after = operations.slice(index + 1)
    const made = operation.sizes.filter(({ feature }) => operation.surfaces.includes(feature))
    return [
      ...made.map(size => sizeAsked(source, operation, size, after)),
      ...formAsked({ source, operation, sizes: made, after }),
    ]
  })
}

function sizeAsked(
  source: OrderSource,
  operation: OrderedOperation,
  size: PlacedSize,
  after: readonly OrderedOperation[],
): Finished {
  const judge = source.characteristics.find(({ number }) => number === size.judge)
  const ends = { least: judge?.accept.lower ?? size.lower, most: judge?.accept.upper ?? size.upper }
  return {
    ...length('asked', featureWords(size), ends, {
      state: operation.name,
      places: size.places,
      written: size.written,
    }),
    ...whereFrom(source, operation, judge, size.characteristic),
    limits: { least: size.lower, most: size.upper },
    onTheWay: after.some(({ sizes }) =>
      sizes.some(({ feature, measure }) => feature === size.feature && measure === size.measure),
    ),
  }
}

/** Roundness, run-out, flatness, roughness: what is measured at the operation and is none of its sizes. */
function formAsked({
  source,
  operation,
  sizes,
  after,
}: {
  readonly source: OrderSource
  readonly operation: OrderedOperation
  readonly sizes: readonly PlacedSize[]
  readonly after: readonly OrderedOperation[]
}): readonly Finished[] {
  const here = source.characteristics.filter(
    ({ operation: at, stage }) => at === operation.number && stage === 'in-process',
  )
  return here
    .filter(
      ({ number, upper }) => upper !== undefined && !sizes.some(({ characteristic }) => characteristic === number),
    )
    .map(one => {
      const { accept, lower, upper = 0, unit, name } = one
      const ends = {
        ...(lower !== undefined && { least: accept.lower ?? lower }),
        most: accept.upper ?? upper,
      }
      const quantity: Quantity = {
        ...length('asked', name, ends, { state: operation.name, places: placesShowing(ends.most) }),
        unit,
      }
      return {
        ...quantity,
        ...whereFrom(source, operation, one, one.number),
        limits: { ...(lower !== undefined && { least: lower }), most: upper },
        onTheWay: after.some(({ surfaces }) => surfaces.includes(one.feature)),
      }
    })
}

const whereFrom = (
  { batch }: OrderSource,
  { number }: OrderedOperation,
  judge: Characteristic | undefined,
  characteristic: number | undefined,
) => ({
  operation: number,
  pieces: judge?.sample ?? batch.start,
  ...(characteristic !== undefined && { characteristic }),
  ...(judge && { gauge: judge.gauge }),
})

/** The readings that prove them. What is worked over again in the same visit is the firm's own affair. */
export const finishedReturns = (finish: readonly Finished[]): readonly Omit<Returned, 'number'>[] =>
  finish
    .filter(({ onTheWay }) => !onTheWay)
    .map(({ operation: _, limits: __, onTheWay: ___, pieces, ...one }) => ({ ...one, of: 'piece', readings: pieces }))
