import type { Process } from '../process.ts'
import type { Operation } from '../route/operation.ts'
import type { Characteristic } from './characteristic.ts'

/** A furnace or a bath moves every surface. */
const MOVES_ALL: ReadonlySet<Process> = new Set([
  'stress-relieve',
  'nitride',
  'case-harden',
  'induction-harden',
  'plate',
])
/** Leaves the sizes of surfaces as they are. */
const LEAVES: ReadonlySet<Process> = new Set(['inspect', 'mark', 'deburr'])

/**
 * Nothing is measured twice with nothing changed between: what the inspector has read before, on as many pieces, by a gauge as
 * fine and to limits no wider, names that reading.
 */
export function withReadBefore(
  characteristics: readonly Characteristic[],
  operations: readonly Operation[],
): readonly Characteristic[] {
  return characteristics.map((one, index) => {
    const before = characteristics
      .slice(0, index)
      .find(earlier => isSameReading(earlier, one) && !isChanged(one, earlier.operation, operations))
    return before ? { ...one, readAt: before.number } : one
  })
}

function isSameReading(earlier: Characteristic, later: Characteristic): boolean {
  const plain = ({ name }: Characteristic): string => name.replace(/, finished$/, '')
  return (
    [earlier, later].every(({ stage, unit }) => stage !== 'in-process' && unit !== '-') &&
    isEarlier(earlier, later) &&
    earlier.feature === later.feature &&
    earlier.unit === later.unit &&
    plain(earlier) === plain(later) &&
    earlier.sample >= later.sample &&
    earlier.uncertainty <= later.uncertainty &&
    isWithin(earlier, later)
  )
}

/** From one firm straight to the next: read as the work comes back, it need not be read again as it leaves. */
const isEarlier = (earlier: Characteristic, later: Characteristic): boolean =>
  earlier.operation < later.operation ||
  (earlier.operation === later.operation && earlier.stage === 'on-return' && later.stage === 'before-sending')

/** Whoever keeps the earlier limits keeps the later ones. */
const isWithin = ({ accept: a }: Characteristic, { accept: b }: Characteristic): boolean =>
  (a.lower ?? Number.NEGATIVE_INFINITY) >= (b.lower ?? Number.NEGATIVE_INFINITY) &&
  (a.upper ?? Number.POSITIVE_INFINITY) <= (b.upper ?? Number.POSITIVE_INFINITY)

function isChanged(
  { feature, operation: until }: Characteristic,
  from: number,
  operations: readonly Operation[],
): boolean {
  const ends = feature === 'length' ? ['length', 'top', 'bottom'] : [feature]
  return operations.some(
    ({ number, process, surfaces }) =>
      number > from &&
      number <= until &&
      (MOVES_ALL.has(process) || (!LEAVES.has(process) && surfaces.some(surface => ends.includes(surface)))),
  )
}
