/** Ranges of specific time-area, s/m, that books name as usual. Compare, do not judge. */
export type TimeAreaTarget = {
  readonly port: 'inlet' | 'transfer' | 'exhaust'
  readonly from: number
  readonly to: number
  readonly source: string
  readonly note: string
}

const NOTE =
  'by the mean-area method, which gives about 13 % more than the integral; published as 0.00014 s·cm²/cm³ and so on'

export const TIME_AREA_TARGETS: readonly TimeAreaTarget[] = [
  { port: 'inlet', from: 0.014, to: 0.016, source: "Jennings, Two-Stroke Tuner's Handbook, 1973", note: NOTE },
  { port: 'transfer', from: 0.008, to: 0.01, source: "Jennings, Two-Stroke Tuner's Handbook, 1973", note: NOTE },
  { port: 'exhaust', from: 0.014, to: 0.015, source: "Jennings, Two-Stroke Tuner's Handbook, 1973", note: NOTE },
]

/** Where the streams of the mains merge, as a share of the bore from the exhaust side. */
export const MEETING_TARGET: { readonly from: number; readonly to: number; readonly source: string } = {
  from: 2 / 3,
  to: 1,
  source: "Jennings, Two-Stroke Tuner's Handbook, 1973: two thirds back; Bell, ch. 3: on the rear wall",
}
