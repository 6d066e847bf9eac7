import type { Characteristic } from '../inspection/characteristic.ts'
import type { Reading } from '../part/results.ts'
import type { Plan } from '../plan/plan.ts'

export type IssuedPlan = Pick<
  Plan,
  'part' | 'shop' | 'batch' | 'operations' | 'stock' | 'case' | 'inspection' | 'material' | 'fingerprint' | 'date'
>

/** The characteristic that a reading is of: a surface by its size after the operation, or one by its name or number. */
export function characteristicOf(
  { operations, inspection }: Pick<IssuedPlan, 'operations' | 'inspection'>,
  { of, after }: Pick<Reading, 'of' | 'after'>,
): Characteristic | undefined {
  const all = inspection.characteristics
  if (/^\d+$/.test(of)) return all.find(({ number }) => number === Number(of))
  const operation = operations.find(({ number }) => number === after)
  const size = operation?.sizes.find(({ feature, edge, item }) => feature === of && !edge && !item)
  if (size) return all.find(({ number }) => number === size.judge)
  // By its name: where it is measured, or at the checks up to the next operation that changes anything.
  const named = all.filter(({ name }) => name === of)
  if (after === undefined) return named.length === 1 ? named[0] : undefined
  const next =
    operations.find(({ number, sizes }) => number > after && sizes.length > 0)?.number ?? Number.POSITIVE_INFINITY
  return named.find(characteristic => characteristic.operation >= after && characteristic.operation <= next)
}

/** What could have been meant: surfaces with a size after the operation, and names of what is measured there. */
export function measuredAfter(
  { operations, inspection }: Pick<IssuedPlan, 'operations' | 'inspection'>,
  after: number | undefined,
): readonly string[] {
  const sizes = operations.find(({ number }) => number === after)?.sizes ?? []
  const names = inspection.characteristics.filter(({ operation }) => operation === after).map(({ name }) => name)
  return [...new Set([...sizes.map(({ feature }) => feature), ...names])]
}
