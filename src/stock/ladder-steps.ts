import type { CasePlan } from '../hardening/case-plan.ts'
import type { Limits } from '../limits.ts'
import type { Millimetre } from '../units.ts'
import type { Ladder, StockEntry } from './stock.ts'

/**
 * The ladders with what every step takes, per side, and the case that is left below it. By the limits before and after; a
 * finishing operation's figures, with growth and the worst place, are those of its stock.
 */
export const withSteps = (
  ladders: readonly Ladder[],
  entries: readonly StockEntry[],
  hardened: { readonly operation: number; readonly ordered: CasePlan['ordered'] } | undefined,
): readonly Ladder[] =>
  ladders.map(ladder => {
    const own = entries.filter(({ surface }) => surface === ladder.surface)
    const cased = hardened && own.some(({ margin }) => margin.case !== undefined) ? hardened : undefined
    return {
      ...ladder,
      states: ladder.states.map((state, index) => {
        const before = ladder.states[index - 1]
        const entry = own.find(({ operation }) => operation === state.operation)
        const taken = before && (entry ? entry.perSide : takenBetween(ladder.kind, before, state))
        const off = own
          .filter(({ operation, margin }) => operation <= state.operation && margin.plating === undefined)
          .reduce((sum, { perSide }) => sum + perSide.most, 0)
        return {
          ...state,
          ...(taken && taken.least > 0 && taken.most > 0 && { taken: { least: taken.least, most: taken.most } }),
          ...(cased && state.operation >= cased.operation && { caseLeft: Math.max(0, cased.ordered.least - off) }),
        }
      }),
    }
  })

/** Half of what the diameters differ by; of a face what the lengths do. */
function takenBetween(
  kind: Ladder['kind'],
  before: Limits,
  after: Limits,
): { readonly least: Millimetre; readonly most: Millimetre } {
  const sides = kind === 'face' ? 1 : 2
  return kind === 'bore'
    ? { least: (after.lower - before.upper) / sides, most: (after.upper - before.lower) / sides }
    : { least: (before.lower - after.upper) / sides, most: (before.upper - after.lower) / sides }
}
