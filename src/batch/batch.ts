import type { Kilogram, Millimetre } from '../units.ts'

/** What the user asks for. */
export type BatchRequest = {
  readonly number: string
  /** Good pieces wanted. */
  readonly quantity: number
  /** Heat number of the bar, when known. */
  readonly heat?: string
  /** The day that the first operation is begun on, YYYY-MM-DD. Without it nothing has a date. */
  readonly begins?: string
}

export type Batch = BatchRequest & {
  /** Pieces to start for `quantity` good ones. */
  readonly start: number
  /** Chance that `start` gives at least `quantity`. */
  readonly confidence: number
  readonly yield: number
  /** Started on top of the yield: set-up pieces and coupons. */
  readonly extras: readonly {
    readonly what: string
    readonly pieces: number
    /** What each is marked with, in place of a number. */
    readonly marks: readonly string[]
  }[]
  /** The others are marked 1, 2, … up to this. */
  readonly numbered: number
  /** Fewest numbered pieces that may go into an operation, for as good a chance of `quantity` as the works asks for. */
  readonly goOnWith?: readonly { readonly operation: number; readonly pieces: number }[]
}

export type MaterialNeed = {
  readonly grade: string
  readonly barDiameter: Millimetre
  readonly barSupply: string
  readonly blankLength: Millimetre
  readonly pitch: Millimetre
  readonly piecesPerBar: number
  readonly bars: number
  readonly barLength: Millimetre
  /** Of all the bars to buy. */
  readonly mass: Kilogram
  readonly blankMass: Kilogram
  /** Left of the last bar, stub and all. */
  readonly offcut: Millimetre
  /** Why this bar: one line each. */
  readonly because?: readonly string[]
}
