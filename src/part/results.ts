import type { Place } from '../finding.ts'
import type { Degree, Millimetre } from '../units.ts'

/** One reading as it was written down. */
export type Reading = {
  readonly serial: string
  /** Surface, or a characteristic by its name or number. */
  readonly of: string
  /** The operation that left it so; absent where the list does not say. */
  readonly after?: number
  readonly depth?: Millimetre
  readonly direction?: Degree
  readonly value: number
  /** As written beside it, lengths turned into mm; left out: the characteristic's own. */
  readonly unit?: string
  /** Decimal places as written. */
  readonly places: number
  readonly gauge?: GaugeUsed
  /** °C, of the part and of the gauge. */
  readonly temperature?: number
  readonly gaugeTemperature?: number
  readonly date?: string
  readonly by?: string
  readonly note?: string
  readonly at: Place
}

export type GaugeUsed = {
  readonly gauge?: string
  readonly id?: string
  readonly setOn?: Millimetre
  readonly uncertainty?: Millimetre
  /** Standard deviation of one reading repeated. */
  readonly repeatability?: Millimetre
}

export type LostPiece = {
  readonly serial: string
  readonly operation?: number
  readonly why?: string
  readonly at: Place
}

export type HardnessResult = {
  readonly coupon?: string
  readonly load?: string
  readonly surface: readonly number[]
  readonly depth?: Millimetre
  readonly at: Place
}

/** What one file says of a batch. */
export type Results = {
  readonly file: string
  readonly part?: string
  readonly revision?: string
  readonly batch?: string
  readonly date?: string
  readonly readings: readonly Reading[]
  readonly hardness?: HardnessResult
  readonly lost: readonly LostPiece[]
  /** Where the head stands: what is wrong with the whole is said there. */
  readonly at: Place
}

/** Axis off straight: no characteristic of the plan need ask for it. */
export const BOW = 'bow'

/** Pieces that are delivered go by number; S is a set-up piece, C a coupon. */
export const PIECE: RegExp = /^\d/
