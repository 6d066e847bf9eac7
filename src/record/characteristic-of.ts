import type { Characteristic } from '../inspection/characteristic.ts'
import type { Reading } from '../part/results.ts'
import type { Plan, PlannedOperation } from '../plan/plan.ts'

export type IssuedPlan = Pick<
  Plan,
  | 'part'
  | 'shop'
  | 'batch'
  | 'operations'
  | 'stock'
  | 'axial'
  | 'ports'
  | 'case'
  | 'inspection'
  | 'material'
  | 'fingerprint'
  | 'date'
>

/** As much of a plan as it takes to judge a reading. */
export type PlanToJudge = {
  readonly operations: readonly Pick<PlannedOperation, 'number' | 'process' | 'place' | 'sizes'>[]
  readonly inspection: Pick<Plan['inspection'], 'characteristics'>
  readonly material: Pick<Plan['material'], 'grade'>
}

/** The characteristic that a reading is of: a surface by its size after the operation, or one by its name or number. */
export function characteristicOf(
  { operations, inspection }: Pick<PlanToJudge, 'operations' | 'inspection'>,
  { of, after }: Pick<Reading, 'of' | 'after'>,
): Characteristic | undefined {
  const all = inspection.characteristics
  if (/^\d+$/.test(of)) return all.find(({ number }) => number === Number(of))
  const operation = operations.find(({ number }) => number === after)
  const sizes = operation?.sizes.filter(({ feature, edge, item }) => feature === of && !edge && !item) ?? []
  // A surface goes by its diameter, a length by itself; what else it has, and a port, by the name of the characteristic.
  const size = sizes.find(({ measure }) => measure === 'diameter') ?? (sizes.length === 1 ? sizes[0] : undefined)
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
  { operations, inspection }: Pick<PlanToJudge, 'operations' | 'inspection'>,
  after: number | undefined,
): readonly string[] {
  const sizes = operations.find(({ number }) => number === after)?.sizes ?? []
  const surfaces = sizes.filter(({ measure }) => measure === 'diameter' || measure === 'length')
  const judges = new Set(sizes.map(({ judge }) => judge))
  const names = inspection.characteristics
    .filter(({ operation, number }) => operation === after || judges.has(number))
    .map(({ name }) => name)
  return [...new Set([...surfaces.map(({ feature }) => feature), ...names])]
}
