import type { Limits } from '../limits.ts'
import { isHardening, type Operation, type Purpose } from '../route/operation.ts'
import { roughedTo, type Sized } from './operation-sizes.ts'
import type { Ladder } from './stock.ts'

/** The limits of every diameter, and of the length that the top face is ground to, after every operation that changes it. */
export function laddersOf({ chains, shop, plated }: Sized, operations: readonly Operation[]): readonly Ladder[] {
  const at = (purpose: Purpose, limits: Limits) =>
    operations
      .filter(operation => operation.purpose === purpose)
      .map(operation => ({ ...plain(limits), operation: operation.number, name: operation.name }))
  return chains.map(solved => {
    const { chain, soft, hardened, after } = solved
    return {
      surface: chain.surface,
      kind: chain.kind,
      states: [
        ...at('rough-turn', roughedTo(solved, shop)),
        ...(chain.drilled ? [] : at('finish-turn', soft)),
        ...(chain.hard
          ? operations
              .filter(({ purpose }) => isHardening(purpose))
              .map(operation => ({ ...plain(hardened), operation: operation.number, name: operation.name }))
          : []),
        ...chain.finishes.map(({ operation }, index) => ({
          ...plain(after[index] ?? chain.final),
          operation: operation.number,
          name: operation.name,
        })),
        ...(plated?.chain.surface === chain.surface
          ? [...at('plate', plated.soft), ...at('hone-bore', plated.chain.final)]
          : []),
      ],
    }
  })
}

const plain = ({ nominal, lower, upper }: Limits): Limits => ({ nominal, lower, upper })
