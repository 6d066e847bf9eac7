import type { MetrePerMinute } from '../units.ts'
import type { HardnessRow } from './cutting-grades.ts'

export type DrillingRow = HardnessRow & {
  /** Coated carbide, m/min. */
  readonly speed: MetrePerMinute
  /** Feed over diameter, 1/rev, for drills up to 10 mm. */
  readonly feed: number
  readonly source: string
}

const MAKER = 'Tungaloy general catalogue 2020-21, p. 1339'
const PRACTICE = 'common practice, no source'
const STEEL_FEED = 0.0175
const SOFT_FEED = 0.025

/** Starting speeds of carbide drills, spread ±30 %; feeds: common practice, no source, 0.015 to 0.02 in steel. */
export const DRILLING_ROWS: readonly DrillingRow[] = [
  {
    family: 'low-alloy steel',
    over: 0,
    upTo: 230,
    speed: 80,
    feed: STEEL_FEED,
    source: `${PRACTICE}; ${MAKER} has 90`,
  },
  { family: 'low-alloy steel', over: 230, upTo: 312, speed: 70, feed: STEEL_FEED, source: MAKER },
  { family: 'low-alloy steel', over: 312, upTo: 375, speed: 50, feed: STEEL_FEED, source: MAKER },
  { family: 'aluminium-alloyed nitriding steel', over: 0, upTo: 230, speed: 70, feed: STEEL_FEED, source: PRACTICE },
  { family: 'aluminium-alloyed nitriding steel', over: 230, upTo: 312, speed: 60, feed: STEEL_FEED, source: PRACTICE },
  { family: 'aluminium-alloyed nitriding steel', over: 312, upTo: 375, speed: 45, feed: STEEL_FEED, source: PRACTICE },
  { family: 'case-hardening steel', over: 0, upTo: 250, speed: 85, feed: STEEL_FEED, source: PRACTICE },
  { family: 'bearing steel', over: 0, upTo: 250, speed: 70, feed: STEEL_FEED, source: PRACTICE },
  { family: 'unalloyed steel', over: 0, upTo: 325, speed: 85, feed: STEEL_FEED, source: PRACTICE },
  { family: 'stainless steel', over: 0, upTo: 325, speed: 50, feed: STEEL_FEED, source: PRACTICE },
  { family: 'free-cutting steel', over: 0, upTo: 225, speed: 120, feed: STEEL_FEED, source: PRACTICE },
  { family: 'grey iron', over: 0, upTo: 260, speed: 100, feed: SOFT_FEED, source: PRACTICE },
  { family: 'ductile iron', over: 0, upTo: 270, speed: 85, feed: SOFT_FEED, source: PRACTICE },
  { family: 'ductile iron', over: 270, upTo: 305, speed: 70, feed: SOFT_FEED, source: PRACTICE },
  { family: 'aluminium', over: 0, upTo: 130, speed: 200, feed: SOFT_FEED, source: PRACTICE },
  { family: 'silicon aluminium', over: 0, upTo: 130, speed: 150, feed: SOFT_FEED, source: PRACTICE },
  { family: 'bronze', over: 0, upTo: 200, speed: 100, feed: STEEL_FEED, source: PRACTICE },
]

/** Feed no greater than, mm/rev: solid drills, and drills with changeable edges from this diameter. Source: common practice, no source. */
export const DRILL_FEED_LIMIT = { solid: 0.2, changeableEdgesFrom: 16, changeableEdges: 0.12, least: 0.04 } as const

/** Left in a drilled bore for boring, on diameter, mm. Source: common practice, no source. */
export const LEAST_BORING_STOCK = 2
