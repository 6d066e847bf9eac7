import type { Millimetre } from '../units.ts'
import type { DepthTerm } from './case-tolerance.ts'

/** The deepest case that firms offer, as the least figure of an order. */
export const DEEPEST_CASE: {
  readonly [term in DepthTerm]: { readonly depth: Millimetre; readonly source: string }
} = {
  NHD: { depth: 1, source: "a heat treater's general range of gas nitriding, 0.1 to 1 mm" },
  CHD: { depth: 2.5, source: 'common practice, no source; a contract hardener gives 0.2 to 1.5 mm as usual' },
  SHD: { depth: 5, source: 'memory: 2 to 5 mm at 3 to 10 kHz' },
}

/** Case on both sides together, most, as a share of the wall. */
export type WallLimit = {
  readonly over: Millimetre
  readonly upTo: Millimetre
  readonly share: number
  /** What the thickest wall of the row before bears: a thicker wall cannot bear less. */
  readonly notUnder: Millimetre
}

export const WALL_LIMIT_SOURCE =
  'ISO 18669 limits of carburised piston pins as a pin maker reprints them, made not to fall where the rows meet; for nitrided liners an estimate'
/** Under 1.5 mm there is no rule. */
export const WALL_LIMITS: readonly WallLimit[] = [
  { over: 1.5, upTo: 3, share: 0.65, notUnder: 0 },
  { over: 3, upTo: 5, share: 0.5, notUnder: 1.95 },
  { over: 5, upTo: Number.POSITIVE_INFINITY, share: 0.35, notUnder: 2.5 },
]

/** The first row counts from 1.5 mm itself. */
export const wallLimit = (wall: Millimetre): WallLimit | undefined =>
  WALL_LIMITS.find(({ over, upTo }) => (wall > over || wall === WALL_LIMITS[0]?.over) && wall <= upTo)

/** With one side carburised the other is core: half of what both may have and this share of the wall. Estimate. */
export const ONE_SIDE_MORE = 0.2

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
/** The same of a thin process, which runs on its layer and not on the depth below it: the lower end of that estimate. */
export const LEAST_CASE_UNDER_LAYER = 0.1
