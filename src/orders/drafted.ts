import type { Finished, Returned } from './order.ts'
import type { Draft } from './say.ts'

/** An order as its kind of work writes it, before visit, firm and numbers. */
export type Drafted = {
  readonly points: readonly Draft[]
  readonly finish: readonly Finished[]
  readonly returns: readonly Omit<Returned, 'number'>[]
  readonly cautions: readonly string[]
  /** The surfaces whose arriving size the firm needs; left out, all. */
  readonly named?: readonly string[]
}
