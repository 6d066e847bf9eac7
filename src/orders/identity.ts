import type { Visit } from './order-source.ts'
import { count } from './quantity.ts'
import type { Draft } from './say.ts'
import { point, say } from './say.ts'

/** Which pieces: told in words of the user's own, so that no figure of the plan hides in them. */
export function identity({ source, operations }: Visit, ...more: readonly string[]): readonly Draft[] {
  const { part, batch } = source
  const [first] = operations
  const pieces = count('asked', 'pieces', { value: batch.start })
  const marked = source.operations.some(({ purpose, number }) => purpose === 'mark' && number < (first?.number ?? 0))
  return point(
    'Part',
    `${part.number} ${part.title}, drawing revision ${part.revision}, batch ${batch.number}.`,
    marked ? say`${pieces} pieces, each with its number: keep them with it.` : say`${pieces} pieces.`,
    batch.heat === undefined ? 'Heat number as the bar certificate says.' : `Heat ${batch.heat}.`,
    ...more,
  )
}

/** For whoever hardens: the pieces of one heat, and what they are of. */
export const oneHeat = (visit: Visit): readonly Draft[] => [
  ...identity(visit, 'One heat in a charge: do not mix heats.'),
  ...point(
    'Material',
    `${visit.source.grade}. The bar certificate with analysis, cast and heat treatment goes with the parts.`,
  ),
]
