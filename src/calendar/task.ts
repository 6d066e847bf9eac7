import type { DayNumber } from './day-number.ts'

/** Whole days that a task takes, with the chance of each. */
export type WholeDays = readonly { readonly days: number; readonly chance: number }[]

export type Length = { readonly least: number; readonly usual: number; readonly most: number }

/** One after the other: the machine, the road, the firm. */
export type Task = {
  /** Of which operations; a journey is of none. */
  readonly operations: readonly number[]
  readonly order?: number
  readonly what: 'work' | 'out' | 'firm' | 'back'
  readonly length: Length
  /** The first day of it, and the last, when the one before ended on a day and it takes so many. */
  readonly place: (ended: DayNumber, days: number) => { readonly from: DayNumber; readonly to: DayNumber }
}
