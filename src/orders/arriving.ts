import { writtenAs } from '../place.ts'
import type { Ladder } from '../stock/stock.ts'
import type { Arriving } from './order.ts'
import type { OrderSource } from './order-source.ts'
import { length } from './quantity.ts'

const ON_ARRIVAL = 'on arrival'

/** What a surface is measured by: the end faces together make the length. */
export const sizeLabel = ({ surface, kind }: Pick<Ladder, 'surface' | 'kind'>): string =>
  kind === 'face' ? 'length' : `${surface} Ø`

/** Every surface, or those named, as it stands when operation `number` begins. */
export function arriving(
  { ladders }: Pick<OrderSource, 'ladders'>,
  number: number,
  named?: readonly string[],
): readonly Arriving[] {
  const wanted = ladders.filter(({ surface }) => named === undefined || named.includes(surface))
  const rows = wanted.flatMap(({ surface, kind, states }): readonly Arriving[] => {
    const state = states.findLast(({ operation }) => operation < number)
    if (!state) return []
    return [
      {
        ...length(
          'given',
          sizeLabel({ surface, kind }),
          { least: state.lower, most: state.upper },
          { state: ON_ARRIVAL, places: state.places, written: writtenAs(kind) },
        ),
        operation: state.operation,
        after: state.name,
      },
    ]
  })
  // Both end faces tell of one length: as the later cut left it.
  return rows.filter(row => !rows.some(other => other.label === row.label && later(other, row, rows)))
}

const later = (other: Arriving, row: Arriving, rows: readonly Arriving[]): boolean =>
  other.operation > row.operation || (other.operation === row.operation && rows.indexOf(other) > rows.indexOf(row))
