import { vickersFromRockwell } from '../handbook/hardness-conversion.ts'
import type { QuenchPlan } from '../hardening/quench-plan.ts'
import type { Part } from '../part/part.ts'
import { type Ovality, outOfRoundWanted } from './case-wanted.ts'
import { toLookAt, type Wanted, type Where } from './wanted.ts'

/** What comes back from the hardener where the part is hard to the middle: hardness is read on the pieces themselves. */
export function quenchedWanted(
  part: Part,
  { asked, expected }: QuenchPlan,
  { ovality, where }: { readonly ovality: Ovality; readonly where: Where },
): readonly Wanted[] {
  return [
    {
      ...where,
      name: 'hardness, on an end face',
      kind: 'hardness',
      unit: 'HV',
      ...(asked ? { lower: asked.HV } : { nominal: Math.round(vickersFromRockwell.value({ HRC: expected })) }),
      feature: 'bottom',
      weight: 'critical',
      remark: 'three places, where it is ground clean; not on a seat or in the bore',
    },
    toLookAt({
      name: 'cracks by magnetic particle, as hardened',
      feature: 'all surfaces',
      weight: 'critical',
      where,
      remark: 'reject any crack, at corners and holes above all; demagnetise and clean after',
    }),
    ...outOfRoundWanted(part, ovality, where),
  ]
}
