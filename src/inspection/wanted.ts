import type { Written } from '../place.ts'
import type { GaugeKind } from '../shop/shop.ts'
import type { Characteristic } from './characteristic.ts'
import type { Sample, Weight } from './sample-size.ts'

/** One thing to measure, before a gauge and a sample are found for it. */
export type Wanted = {
  readonly name: string
  readonly kind: GaugeKind
  readonly unit: string
  readonly nominal?: number
  readonly lower?: number
  readonly upper?: number
  /** What the gauge must reach, where that is not what it reads: the diameter of a surface whose form is measured. */
  readonly reach?: number
  /** Out of round by ovals: largest less smallest diameter. */
  readonly ovals?: boolean
  readonly operation: number
  readonly stage: Characteristic['stage']
  readonly feature: string
  /** Of a size: which limit stands in front. */
  readonly written?: Written
  readonly weight: Weight
  /** Where the number is not one of the pieces: a coupon, a bar. */
  readonly sampled?: Sample
  readonly remark?: string
  /** The size that reads too large on a warm part, where the remark says so. */
  readonly warm?: number
  /** Read off a paper that comes with the work, not off a gauge of ours: what it is called, and its places. */
  readonly certificate?: { readonly name: string; readonly places: number }
}

export type Where = Pick<Wanted, 'operation' | 'stage'>

/** Something to look at and tick: no figure. */
export const toLookAt = ({
  name,
  feature,
  weight,
  where,
  remark,
}: {
  readonly name: string
  readonly feature: string
  readonly weight: Weight
  readonly where: Where
  readonly remark?: string | undefined
}): Wanted => ({
  ...where,
  name,
  kind: 'visual',
  unit: '-',
  feature,
  weight,
  ...(remark !== undefined && { remark }),
})

/** Something that a paper which comes with the work must say. */
export const toReadOff = (
  paper: string,
  places: number,
  wanted: Pick<Wanted, 'name' | 'unit' | 'nominal' | 'lower' | 'upper' | 'feature' | 'sampled' | 'remark'>,
  where: Where,
): Wanted => ({ ...where, ...wanted, kind: 'visual', weight: 'critical', certificate: { name: paper, places } })
