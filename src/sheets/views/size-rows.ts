import { fixed } from '../../figures.ts'
import { featureWords } from '../../operation-size.ts'
import type { PlannedOperation } from '../../plan/plan.ts'
import type { PaperFigures } from './paper-figures.ts'

/** A size to hold, as two limits; the drawing's own size small beside it, so that nobody works to the wrong one. */
export type SizeRow = {
  readonly what: string
  /** Both, the one that is met first in front. */
  readonly limits: string
  /** µm Ra, or nothing. */
  readonly roughness: string
  readonly drawn: string
}

export const sizeRows = (operation: PlannedOperation, figures: PaperFigures): readonly SizeRow[] =>
  operation.sizes.map(size => sizeRow(size, figures))

function sizeRow(size: PlannedOperation['sizes'][number], figures: PaperFigures): SizeRow {
  const { roughness, drawn, places, written } = size
  return {
    what: featureWords(size),
    limits: figures.limits(size, written, places),
    roughness: roughness === undefined ? '' : fixed(roughness, roughness < 1 ? 2 : 1),
    drawn: drawn === undefined ? '' : figures.drawn(drawn),
  }
}
