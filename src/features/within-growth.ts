import { fixed } from '../figures.ts'
import type { Limits } from '../limits.ts'
import type { FeaturesGiven } from './given.ts'

/** What of a tolerance is left to whoever cuts where growth and stock vary by more than all of it. Common practice, no source. */
const LEFT = 0.25

/** Limits as cut that meet or cross: the scatter of what follows takes all the tolerance. The cut then aims at the middle. */
export function withinGrowth(
  { report }: FeaturesGiven,
  { name, path }: { readonly name: string; readonly path: string },
  { nominal, lower, upper }: Limits,
): Limits {
  if (upper - lower > 1e-6) return { nominal, lower, upper }
  const middle = (lower + upper) / 2
  const half = Math.max(0.005, (LEFT * Math.abs(lower - upper)) / 2)
  report({
    code: 'feature/growth-over-tolerance',
    message: `${name}: what comes off or grows after it is cut varies by ${fixed(lower - upper, 3)} mm more than its tolerance`,
    hint: 'widen its tolerance, mask it, or cut it to the middle and measure a first article',
    path,
  })
  return { nominal: middle, lower: middle - half, upper: middle + half }
}
