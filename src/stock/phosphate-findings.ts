import type { Finding } from '../finding.ts'
import { hardeningChoice } from '../handbook/hardening-choice.ts'
import { MANGANESE_PHOSPHATE } from '../handbook/phosphate.ts'
import { type Part, placeOf } from '../part/part.ts'

/** Manganese phosphate for running in, where the grade takes it badly. */
export function phosphateFindings(part: Part, path: string): readonly Finding[] {
  const choice = hardeningChoice(part.material.grade, 'manganese phosphate')
  if (!choice || choice.choice === 'OK') return []
  return [
    {
      code: 'plating/phosphate',
      severity: 'warning',
      message: `manganese phosphate on ${part.material.grade}: ${choice.why ?? `it forms poorly over ${MANGANESE_PHOSPHATE.chromium} % chromium`}`,
      at: placeOf(part, path),
      hint: 'try a coupon first, or run in without',
    },
  ]
}
