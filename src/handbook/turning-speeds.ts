import type { MetrePerMinute, Millimetre, MillimetrePerRevolution } from '../units.ts'
import type { HardnessRow } from './cutting-grades.ts'

export type TurningRow = HardnessRow & {
  /** Coated carbide, m/min, rising in depth of cut (mm) with the table's feed (mm/rev). */
  readonly at: readonly {
    readonly depth: Millimetre
    readonly feed: MillimetrePerRevolution
    readonly speed: MetrePerMinute
  }[]
  readonly source: string
  readonly note?: string
}

const DATA_BOOK = 'The Ferrous Metals Data Book, ch. 9, tables 9-1 to 9-6'
const PRACTICE = 'common practice, no source'

type Speeds = readonly [number, number, number]

const steel = ({
  family,
  over,
  upTo,
  speeds: [fine, middle, rough],
  note,
}: {
  readonly family: HardnessRow['family']
  readonly over: number
  readonly upTo: number
  readonly speeds: Speeds
  readonly note?: string | undefined
}): TurningRow => ({
  family,
  over,
  upTo,
  at: [
    { depth: 1, feed: 0.18, speed: fine },
    { depth: 3.8, feed: 0.38, speed: middle },
    { depth: 7.6, feed: 0.51, speed: rough },
  ],
  source: DATA_BOOK,
  ...(note === undefined ? {} : { note }),
})

const other = ({
  family,
  over,
  upTo,
  speed,
  range,
}: {
  readonly family: HardnessRow['family']
  readonly over: number
  readonly upTo: number
  readonly speed: number
  readonly range: string
}): TurningRow => ({
  family,
  over,
  upTo,
  at: [{ depth: 2, feed: 0.25, speed }],
  source: PRACTICE,
  note: `middle of ${range} m/min`,
})

const LOW_ALLOY = [
  [0, 225, [198, 160, 122], 'table from 175 HB'],
  [225, 275, [183, 145, 114], undefined],
  [275, 325, [175, 137, 107], undefined],
  [325, 375, [152, 119, 93], 'table has 152 only; deeper cuts in the ratio of the row above'],
] as const

/** Aluminium makes a steel abrasive and gummy. Source: common practice, no source: 0.85 to 0.9. */
const ALUMINIUM_STEEL_SHARE = 0.85

/** Starting speeds, spread ±30 %. */
export const TURNING_ROWS: readonly TurningRow[] = [
  ...LOW_ALLOY.map(([over, upTo, speeds, note]) => steel({ family: 'low-alloy steel', over, upTo, speeds, note })),
  ...LOW_ALLOY.map(([over, upTo, speeds]) =>
    steel({
      family: 'aluminium-alloyed nitriding steel',
      over,
      upTo,
      speeds: [speeds[0] * ALUMINIUM_STEEL_SHARE, speeds[1] * ALUMINIUM_STEEL_SHARE, speeds[2] * ALUMINIUM_STEEL_SHARE],
      note: '0.85 of the low-alloy row: common practice, no source',
    }),
  ),
  steel({ family: 'case-hardening steel', over: 0, upTo: 225, speeds: [221, 175, 137], note: 'table from 175 HB' }),
  steel({
    family: 'case-hardening steel',
    over: 225,
    upTo: 250,
    speeds: [190, 150, 118],
    note: '0.86 of the row above: common practice, no source',
  }),
  steel({
    family: 'bearing steel',
    over: 0,
    upTo: 250,
    speeds: [168, 136, 104],
    note: '0.85 of the low-alloy row of 175 to 225 HB: common practice, no source',
  }),
  steel({ family: 'unalloyed steel', over: 0, upTo: 225, speeds: [239, 160, 126], note: 'table from 175 HB' }),
  steel({ family: 'unalloyed steel', over: 225, upTo: 275, speeds: [229, 152, 122] }),
  steel({ family: 'unalloyed steel', over: 275, upTo: 325, speeds: [213, 137, 114] }),
  steel({ family: 'free-cutting steel', over: 0, upTo: 150, speeds: [396, 259, 206] }),
  steel({ family: 'free-cutting steel', over: 150, upTo: 225, speeds: [411, 274, 221], note: 'table to 200 HB' }),
  steel({
    family: 'stainless steel',
    over: 0,
    upTo: 245,
    speeds: [140, 110, 86],
    note: 'common practice, no source',
  }),
  steel({
    family: 'stainless steel',
    over: 245,
    upTo: 325,
    speeds: [130, 100, 78],
    note: 'common practice, no source',
  }),
  other({ family: 'grey iron', over: 0, upTo: 290, speed: 230, range: '180 to 280' }),
  other({ family: 'ductile iron', over: 0, upTo: 190, speed: 170, range: '140 to 200' }),
  other({ family: 'ductile iron', over: 190, upTo: 270, speed: 145, range: '120 to 170' }),
  other({ family: 'ductile iron', over: 270, upTo: 305, speed: 125, range: '100 to 150' }),
  other({ family: 'aluminium', over: 0, upTo: 130, speed: 400, range: '300 to 600' }),
  other({ family: 'silicon aluminium', over: 0, upTo: 130, speed: 300, range: '200 to 400' }),
  other({ family: 'bronze', over: 0, upTo: 200, speed: 200, range: '150 to 300' }),
]

/** Speed for a depth of cut, linear between the table's depths and level beyond them. */
export function turningSpeed({ at }: TurningRow, depth: Millimetre): MetrePerMinute {
  const next = at.findIndex(point => point.depth >= depth)
  const above = at[next] ?? at.at(-1)
  const below = next > 0 ? at[next - 1] : undefined
  if (!above) throw new RangeError('a turning row without speeds')
  if (!below) return above.speed
  return below.speed + ((depth - below.depth) / (above.depth - below.depth)) * (above.speed - below.speed)
}

/** Depths (radial, mm) and feeds (mm/rev) to start at. Source: common practice, no source. */
export const TURNING_STARTS = {
  rough: { outside: { depth: 2, feed: 0.25 }, bore: { depth: 1.5, feed: 0.2 }, face: { depth: 1.5, feed: 0.2 } },
  semiFinish: { depth: 1, feed: 0.15 },
  finish: { depth: 0.3, feed: 0.15 },
  /** A wall under a twentieth of the diameter. */
  thinWall: { share: 0.05, depth: 0.25 },
  leastFeed: 0.05,
  /** Feed over nose radius. */
  mostFeedOverNose: 0.5,
  enteringAngle: 95,
  approach: 2,
  overtravel: 2,
  driveEfficiency: 0.8,
} as const
