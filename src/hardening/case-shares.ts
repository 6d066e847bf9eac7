import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { REMOVAL_SHARE, REMOVAL_SHARE_CARBURISED } from '../handbook/case-limits.ts'
import type { HardeningWindow } from '../handbook/hardening-processes.ts'
import type { Part } from '../part/part.ts'
import { partFinding } from '../part/part-finding.ts'
import type { Millimetre, Vickers } from '../units.ts'
import type { CaseFigures } from './case-figures.ts'
import type { HardnessAfter } from './case-plan.ts'
import type { Removal } from './removal.ts'

/** How much of the case comes off. */
export function shareFindings(
  part: Part,
  { term }: HardeningWindow,
  removal: readonly Removal[],
  N: Millimetre,
): readonly Finding[] {
  const { warn, refuse } = term === 'NHD' ? REMOVAL_SHARE : REMOVAL_SHARE_CARBURISED
  return removal.flatMap(({ surface, most }) =>
    most / N <= warn + 1e-9
      ? []
      : [
          partFinding({
            part,
            severity: most / N > refuse + 1e-9 ? 'error' : 'warning',
            code: 'case/depth-share',
            path: '/hardening/depth',
            message: `${surface}: up to ${fixed(most, 3)} mm a side comes off a case of ${fixed(N, 2)} mm, ${fixed((100 * most) / N, 0)} %; over ${fixed(100 * warn, 0)} % is more than usual, and over ${fixed(100 * refuse, 0)} % is refused (common practice)`,
            hint: 'reduce run-out and distortion before buying depth: less stock then cleans up',
          }),
        ],
  )
}

/** What hardness is left where most comes off, and whether the grade reaches what that asks of its surface. */
export function hardnessFindings({
  part,
  after,
  figures: { surface: reached },
  surfaceLeast = 0,
}: {
  readonly part: Part
  readonly after: readonly HardnessAfter[]
  readonly figures: CaseFigures
  readonly surfaceLeast: Vickers | undefined
}): readonly Finding[] {
  const asked = part.hardening?.hardness?.least
  if (asked === undefined) return []
  const { grade } = part.material
  const range = `${fixed(reached.least, 0)} to ${fixed(reached.most, 0)} HV`
  return after.flatMap(({ surface, most }) => {
    if (most.low >= asked - 0.5) return []
    const short = most.expected < asked - 0.5
    return [
      partFinding({
        part,
        severity: short ? 'error' : 'warning',
        code: 'case/hardness-after',
        path: '/hardening/hardness',
        message: `${surface}: where most comes off ${fixed(most.expected, 0)} HV is expected, ${fixed(most.low, 0)} to ${fixed(most.high, 0)} by the models and by the range of ${grade}; ${fixed(asked, 0)} HV is asked`,
        hint: short
          ? 'take off less, or order more depth'
          : surfaceLeast > reached.least
            ? `the order asks for ${fixed(surfaceLeast, 0)} HV or more as hardened, and ${grade} gives ${range}: not every charge reaches it; ask the hardener, or take off less`
            : 'ask for a reading on the coupon ground to the same depth, or take off less',
      }),
    ]
  })
}
