import { layerLeast, layerMost } from '../handbook/plating.ts'
import type { Limits } from '../limits.ts'
import type { Part } from '../part/part.ts'
import type { PlatingPlan } from '../plating/plating-plan.ts'
import type { Millimetre } from '../units.ts'
import { formWanted, surfacesOf } from './form-wanted.ts'
import { toLookAt, toReadOff, type Wanted, type Where } from './wanted.ts'

const LOAD = { sample: 1, plan: 'every load' } as const
const ofLoad = (feature: string) => ({ feature, sampled: LOAD })

/** What the bore must be before it goes under the layer: its form, and its edges. */
export function beforePlatingWanted(part: Part, plan: PlatingPlan, where: Where): readonly Wanted[] {
  const { least, most } = plan.chamfer
  return [
    ...surfacesOf(part)
      .filter(({ feature }) => feature === plan.surface)
      .flatMap(surface => formWanted(surface, 'hone', 'critical', where))
      .map(one => ({ ...one, name: `${one.name}, before plating` })),
    toLookAt({
      name: `edges chamfered ${least === most ? least : `${least} to ${most}`} mm`,
      feature: plan.surface,
      weight: 'critical',
      where,
      remark: part.ports.length > 0 ? 'every port edge and both ends of the bore' : 'both ends of the bore',
    }),
  ]
}

/** What comes back from the plater: the layer, how it sits, and the paper of its heats. */
export function platedWanted(plan: PlatingPlan, where: Where): readonly Wanted[] {
  const { surface, bake, hardness, relieved } = plan
  return [
    layerWanted('plating a side as plated', plan, between(plan.before, plan.plated), where),
    ...soundness(plan, where),
    ...(hardness.asked === undefined
      ? []
      : [
          {
            ...where,
            name: 'hardness of the plating, on the test piece',
            kind: 'hardness',
            unit: 'HV',
            lower: hardness.asked,
            feature: 'test piece',
            weight: 'critical',
            sampled: LOAD,
            remark: `${hardness.testLoad} at most, three places`,
          } as const,
        ]),
    ...(relieved
      ? [toReadOff('relief chart', 0, { name: 'stress relief before plating', unit: '-', ...ofLoad(surface) }, where)]
      : []),
    ...(bake.hours > 0
      ? [
          chart({ name: 'bake', unit: 'h', lower: bake.hours }, surface, where),
          chart({ name: 'bake temperature', unit: '°C', lower: bake.least, upper: bake.most }, surface, where),
          chart({ name: 'bake begun after plating', unit: 'h', upper: bake.startWithin }, surface, where),
        ]
      : []),
  ]
}

/** The layer of the finished piece: as thick as asked where it is thinnest. */
export function finishedPlating(plan: PlatingPlan, where: Where): readonly Wanted[] {
  const { asked, left, before, finished } = plan
  const sizes = between(before, finished)
  const uneven = sizes.lower - left.least
  return [
    layerWanted(
      'plating a side, finished',
      plan,
      { lower: asked.least + uneven, upper: asked.most === undefined ? sizes.upper : asked.most - uneven },
      where,
    ),
    ...soundness(plan, where),
  ]
}

type Ends = { readonly lower: Millimetre; readonly upper: Millimetre }

/** What lies between two bores, as a gauge reads it: the mean of one direction, so nothing is off for what is uneven. */
const between = (before: Limits, now: Limits): Ends => ({
  lower: layerLeast.value({ d_pre: before.lower, d: now.upper, u: 0, f: 0 }),
  upper: layerMost.value({ d_pre: before.upper, d: now.lower, u: 0, f: 0 }),
})

const layerWanted = (name: string, { surface, finished }: PlatingPlan, ends: Ends, where: Where): Wanted => ({
  ...where,
  ...ends,
  name,
  kind: 'bore',
  unit: 'mm',
  reach: finished.nominal,
  feature: surface,
  weight: 'critical',
  remark: 'half of the bore before plating less the bore now: the same piece, heights and directions',
})

const soundness = ({ surface }: PlatingPlan, where: Where): readonly Wanted[] => [
  toLookAt({
    name: 'plating sound: no blister, flake, bare spot or pore',
    feature: surface,
    weight: 'critical',
    where,
    remark: '×10, at the edges and in the middle of the bore; the base must nowhere show',
  }),
]

const chart = (wanted: Pick<Wanted, 'name' | 'unit' | 'lower' | 'upper'>, feature: string, where: Where): Wanted =>
  toReadOff('bake chart', 0, { ...wanted, ...ofLoad(feature) }, where)
