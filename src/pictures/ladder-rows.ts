import { inwardLimits, length, type Units } from '../figures.ts'
import type { CasePlan } from '../hardening/case-plan.ts'
import type { PlacedLadder } from '../inspection/size-places.ts'
import { writtenAs } from '../place.ts'
import type { PlatingPlan } from '../plating/plating-plan.ts'
import type { Ladder, StockEntry } from '../stock/stock.ts'
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

export function ladderRows(
  { surface, kind, states }: PlacedLadder,
  entries: readonly StockEntry[],
  hardened: CasePlan | undefined,
  hardening: number | undefined,
  plating?: PlatedStates,
  units: Units = 'mm',
): readonly LadderRow[] {
  const own = entries.filter(entry => entry.surface === surface)
  const isHardened =
    hardened !== undefined && hardening !== undefined && own.some(({ margin }) => margin.case !== undefined)
  return states.map((state, index): LadderRow => {
    const [a, b] = [onePerSide(kind, state.lower), onePerSide(kind, state.upper)]
    const [inner, outer] = [Math.min(a, b), Math.max(a, b)]
    const before = states[index - 1]
    const entry = own.find(({ operation }) => operation === state.operation)
    const limits = inwardLimits(state.lower, state.upper, state.places, units)
    const taken = before && takenBetween(kind, before, { inner, outer }, entry, units)
    const off = own
      .filter(({ operation, margin }) => operation <= state.operation && margin.plating === undefined)
      .reduce((sum, { perSide }) => sum + perSide.most, 0)
    return {
      operation: state.operation,
      name: state.name,
      inner,
      outer,
      written: (writtenAs(kind) === 'hole' ? limits : limits.toReversed()).join(' / '),
      ...(taken && { taken }),
      ...(plating?.operation === state.operation && {
        added: `adds ${length(plating.layer.least, units)} to ${length(plating.layer.most, units)}`,
      }),
      ...(isHardened && state.operation >= hardening && { depth: Math.max(0, hardened.ordered.least - off) }),
      ...(plating && state.operation >= plating.operation && { depth: platedDepth(plating, state.operation) }),
    }
  })
}

const platedDepth = ({ operation, layer, left }: PlatedStates, at: number): Millimetre =>
  at === operation ? layer.least : left.least

/** By the limits before and after; a finishing operation's figures, with growth and the worst place, are the plan's own. */
function takenBetween(
  kind: Ladder['kind'],
  before: Ladder['states'][number],
  after: { readonly inner: Millimetre; readonly outer: Millimetre },
  entry: StockEntry | undefined,
  units: Units,
): LadderRow['taken'] | undefined {
  const [a, b] = [onePerSide(kind, before.lower), onePerSide(kind, before.upper)]
  const [inner, outer] = [Math.min(a, b), Math.max(a, b)]
  const [least, most] = entry ? [entry.perSide.least, entry.perSide.most] : [inner - after.outer, outer - after.inner]
  if (most <= 0 || least <= 0) return undefined
  return {
    least: [after.outer, after.outer + least],
    most: [after.inner, after.inner + most],
    written: `${length(least, units)} to ${length(most, units)}`,
  }
}
