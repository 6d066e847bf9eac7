import { materialOf } from '../handbook/materials.ts'
import { type LimitGroup, USUAL_TURNED } from '../handbook/process-limits.ts'
import type { Part } from '../part/part.ts'
import type { Shop } from '../shop/shop.ts'
import type { Micrometre, Millimetre } from '../units.ts'

/** The group of materials that a limit of a process is listed for. */
export function limitGroup({ material }: Pick<Part, 'material'>): LimitGroup {
  const group = materialOf(material.grade)?.group
  if (group === 'grey iron' || group === 'ductile iron') return 'iron'
  if (group === 'wrought aluminium' || group === 'cast aluminium') return 'aluminium'
  return group === 'bronze' ? 'bronze' : 'steel'
}

/** What a part that a thin treatment leaves as it is was turned for: a last cut taken with care. Common practice, no source. */
const BEFORE_THIN_LAYER = { tolerance: 0.02, roughness: 0.8 } as const

const THIN: ReadonlySet<string> = new Set(['nitrocarburising', 'salt-bath nitriding'])

/** Treated in a salt bath or nitrocarburised: the layer is what it runs on, so it is made to size before and only polished after. */
export const runsAsItComes = ({ hardening }: Pick<Part, 'hardening'>): boolean =>
  hardening !== undefined && THIN.has(hardening.process)

/** What the last lathe cut holds and leaves on the part's material; the tolerance is the works' own where it says one. */
export function turnedLast(
  part: Part,
  { habits, set }: Pick<Shop, 'habits' | 'set'>,
): { readonly tolerance: Millimetre; readonly roughness: Micrometre } {
  const usual = USUAL_TURNED[limitGroup(part)]
  const fine = runsAsItComes(part) ? BEFORE_THIN_LAYER : usual
  const steel = limitGroup(part) === 'steel' && !runsAsItComes(part)
  const own = steel || set.has('/habits/finish-turning-tolerance')
  return {
    tolerance: own ? habits.finishTurningTolerance : fine.tolerance,
    roughness: Math.min(fine.roughness, usual.roughness),
  }
}
