import type { Millimetre } from '../units.ts'

/** Case on both sides together, most, as a share of the wall. */
export type WallLimit = { readonly over: Millimetre; readonly upTo: Millimetre; readonly share: number }

export const WALL_LIMIT_SOURCE =
  'ISO 18669 limits of carburised piston pins as a pin maker reprints them; for nitrided liners an estimate'
/** Under 1.5 mm there is no rule. */
export const WALL_LIMITS: readonly WallLimit[] = [
  { over: 1.5, upTo: 3, share: 0.65 },
  { over: 3, upTo: 5, share: 0.5 },
  { over: 5, upTo: Number.POSITIVE_INFINITY, share: 0.35 },
]

/** The first row counts from 1.5 mm itself. */
export const wallLimit = (wall: Millimetre): number | undefined =>
  WALL_LIMITS.find(({ over, upTo }) => (wall > over || wall === WALL_LIMITS[0]?.over) && wall <= upTo)?.share

/** Warn from this share of the limit: estimate. */
export const WALL_WARNING = 0.9
/** A bar between windows takes case on four sides: its width in hardness depths. Common practice/estimate. */
export const BRIDGE_LIMITS = { warn: 6, refuse: 4 } as const
/** Greatest removal at the worst place to hardness depth ordered. Common practice/estimate. */
export const REMOVAL_SHARE = { warn: 0.33, refuse: 0.5 } as const
/** Carburised cases: common practice, no source. */
export const REMOVAL_SHARE_CARBURISED = { warn: 0.2, refuse: 0.5 } as const
/** Case left on a running surface when the drawing asks no depth: estimate, 0.10 to 0.25. */
export const LEAST_CASE_LEFT = 0.15
/** Hardness depths over this are dear: common practice, no source. */
export const DEAR_DEPTH = 0.6
