import { inwardLimits, length, type Units } from '../figures.ts'
import type { PlacedLadder } from '../inspection/size-places.ts'
import { writtenAs } from '../place.ts'
import type { PlatingPlan } from '../plating/plating-plan.ts'
import type { Ladder } from '../stock/stock.ts'
import type { Millimetre } from '../units.ts'

/**
 * One step of a ladder on an axis that points out of the metal, counted on one side: half the diameter of an outside,
 * minus half that of a bore, the length itself where a face is measured by it.
 */
export type LadderRow = {
  readonly operation: number
  readonly name: string
  /** The limits, nearer to the metal first. */
  readonly inner: Millimetre
  readonly outer: Millimetre
  /** As printed, the limit met first in front. */
  readonly written: string
  /** What the operation takes, where it takes anything: from the surface after it to the surface before it. */
  readonly taken?: {
    readonly least: readonly [Millimetre, Millimetre]
    readonly most: readonly [Millimetre, Millimetre]
    readonly written: string
  }
  /** What a plating puts on, each side, as printed. */
  readonly added?: string
  /** Of the case, or of a plating, below the nearer limit at the worst place. */
  readonly depth?: Millimetre
}

/** The plating of the surface, with the operation that lays it on. */
export type PlatedStates = Pick<PlatingPlan, 'layer' | 'left'> & { readonly operation: number }

/** A size on the outward axis. */
const onePerSide = (kind: Ladder['kind'], size: Millimetre): Millimetre =>
  kind === 'face' ? size : kind === 'bore' ? -size / 2 : size / 2

export const ladderRows = (
  { kind, states }: PlacedLadder,
  plating?: PlatedStates,
  units: Units = 'mm',
): readonly LadderRow[] =>
  states.map(({ operation, name, lower, upper, places, taken, caseLeft }): LadderRow => {
    const [a, b] = [onePerSide(kind, lower), onePerSide(kind, upper)]
    const [inner, outer] = [Math.min(a, b), Math.max(a, b)]
    const limits = inwardLimits(lower, upper, places, units)
    return {
      operation,
      name,
      inner,
      outer,
      written: (writtenAs(kind) === 'hole' ? limits : limits.toReversed()).join(' / '),
      ...(taken && {
        taken: {
          least: [outer, outer + taken.least],
          most: [inner, inner + taken.most],
          written: `${length(taken.least, units)} to ${length(taken.most, units)}`,
        },
      }),
      ...(plating?.operation === operation && {
        added: `adds ${length(plating.layer.least, units)} to ${length(plating.layer.most, units)}`,
      }),
      ...(caseLeft !== undefined && { depth: caseLeft }),
      ...(plating && operation >= plating.operation && { depth: platedDepth(plating, operation) }),
    }
  })

const platedDepth = ({ operation, layer, left }: PlatedStates, at: number): Millimetre =>
  at === operation ? layer.least : left.least
