import { type Placed, placesFor } from '../decimal-places.ts'
import type { Limits } from '../limits.ts'
import type { OperationSize } from '../operation-size.ts'
import { type PlaceKind, placeKind, type Written, writtenAs } from '../place.ts'
import type { Operation } from '../route/operation.ts'
import type { Ladder } from '../stock/stock.ts'
import type { Characteristic } from './characteristic.ts'

/** A size with how every paper writes it. */
export type PlacedSize = OperationSize & Placed & { readonly kind: PlaceKind; readonly written: Written }
export type PlacedLadder = Omit<Ladder, 'states'> & { readonly states: readonly (Ladder['states'][number] & Placed)[] }

/** A size that an operation leaves is written as the gauge reads that judges it, there or at the next check. */
export const withPlaces = (
  part: Parameters<typeof placeKind>[0],
  { number, axialLocator }: Pick<Operation, 'number' | 'axialLocator'>,
  sizes: readonly OperationSize[],
  characteristics: readonly Characteristic[],
): readonly PlacedSize[] =>
  sizes.map(size => {
    const kind = placeKind(part, size.feature)
    return {
      ...size,
      kind,
      // Ground from the face that locates it, a depth shrinks.
      written: axialLocator && size.measure === 'depth' ? 'shaft' : writtenAs(kind, size.measure),
      places: placesRead(characteristics, number, [size.feature], size),
    }
  })

/** The same for what every surface goes through; a face is judged by the length that it is ground to. */
export const withLadderPlaces = (
  ladders: readonly Ladder[],
  characteristics: readonly Characteristic[],
): readonly PlacedLadder[] =>
  ladders.map(ladder => {
    const features = ladder.kind === 'face' ? [ladder.surface, 'length'] : [ladder.surface]
    const states = ladder.states.map(state => ({
      ...state,
      places: placesRead(characteristics, state.operation, features, state),
    }))
    return { ...ladder, states }
  })

function placesRead(
  characteristics: readonly Characteristic[],
  made: number,
  features: readonly string[],
  size: Limits,
): number {
  const judging = characteristics
    .filter(({ operation, feature, unit }) => operation >= made && unit === 'mm' && features.includes(feature))
    .filter(({ lower, upper }) => same(lower, size.lower) && same(upper, size.upper))
    .toSorted((a, b) => a.operation - b.operation)
  return judging[0]?.places ?? placesFor(size)
}

const same = (a: number | undefined, b: number): boolean => a !== undefined && Math.abs(a - b) < 1e-6
