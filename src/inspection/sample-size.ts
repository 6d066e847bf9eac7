import { outOfRange } from '../formula.ts'
import { samplingPlan } from '../handbook/attribute-sampling.ts'
import { chanceOfAcceptance, rejectableCount, zeroAcceptanceSize } from '../handbook/lot-odds.ts'
import { fromHandbook, told, worked } from '../known.ts'
import type { Notebook } from '../working.ts'

/** Up to this many pieces a sample saves nothing: common practice, no source. */
const SMALL_LOT = 25
/** A lot with one bad piece in ten shall not pass: share and confidence where nobody says otherwise, common practice. */
const REJECTABLE = 0.1
const CONFIDENCE = 0.95
const SHARE = fromHandbook('common practice, no source')

/** What hangs on a size: fit, timing or safety; the making of the part; looks. */
export type Weight = 'critical' | 'major' | 'minor'
export type Sample = { readonly sample: number; readonly plan: string }

const every = (lot: number): Sample => ({ sample: lot, plan: 'every piece' })

/**
 * How many of a lot to measure: every piece of a small lot or of what the fit, the timing or safety hang on; a sample on which no
 * bad piece is accepted for other sizes; ISO 2859-1 at a special level for edges and marks.
 */
export function sampleOf(lot: number, weight: Weight): Sample {
  const beyondOdds = outOfRange(rejectableCount, { q: REJECTABLE, N: lot }).length > 0
  if (weight === 'critical' || lot <= SMALL_LOT || beyondOdds) return every(lot)
  if (weight === 'minor') {
    const plan = samplingPlan(lot, 'S-3', 4)
    if (!plan || plan.everyPiece) return every(lot)
    const { sampleSize: sample, accept, reject } = plan
    return { sample, plan: `ISO 2859-1, level S-3, AQL 4.0: accept on ${accept}, reject on ${reject}` }
  }
  const sample = zeroAcceptanceSize(lot, rejectableCount.value({ q: REJECTABLE, N: lot }), CONFIDENCE)
  return sample >= lot
    ? every(lot)
    : { sample, plan: 'first, last and the rest by serial at random: one bad piece, sort all' }
}

/** Keeps how likely a bad lot passes each of the samples taken. */
export function workSamples(notebook: Notebook, lot: number, weights: ReadonlySet<Weight>): void {
  for (const weight of weights) {
    const { sample: n } = sampleOf(lot, weight)
    if (n >= lot) continue
    const about = { about: `sample of ${n}, ${weight}` }
    const N = told(worked('pieces started'), { N: lot })
    const D = notebook.use(rejectableCount, { ...told(SHARE, { q: REJECTABLE }), ...N }, about)
    const Ac = weight === 'minor' ? (samplingPlan(lot, 'S-3', 4)?.accept ?? 0) : 0
    notebook.use(chanceOfAcceptance, { ...N, D, ...told(worked('sample and number to accept on'), { n, Ac }) }, about)
  }
}
