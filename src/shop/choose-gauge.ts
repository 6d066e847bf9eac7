import { acceptanceFrom, acceptanceTo, gaugeRatio } from '../handbook/gauge-decision.ts'
import type { Gauge, GaugeKind } from './shop.ts'

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
  /** What the gauge must reach, where that is not the nominal. */
  readonly reach?: number
  /** Out of round by ovals, which three points touch alike wherever they stand. */
  readonly ovals?: boolean
}

export type Chosen = {
  readonly gauge: Gauge
  readonly uncertainty: number
  readonly accept: { readonly lower?: number; readonly upper?: number }
  /** Tolerance over the width of the uncertainty interval, where there is a width to judge by. */
  readonly ratio?: number
  readonly guarded: boolean
}

const RUNS_FROM_NOTHING: ReadonlySet<GaugeKind> = new Set(['form', 'outside', 'bore'])
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
  const width = widthOf({ kind: asked.kind, lower: asked.lower, upper: asked.upper })
  // Limits that meet leave nothing to accept, whatever the gauge; why they meet is said where they are planned.
  if (width !== undefined && !(width > 0)) return undefined
  const reach = asked.reach ?? asked.nominal
  const able = gauges
    .filter(({ kind, from, to }) => kind === asked.kind && reach >= from && reach <= to)
    .filter(({ name }) => !asked.ovals || !THREE_POINT.test(name))
    .map(gauge => judged(gauge, asked))
    .toSorted((a, b) => b.uncertainty - a.uncertainty)
  const plain = able.find(({ ratio }) => ratio === undefined || ratio >= STRICT - ROUNDING)
  if (plain) return plain
  const finest = able.at(-1)
  return finest?.ratio !== undefined && shareLeft(asked, finest) >= SHARE ? finest : undefined
}

/** Of the tolerance, what the guard bands leave to accept: 1 where there is no width to judge by. */
export function shareLeft({ kind, lower, upper }: Omit<Asked, 'nominal'>, { accept }: Chosen): number {
  const width = widthOf({ kind, lower, upper })
  if (width === undefined || upper === undefined || accept.upper === undefined) return 1
  return (accept.upper - (accept.lower ?? 0)) / width
}

function judged(gauge: Gauge, asked: Asked): Chosen {
  const uncertainty = uncertaintyOf(gauge, asked.nominal)
  const { kind, lower, upper } = asked
  const T = widthOf({ kind, lower, upper })
  const ratio = T === undefined || uncertainty === 0 ? undefined : gaugeRatio.value({ T, U: uncertainty })
  // A least hardness has no width; its reading is drawn in all the same. Ra is not: 16 % of its readings may be over (ISO 4288).
  const guarded = ratio === undefined ? kind === 'hardness' && uncertainty > 0 : ratio < STRICT - ROUNDING
  const g = guarded ? uncertainty : 0
  return {
    gauge,
    uncertainty,
    guarded,
    accept: {
      ...(lower !== undefined && { lower: acceptanceFrom.value({ lower, g }) }),
      ...(upper !== undefined && { upper: acceptanceTo.value({ upper, g }) }),
    },
    ...(ratio !== undefined && { ratio }),
  }
}

type Ends = { readonly kind: GaugeKind; readonly lower: number | undefined; readonly upper: number | undefined }

/** Its contacts stand at thirds of the circle: an oval reads the same all round. Source: derived, geometry. */
const THREE_POINT = /\b(?:three|3)[- ]point\b/i

/** What has one limit and runs from nothing, a form zone or a difference of two diameters, has that as its width. */
function widthOf({ kind, lower, upper }: Ends): number | undefined {
  if (FRACTION_OF_READING.has(kind) || upper === undefined) return undefined
  if (lower !== undefined) return upper - lower
  return RUNS_FROM_NOTHING.has(kind) && upper > 0 ? upper : undefined
}
