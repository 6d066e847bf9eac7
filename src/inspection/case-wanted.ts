import type { CasePlan } from '../hardening/case-plan.ts'
import { toleranceOf } from '../limits.ts'
import type { Part } from '../part/part.ts'
import { drilledBore } from '../route/drilled-bore.ts'
import type { Millimetre } from '../units.ts'
import { toReadOff, type Wanted, type Where } from './wanted.ts'

const COUPON = {
  feature: 'coupon',
  weight: 'critical',
  sampled: { sample: 1, plan: 'one coupon a load' },
} as const

/** What comes back from the hardener: on the coupon, and on the pieces. */
export function hardeningWanted(
  part: Part,
  plan: CasePlan,
  { ovality, where }: { readonly ovality: Ovality; readonly where: Where },
): readonly Wanted[] {
  const { least: lower, most: upper } = plan.ordered
  return [
    toReadOff(
      "hardener's traverse",
      2,
      { ...COUPON, name: 'case depth on the coupon', unit: 'mm', lower, upper, remark: plan.definition },
      where,
    ),
    { ...where, ...COUPON, name: 'core hardness', kind: 'hardness', unit: 'HV', nominal: plan.coreHardness },
    ...outOfRoundWanted(part, ovality, where),
  ]
}

/** Largest less smallest diameter that the stock of a surface bears, as it is planned; nothing of one that is not finished. */
export type Ovality = (surface: string) => Millimetre | undefined

/**
 * How round every diameter comes back: an oval is the difference of two diameters, and measured as such. What is not finished
 * after must still lie within its size.
 */
export const outOfRoundWanted = (part: Part, ovality: Ovality, where: Where): readonly Wanted[] =>
  // Nothing is finished from a bore that stays as drilled: how round it comes back decides nothing.
  [...part.outside, ...part.bore.filter(band => band !== drilledBore(part))].map(
    ({ name, size, path }): Wanted => ({
      ...where,
      name: `${name} out of round, as returned`,
      kind: path.startsWith('/body/bore') ? 'bore' : 'outside',
      unit: 'mm',
      upper: ovality(name) ?? toleranceOf(size),
      ovals: true,
      reach: size.nominal,
      feature: name,
      weight: 'major',
      remark: 'largest less smallest of four directions; write it into the shop file',
    }),
  )

/** Hardness of the finished piece. A finished bore is not to be marked: the coupon is ground along with it. */
export function finishedCase(part: Part, plan: CasePlan, where: Where): readonly Wanted[] {
  const asked = part.hardening?.hardness?.least
  const hardness: Wanted = {
    ...where,
    ...COUPON,
    name: 'hardness of the finished surface, on the coupon',
    kind: 'hardness',
    unit: 'HV',
    ...(asked !== undefined && { lower: asked }),
    remark: `${plan.testLoad} at most, three places, after grinding off the coupon the most that came off a piece`,
  }
  return asked === undefined ? [] : [hardness]
}
