import type { Marked, OutsideOrder } from './order.ts'
import type { OrderedOperation, OrderSource, Visit } from './order-source.ts'
import { type Draft, point } from './say.ts'

/** For whoever heats: pieces of one heat, and what they are of. */
export const oneHeat = ({ source }: Visit): readonly Draft[] =>
  point(
    'Material',
    `${source.grade}. The bar certificate with analysis, cast and heat treatment goes with the parts.`,
    ONE_HEAT,
  )

export const ONE_HEAT = 'One heat in a charge: do not mix heats.'

/** What the order is of, and between whom. */
export function headOf(
  { part, batch, works, firms, grade, operations }: OrderSource,
  first: OrderedOperation,
): Pick<OutsideOrder, 'from' | 'to' | 'part' | 'batch' | 'grade' | 'heat' | 'pieces' | 'which'> {
  const firm = firms.find(({ name }) => name === first.workCentre)
  const marked = operations.some(({ marks, number }) => marks !== undefined && number < first.number)
  return {
    from: works,
    to: { name: first.workCentre, ...firm?.contact },
    part,
    batch: batch.number,
    grade,
    ...(batch.heat !== undefined && { heat: batch.heat }),
    pieces: batch.start,
    which: marked ? whichOf(batch) : [],
  }
}

const whichOf = ({ numbered, extras }: OrderSource['batch']): readonly Marked[] => [
  { from: 1, to: numbered, what: 'pieces' },
  ...extras.map(({ what, marks }) => ({ marks, what: what.split(',')[0] ?? what })),
]
