import type { Spread } from '../limits.ts'
import type { HardeningProcess, Process } from '../process.ts'
import type { Millimetre } from '../units.ts'

/** What the works, or a firm, measured on earlier batches. Overrides the handbook for the same process and grade. */
export type Measured = {
  /** Of the route, or in the words of the part file: gas nitriding is not nitrocarburising. */
  readonly process: Process | HardeningProcess
  readonly grade?: string
  readonly firm?: string
  readonly pieces: number
  readonly date: string
  /** What it was measured on: the depth as ordered, the wall and the outside diameter of the band, the length. */
  readonly depth?: Millimetre
  readonly wall?: Millimetre
  readonly diameter?: Millimetre
  readonly length?: Millimetre
  /** Per side, one figure for every treated surface; or each for itself. */
  readonly growth?: Spread | MeasuredGrowth
  /** Every furnace load for itself, so that they can be pooled again. */
  readonly loads?: { readonly [side in 'outside' | 'bore']?: readonly MeasuredLoad[] }
  /** Largest less smallest diameter. */
  readonly ovality?: Millimetre
  /** Axis off straight over the length. */
  readonly bow?: Millimetre
  readonly eccentricity?: Millimetre
}

/** Outside and bore per side, positive where metal grows; the length as a whole. */
export type MeasuredGrowth = { readonly [side in 'outside' | 'bore' | 'length']?: Spread }

/** Growth of one furnace load, per side: mean and spread of its pieces. */
export type MeasuredLoad = {
  readonly batch: string
  readonly pieces: number
  readonly mean: Millimetre
  readonly spread: Millimetre
}
