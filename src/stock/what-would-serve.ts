import { fixed } from '../figures.ts'
import type { Millimetre } from '../units.ts'
import type { FinishChain } from './finish-chain.ts'

/**
 * What alone would make a stock possible that is `missing` mm per side short of serving both ends, with the deepest case that may
 * be ordered and `asked` mm of it left. Eccentricity and form count twice, once on the thin side and once on the deep one; a
 * tolerance on diameter counts half.
 */
export function whatWouldServe(
  { finishes, softTolerance }: FinishChain,
  missing: Millimetre,
  asked: Millimetre,
): string {
  const eccentricity = finishes[0]?.eccentricity.value ?? 0
  const form = finishes[0]?.form.value ?? 0
  const tolerance = softTolerance.value - 2 * missing
  const ways = [
    ...(asked > missing ? [`${fixed(missing, 3)} mm less case asked`] : []),
    ...(eccentricity > missing / 2
      ? [`eccentricity ${fixed(eccentricity - missing / 2, 3)} for ${fixed(eccentricity, 3)} mm`]
      : []),
    ...(form > missing / 2 ? [`form error ${fixed(form - missing / 2, 3)} for ${fixed(form, 3)} mm`] : []),
    ...(tolerance > 0 ? [`turned to ${fixed(tolerance, 3)} for ${fixed(softTolerance.value, 3)} mm`] : []),
  ]
  return ways.length > 0
    ? `one of these would do: ${ways.join('; ')}`
    : 'nothing would do by itself: make the wall thicker, ask for less case, or choose a process that goes deeper'
}
