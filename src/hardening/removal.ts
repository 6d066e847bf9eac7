import type { Spread } from '../limits.ts'

/** What finishing takes off one surface, all operations together, per side at the worst place. */
export type Removal = Spread & {
  readonly surface: string
  /** Nothing slides on a face: it is treated, and neither depth nor hardness is asked of it. */
  readonly face?: true
}

/** The surface that loses most; no face. */
export const worstOf = (removal: readonly Removal[]): Removal | undefined =>
  removal
    .filter(({ face }) => !face)
    .reduce<Removal | undefined>((worst, one) => (worst && worst.most >= one.most ? worst : one), undefined)
