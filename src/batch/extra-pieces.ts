import { HARDENING_PROCESSES } from '../process.ts'
import type { Operation } from '../route/operation.ts'
import type { Habits } from '../shop/shop.ts'
import type { Batch } from './batch.ts'

/** Started on top of the yield: the piece that the set-ups are proved on, and the coupon that goes through the furnace. */
export function extraPieces(
  operations: readonly Operation[],
  { setupPieces, couponPieces }: Pick<Habits, 'setupPieces' | 'couponPieces'>,
): Batch['extras'] {
  const hardened = operations.some(({ process }) => HARDENING_PROCESSES.has(process))
  return [
    extra('set-up piece, goes first through every set-up', 'S', setupPieces),
    extra('hardening coupon, turned and hardened with the batch, then sectioned', 'C', hardened ? couponPieces : 0),
  ].filter(({ pieces }) => pieces > 0)
}

/** One of its kind goes by the letter alone. */
const extra = (what: string, letter: string, pieces: number): Batch['extras'][number] => ({
  what,
  pieces,
  marks: pieces === 1 ? [letter] : Array.from({ length: pieces }, (_, index) => `${letter}${index + 1}`),
})
