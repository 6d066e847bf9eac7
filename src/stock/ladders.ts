import type { Limits } from '../limits.ts'
import { isHardening, type Operation, type Purpose } from '../route/operation.ts'
import { isNarrowRecess } from '../route/running-band.ts'
import type { Sized } from './operation-sizes.ts'
import { roughedTo } from './rough-sizes.ts'
import type { Ladder } from './stock.ts'

/** The limits of every diameter, and of the length that the top face is ground to, after every operation that changes it. */
export function laddersOf(sized: Sized, operations: readonly Operation[]): readonly Ladder[] {
  const { chains, plated } = sized
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
        ...(isNarrowRecess(sized.part, chain.surface) ? [] : at('rough-turn', roughedTo(sized, solved))),
        ...(chain.drilled ? [] : at('finish-turn', soft)),
        ...at('turn', soft),
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
