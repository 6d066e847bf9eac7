import type { Spread } from '../limits.ts'

/** What finishing takes off one surface, all operations together, per side at the worst place. */
export type Removal = Spread & {
  readonly surface: string
  /** Nothing slides on a face: its depth must be left, but its hardness and its share do not decide the order. */
  readonly face?: true
}
