import { type Known, known } from '../known.ts'
import { between, type Limits, middleOf } from '../limits.ts'
import type { SurfaceKind } from '../place.ts'
import { chooseGauge } from '../shop/choose-gauge.ts'
import { onHand } from '../shop/origin.ts'
import type { GaugeKind, Shop } from '../shop/shop.ts'
import type { Millimetre } from '../units.ts'

/** What can be told of a stock in the work, a side, and by which gauge. */
export type Told = Known<'mm'> & { readonly gauge?: string; readonly uncertainty?: Millimetre }

/** Nobody tells less than a micrometre a side, with whatever gauge: common practice, no source. */
const LEAST: Millimetre = 0.001

const KIND: Readonly<Record<SurfaceKind, GaugeKind>> = { outside: 'outside', bore: 'bore', face: 'length' }

/**
 * Between the gauge's uncertainty below and above nobody can say on which side a size is (ISO 14253-1): of a diameter that is
 * half of it a side. By the gauge that inspection takes for the limits which the cut leaves.
 */
export function toldOf(shop: Shop, kind: SurfaceKind, final: Limits, tolerance: Millimetre): Told {
  const { lower, upper } = between(middleOf(final) - tolerance / 2, middleOf(final) + tolerance / 2)
  const chosen = chooseGauge(shop.gauges, { kind: KIND[kind], nominal: final.nominal, lower, upper })
  if (!chosen) return known(LEAST, 'mm', { from: 'handbook', source: 'common practice, no source' })
  const { gauge, uncertainty } = chosen
  const value = Math.max(LEAST, kind === 'face' ? uncertainty : uncertainty / 2)
  return { ...known(value, 'mm', onHand(shop, 'gauges', gauge.name)), gauge: gauge.name, uncertainty }
}
