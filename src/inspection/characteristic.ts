import type { Written } from '../place.ts'

/** One thing to measure. Limits are the drawing's, or the operation's; `accept` is inside them by the guard band. */
export type Characteristic = {
  readonly number: number
  readonly name: string
  readonly nominal?: number
  readonly lower?: number
  readonly upper?: number
  readonly unit: string
  readonly gauge: string
  /** Expanded uncertainty of that gauge, in the characteristic's unit. */
  readonly uncertainty: number
  readonly accept: { readonly lower?: number; readonly upper?: number }
  /** Decimal places that the gauge can read. */
  readonly places: number
  readonly operation: number
  readonly stage: 'in-process' | 'before-sending' | 'on-return' | 'final'
  readonly feature: string
  /** Of a length: which limit stands in front. */
  readonly written?: Written
  readonly critical: boolean
  /** Pieces to measure of those that reach the operation, and the plan it comes from. */
  readonly sample: number
  readonly plan: string
  /** One line that the inspector needs. */
  readonly remark?: string
  /** The characteristic under which it was read before, where nothing has changed it since. */
  readonly readAt?: number
}
