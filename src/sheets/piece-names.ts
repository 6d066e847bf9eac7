import type { Plan } from '../plan/plan.ts'

/** As pieces are marked: `S` goes first through every set-up, `C` is the coupon, the others by number. */
export function pieceNames({ batch }: Pick<Plan, 'batch'>): readonly string[] {
  const extras = batch.extras.flatMap(({ what, pieces }) => {
    const letter = what.includes('coupon') ? 'C' : 'S'
    return Array.from({ length: pieces }, (_, index) => (pieces > 1 ? `${letter}${index + 1}` : letter))
  })
  return [...extras, ...Array.from({ length: batch.start - extras.length }, (_, index) => String(index + 1))]
}
