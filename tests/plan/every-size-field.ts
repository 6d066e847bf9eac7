import type { PlannedOperation } from '../../src/plan/plan.ts'
import type { EveryField } from './every-field-of.ts'

export const EVERY_SIZE_FIELD: EveryField<PlannedOperation['sizes'][number]> = {
  feature: 'bore',
  measure: 'diameter',
  nominal: 2,
  lower: 1,
  upper: 3,
  edge: 'top',
  item: 'bridge',
  across: 'the stream',
  of: 'groove',
  roughness: 0.8,
  drawn: '48 H6',
  places: 3,
  kind: 'bore',
  written: 'hole',
  characteristic: 1,
  judge: 2,
}
