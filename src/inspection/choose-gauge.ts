import { acceptanceFrom, acceptanceTo, gaugeRatio } from '../handbook/gauge-decision.ts'
import type { Gauge, GaugeKind } from '../shop/shop.ts'

/** The strict rule: tolerance at least four times the width of the uncertainty interval. Then a reading at the limit may be believed. */
const STRICT = 4
/** A width that is the difference of two limits is not exact in binary: a ratio of 4 must stay 4. */
const ROUNDING = 1e-9
/** A guard band that leaves less than this share of the tolerance is no way to judge a part: common practice, no source. */
const SHARE = 0.25

export type Asked = {
  readonly kind: GaugeKind
  readonly nominal: number
  readonly lower?: number
  readonly upper?: number
}

export type Chosen = {
  readonly gauge: Gauge
  readonly uncertainty: number
  readonly accept: { readonly lower?: number; readonly upper?: number }
  /** Tolerance over the width of the uncertainty interval, where there is a tolerance on both sides. */
  readonly ratio?: number
  readonly guarded: boolean
}

const FRACTION_OF_READING: ReadonlySet<GaugeKind> = new Set(['roughness', 'hardness'])

/** In the characteristic's own unit: for roughness and hardness the gauge's figure is a fraction of the reading. */
export const uncertaintyOf = ({ kind, uncertainty }: Gauge, reading: number): number =>
  FRACTION_OF_READING.has(kind) ? uncertainty * reading : uncertainty

/** Decimal places to write down: what the gauge reads, 0.001 three and 1 none, and never finer than the micrometre. */
export const placesRead = ({ resolution }: Gauge): number =>
  resolution <= 0 ? 0 : Math.max(0, Math.min(3, Math.round(-Math.log10(resolution) + 0.2)))

/**
 * The plainest gauge on hand that is good enough four times over; failing that, the finest one, and readings are then accepted
 * only inside the limits by its uncertainty. Nothing where even that leaves no room to accept a part.
 */
export function chooseGauge(gauges: readonly Gauge[], asked: Asked): Chosen | undefined {
  const able = gauges
    .filter(({ kind, from, to }) => kind === asked.kind && asked.nominal >= from && asked.nominal <= to)
    .map(gauge => judged(gauge, asked))
    .toSorted((a, b) => b.uncertainty - a.uncertainty)
  const plain = able.find(({ ratio }) => ratio === undefined || ratio >= STRICT - ROUNDING)
  if (plain) return { ...plain, guarded: false, accept: limitsOf(asked) }
  const finest = able.at(-1)
  return finest?.ratio !== undefined && 1 - 1 / finest.ratio >= SHARE ? finest : undefined
}

const limitsOf = ({ lower, upper }: Asked): Chosen['accept'] => ({
  ...(lower !== undefined && { lower }),
  ...(upper !== undefined && { upper }),
})

function judged(gauge: Gauge, asked: Asked): Chosen {
  const { lower, upper, nominal } = asked
  const uncertainty = uncertaintyOf(gauge, nominal)
  if (lower === undefined || upper === undefined || uncertainty === 0) {
    return { gauge, uncertainty, accept: limitsOf(asked), guarded: false, ...oneSided(asked, uncertainty) }
  }
  const accept = {
    lower: acceptanceFrom.value({ lower, g: uncertainty }),
    upper: acceptanceTo.value({ upper, g: uncertainty }),
  }
  return { gauge, uncertainty, accept, guarded: true, ratio: gaugeRatio.value({ T: upper - lower, U: uncertainty }) }
}

/** A form zone has one limit and runs from nothing: its width is the tolerance. Hardness and roughness are not so judged. */
function oneSided(
  { kind, lower, upper }: Asked,
  uncertainty: number,
): Partial<Pick<Chosen, 'ratio' | 'accept' | 'guarded'>> {
  if (kind !== 'form' || lower !== undefined || upper === undefined || uncertainty === 0 || upper <= 0) return {}
  return { ratio: upper / (2 * uncertainty), accept: { upper: upper - uncertainty }, guarded: true }
}
