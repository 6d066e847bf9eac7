import { fixed } from '../../figures.ts'
import type { OperationSize } from '../../operation-size.ts'
import type { Plan, PlannedOperation } from '../../plan/plan.ts'
import { featureWords, orderOf } from './feature-words.ts'
import { type PaperFigures, placesFor } from './paper-figures.ts'

/** A size to hold, as two limits; the drawing's own size small beside it, so that nobody works to the wrong one. */
export type SizeRow = {
  readonly what: string
  /** Both, the one that is met first in front. */
  readonly limits: string
  /** µm Ra, or nothing. */
  readonly roughness: string
  readonly drawn: string
}

export const sizeRows = (plan: Plan, operation: PlannedOperation, figures: PaperFigures): readonly SizeRow[] =>
  operation.sizes.map(size => sizeRow(plan, operation.number, size, figures))

function sizeRow(plan: Plan, operation: number, size: OperationSize, figures: PaperFigures): SizeRow {
  const { feature, roughness, drawn } = size
  return {
    what: featureWords(size),
    limits: figures.limits(size, orderOf(plan, feature), placesOf(plan, operation, size)),
    roughness: roughness === undefined ? '' : fixed(roughness, roughness < 1 ? 2 : 1),
    drawn: drawn === undefined ? '' : figures.drawn(drawn),
  }
}

/** Never more places than the gauge reads: the gauge of the characteristic that checks this size here. */
function placesOf({ inspection }: Plan, operation: number, size: OperationSize): number {
  const near = (a: number | undefined, b: number) => a !== undefined && Math.abs(a - b) < 1e-6
  const checked = inspection.characteristics.find(
    ({ operation: at, feature, lower, upper }) =>
      at === operation && feature === size.feature && near(lower, size.lower) && near(upper, size.upper),
  )
  return checked?.places ?? placesFor(size)
}
