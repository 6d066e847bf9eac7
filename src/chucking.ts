import type { Millimetre, Newton } from './units.ts'

/** The end that the tilted rotary holds: its chuck faces +X, so the other end than the head's, or the head's where that faces -X. */
export const endInRotary = (headFaces: '+X' | '-X'): 'top' | 'bottom' => (headFaces === '+X' ? 'bottom' : 'top')

export type HeldWith = 'hard jaws' | 'bored soft jaws' | 'pie jaws' | 'expanding mandrel' | 'centres'

/** Of each jaw: what it needs at standstill, what is left of it at the speed of the step that asks most. */
export type JawForce = {
  readonly jaws: number
  readonly set: Newton
  /** The same, to set it to: no chuck is set finer than to the hundred. */
  readonly ask: Newton
  readonly left: Newton
  /** The step that asks most, and whether the part would turn or slide in the jaws, or tilt. */
  readonly step: string
  readonly against: 'slip' | 'tilt'
}

/** One clamping of an operation, as much of it as the planner settles. */
export type Chucking = {
  /** From 1, in the order of work. */
  readonly number: number
  /** The end that stands out. */
  readonly end: 'top' | 'bottom'
  readonly grip: { readonly surface: string; readonly length: Millimetre }
  /** What it is pushed against. */
  readonly stop: string
  readonly heldWith?: HeldWith
  readonly jawForce?: JawForce
  /** How true it is set, and by what. */
  readonly clocking?: string
}
