/** Ranges of specific time-area, s/m, that books name as usual. Compare, do not judge. */
export type TimeAreaTarget = {
  readonly port: 'inlet' | 'transfer' | 'exhaust'
  readonly from: number
  readonly to: number
  readonly source: string
  readonly note: string
}

const NOTE = 'by the mean area, as the plan counts it beside this; published as 0.00014 s·cm²/cm³ and so on'

export const TIME_AREA_TARGETS: readonly TimeAreaTarget[] = [
  { port: 'exhaust', from: 0.014, to: 0.015, source: "Jennings, Two-Stroke Tuner's Handbook, 1973", note: NOTE },
  { port: 'transfer', from: 0.008, to: 0.01, source: "Jennings, Two-Stroke Tuner's Handbook, 1973", note: NOTE },
  { port: 'inlet', from: 0.014, to: 0.016, source: "Jennings, Two-Stroke Tuner's Handbook, 1973", note: NOTE },
]

/** Where the streams of the mains merge, as a share of the bore from the exhaust side. */
export const MEETING_TARGET: { readonly from: number; readonly to: number; readonly source: string } = {
  from: 2 / 3,
  to: 1,
  source: "Jennings, Two-Stroke Tuner's Handbook, 1973: two thirds back; Bell, ch. 3: on the rear wall",
}

/** By the integral, for mean effective pressures of 3 to 7 bar. */
export const BLOWDOWN_TIME_AREA: { readonly from: number; readonly to: number; readonly source: string } = {
  from: 0.000145,
  to: 0.000634,
  source: 'memory: Blair 1996, 6.1, for 3 to 7 bar of mean effective pressure; not seen, check the book',
}

/** From exhaust closure. */
export const TRAPPED_RATIO: { readonly from: number; readonly to: number; readonly source: string } = {
  from: 5.5,
  to: 9,
  source: 'memory: Jennings, Blair; petrol, higher with methanol',
}

/** Chord of an exhaust window as a share of the bore, with rings. */
export const EXHAUST_WIDTH: { readonly from: number; readonly to: number; readonly source: string } = {
  from: 0.5,
  to: 0.62,
  source: "long life: common practice, no source; 0.62 to start from: Jennings, Two-Stroke Tuner's Handbook, 1973",
}

/** Chord of one window of a bridged exhaust as a share of the bore, with rings. */
export const BRIDGED_WINDOW_WIDTH: { readonly from: number; readonly to: number; readonly source: string } = {
  from: 0,
  to: 0.5,
  source: 'memory: Bell, 0.45 to 0.50 at most; common practice',
}

/** Chord of a bridged exhaust, bars and all, as a share of the bore, with rings. */
export const BRIDGED_EXHAUST_WIDTH: { readonly from: number; readonly to: number; readonly source: string } = {
  from: 0.5,
  to: 0.9,
  source: 'memory: Bell, 0.85 to 0.90 at most; from 0.50 as a single exhaust: common practice, no source',
}
