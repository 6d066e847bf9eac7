import type { Millimetre } from './units.ts'

/** One clamping of an operation, as much of it as the planner settles. */
export type Chucking = {
  /** From 1, in the order of work. */
  readonly number: number
  /** The end that stands out. */
  readonly end: 'top' | 'bottom'
  readonly grip: { readonly surface: string; readonly length: Millimetre }
  /** What it is pushed against. */
  readonly stop: string
}
