import type { Millimetre } from './units.ts'

/** The end that the tilted rotary holds: its chuck faces +X, so the other end than the head's, or the head's where that faces -X. */
export const endInRotary = (headFaces: '+X' | '-X'): 'top' | 'bottom' => (headFaces === '+X' ? 'bottom' : 'top')

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
