import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { REMOVAL_SHARE, REMOVAL_SHARE_CARBURISED } from '../handbook/case-limits.ts'
import type { HardeningWindow } from '../handbook/hardening-processes.ts'
import type { Part } from '../part/part.ts'
import { partFinding } from '../part/part-finding.ts'
import type { Millimetre } from '../units.ts'
import type { HardnessAfter } from './case-plan.ts'
import type { Removal } from './removal.ts'

/** How much of the case comes off. */
export function shareFindings(
  part: Part,
  { term }: HardeningWindow,
  removal: readonly Removal[],
  N: Millimetre,
): readonly Finding[] {
  const { warn } = term === 'NHD' ? REMOVAL_SHARE : REMOVAL_SHARE_CARBURISED
  return removal.flatMap(({ surface, most, face }) =>
    face || most / N <= warn + 1e-9
      ? []
      : [
          partFinding({
            part,
            severity: 'warning',
            code: 'case/depth-share',
            path: '/hardening/depth',
            message: `${surface}: up to ${fixed(most, 3)} mm a side comes off a case of ${fixed(N, 2)} mm, ${fixed((100 * most) / N, 0)} %; over ${fixed(100 * warn, 0)} % is more than usual (common practice)`,
            hint: 'reduce run-out and distortion before buying depth: less stock then cleans up',
          }),
        ],
  )
}

/** What hardness is left where most comes off. */
export function hardnessFindings(
  part: Part,
  after: readonly HardnessAfter[],
  removal: readonly Removal[],
): readonly Finding[] {
  const faces = new Set(removal.filter(({ face }) => face).map(({ surface }) => surface))
  const asked = part.hardening?.hardness?.least
  if (asked === undefined) return []
  return after.flatMap(({ surface, most }) => {
    if (most.low >= asked - 0.5) return []
    const short = most.expected < asked - 0.5
    return [
      partFinding({
        part,
        severity: short && !faces.has(surface) ? 'error' : 'warning',
        code: 'case/hardness-after',
        path: '/hardening/hardness',
        message: `${surface}: where most comes off ${fixed(most.expected, 0)} HV is expected, ${fixed(most.low, 0)} to ${fixed(most.high, 0)} by the models; ${fixed(asked, 0)} HV is asked`,
        hint: faces.has(surface)
          ? 'nothing slides on a face: agree the figure there, or mask it on the drawing'
          : short
            ? 'take off less, or order more depth'
            : 'ask for a reading on the coupon ground to the same depth, or take off less',
      }),
    ]
  })
}
