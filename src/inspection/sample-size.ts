import { samplingPlan } from '../handbook/attribute-sampling.ts'
import { rejectableCount, zeroAcceptanceSize } from '../handbook/lot-odds.ts'

/** Up to this many pieces a sample saves nothing: common practice, no source. */
const SMALL_LOT = 25
/** A lot with one bad piece in ten shall not pass: share and confidence where nobody says otherwise, common practice. */
const REJECTABLE = 0.1
const CONFIDENCE = 0.95

export type Sample = { readonly sample: number; readonly plan: string }

/**
 * How many of a lot to measure: every piece of a small lot or of what the fit, the timing or safety hang on; a sample on which no
 * bad piece is accepted for other sizes; ISO 2859-1 at a special level for edges and marks.
 */
export function sampleOf(lot: number, weight: 'critical' | 'major' | 'minor'): Sample {
  if (weight === 'critical' || lot <= SMALL_LOT) return { sample: lot, plan: 'every piece' }
  if (weight === 'minor') {
    const plan = samplingPlan(lot, 'S-3', 4)
    if (plan && !plan.everyPiece) {
      return {
        sample: plan.sampleSize,
        plan: `ISO 2859-1, level S-3, AQL 4.0: accept on ${plan.accept}, reject on ${plan.reject}`,
      }
    }
    return { sample: lot, plan: 'every piece' }
  }
  const bad = rejectableCount.value({ q: REJECTABLE, N: lot })
  const sample = zeroAcceptanceSize(lot, bad, CONFIDENCE)
  return sample >= lot
    ? { sample: lot, plan: 'every piece' }
    : { sample, plan: 'first, last and the rest by serial at random: one bad piece, sort all' }
}
