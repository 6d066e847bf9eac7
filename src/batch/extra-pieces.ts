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
    { what: 'set-up piece, goes first through every set-up', pieces: setupPieces },
    {
      what: 'hardening coupon, turned and hardened with the batch, then sectioned',
      pieces: hardened ? couponPieces : 0,
    },
  ].filter(({ pieces }) => pieces > 0)
}
