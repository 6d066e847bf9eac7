import { type Formula, formula, type Input } from '../formula.ts'
import type { Millimetre, MillimetrePerRevolution } from '../units.ts'
import { PROCESS_LIMITS_SOURCE } from './process-limits.ts'

/**
 * Radial plunges with an insert, in steel of 300 HV: half as much feed again in aluminium, a fifth in iron. A groove as wide as
 * its insert is one plunge, its width then within ±0.03; a closer one is roughed in the middle by a narrower insert and each
 * flank finished from the top to the floor. The widest row serves every wider groove, cut side by side.
 */
export type GroovingRow = {
  readonly insert: Millimetre
  readonly feed: MillimetrePerRevolution
  /** Depth in one plunge, and with pecks. */
  readonly depth: Millimetre
  readonly pecked: Millimetre
  /** Least bore that its tool goes into. */
  readonly leastBore: Millimetre
}

export const GROOVING: {
  readonly source: string
  readonly rows: readonly [GroovingRow, ...GroovingRow[]]
  readonly speedShare: number
  readonly dwell: number
  readonly plungeWidth: Millimetre
  readonly narrower: Millimetre
  readonly feedFactor: { readonly iron: number; readonly aluminium: number }
} = {
  source: PROCESS_LIMITS_SOURCE,
  rows: [
    { insert: 0.5, feed: 0.02, depth: 1, pecked: 1.6, leastBore: 8 },
    { insert: 0.8, feed: 0.02, depth: 1, pecked: 1.6, leastBore: 8 },
    { insert: 1, feed: 0.035, depth: 2, pecked: 3, leastBore: 10 },
    { insert: 1.2, feed: 0.035, depth: 2.4, pecked: 3.6, leastBore: 10 },
    { insert: 1.5, feed: 0.05, depth: 3, pecked: 5, leastBore: 12 },
    { insert: 2, feed: 0.07, depth: 6, pecked: 12, leastBore: 16 },
    { insert: 2.5, feed: 0.09, depth: 10, pecked: 20, leastBore: 20 },
    { insert: 3, feed: 0.09, depth: 10, pecked: 20, leastBore: 20 },
  ],
  /** Of the cutting speed of turning. */
  speedShare: 0.65,
  /** Turns at the floor. */
  dwell: 2,
  /** A width with less tolerance than this is not left by one plunge. */
  plungeWidth: 0.06,
  /** How much narrower the insert then is, at least. */
  narrower: 0.2,
  feedFactor: { iron: 1.2, aluminium: 1.5 },
}

/** Least wall left under a groove: the larger of mm and a share of the wall; least land beside it: of mm and a share of its depth. */
export const GROOVE_LIMITS = { wall: 1, wallShare: 0.4, land: 1, landShare: 1 } as const

const SOURCE = 'derived: both flanks and the floor grow out of the metal'
const g: Input<'mm'> = { meaning: 'growth of a treated surface, per side', unit: 'mm' }

/** The lower limit takes the most growth, the upper the least. */
export const grooveWidthAsCut: Formula<{ b: 'mm'; g: 'mm' }, 'mm'> = formula({
  symbol: 'b_t',
  meaning: 'width of a groove as it is cut before hardening',
  unit: 'mm',
  expression: 'b + 2 * g',
  inputs: { b: { meaning: 'limit of the finished width', unit: 'mm', over: 0 }, g },
  source: SOURCE,
  example: { given: { b: 2.4, g: 0.014 }, gives: 2.428 },
  value: ({ b, g }) => b + 2 * g,
})

/** Of a groove in the outside; one in a bore is cut larger by as much. */
export const grooveFloorAsCut: Formula<{ d: 'mm'; g: 'mm' }, 'mm'> = formula({
  symbol: 'd_t',
  meaning: 'floor of a groove in the outside as it is cut before hardening',
  unit: 'mm',
  expression: 'd - 2 * g',
  inputs: { d: { meaning: 'limit of the finished floor', unit: 'mm', over: 0 }, g },
  source: SOURCE,
  example: { given: { d: 52.326, g: 0.008 }, gives: 52.31 },
  value: ({ d, g }) => d - 2 * g,
})

export const plungeTime: Formula<{ t: 'mm'; f: 'mm/rev'; n: 'rpm'; w: ''; i: '' }, 'min'> = formula({
  symbol: 't_p',
  meaning: 'cutting time of plunges',
  unit: 'min',
  expression: 'i * (t / f + w) / n',
  inputs: {
    t: { meaning: 'depth of the plunge, with approach', unit: 'mm', over: 0 },
    f: { meaning: 'feed', unit: 'mm/rev', over: 0 },
    n: { meaning: 'spindle speed', unit: 'rpm', over: 0 },
    w: { meaning: 'turns at the floor', unit: '', from: 0 },
    i: { meaning: 'plunges', unit: '', from: 1, whole: true },
  },
  source: 'derived: kinematics',
  example: { given: { t: 1.5, f: 0.05, n: 600, w: 2, i: 1 }, gives: 0.0533 },
  value: ({ t, f, n, w, i }) => (i * (t / f + w)) / n,
})
