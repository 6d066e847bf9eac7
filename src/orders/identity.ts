import type { OrderSource } from './order-source.ts'
import { count } from './quantity.ts'
import type { Draft } from './say.ts'
import { point, say } from './say.ts'

/** Which pieces: told in words of the user's own, so that no figure of the plan hides in them. */
export const identity = ({ part, batch }: OrderSource, ...more: readonly string[]): readonly Draft[] =>
  point(
    'Part',
    `${part.number} ${part.title}, drawing revision ${part.revision}, batch ${batch.number}.`,
    say`${count('asked', 'pieces', { value: batch.start })} pieces, each with its number: keep them with it.`,
    batch.heat === undefined ? 'Heat number as marked on the pieces.' : `Heat ${batch.heat}.`,
    ...more,
  )
