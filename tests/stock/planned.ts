import { expect } from 'vitest'
import { middleOf } from '../../src/limits.ts'
import type { Part } from '../../src/part/part.ts'
import type { Operation } from '../../src/route/operation.ts'
import { planRoute } from '../../src/route/plan-route.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Shop } from '../../src/shop/shop.ts'
import { planStock, type StockPlan } from '../../src/stock/plan-stock.ts'
import type { StockEntry } from '../../src/stock/stock.ts'

export type Planned = StockPlan & { readonly operations: readonly Operation[]; readonly part: Part }

export const planned = (part: Part, shop: Shop = BUILT_IN_SHOP): Planned => {
  const { operations } = planRoute(part, shop)
  return { ...planStock(part, shop, operations), operations, part }
}

/** The entries of a plan, computed again from the sizes of its operations alone. */
function entriesFromSizes({ sizes, operations, entries, case: order }: Planned) {
  return entries
    .filter(({ kind }) => kind !== 'face')
    .map(({ surface, kind, operation }) => {
      const at = (number: number) =>
        (sizes.get(number) ?? []).find(size => size.feature === surface && size.measure === 'diameter')
      const cutting = operations.filter(({ number, process }) => process !== 'nitride' && at(number) !== undefined)
      const index = cutting.findIndex(({ number }) => number === operation)
      const before = at(cutting[index - 1]?.number ?? 0)
      const after = at(operation)
      if (!before || !after) throw new Error(`no sizes for ${surface}`)
      const first = cutting[index - 1]?.purpose === 'finish-turn'
      const none = { least: 0, nominal: 0, most: 0 }
      const own = order?.growth.bands.find(band => band.surface === surface && band.side === kind)
      const g = (first && own?.growth) || none
      return kind === 'bore'
        ? {
            least: after.lower - (before.upper - 2 * g.least),
            nominal: middleOf(after) - (middleOf(before) - 2 * g.nominal),
            most: after.upper - (before.lower - 2 * g.most),
          }
        : {
            least: before.lower + 2 * g.least - after.upper,
            nominal: middleOf(before) + 2 * g.nominal - middleOf(after),
            most: before.upper + 2 * g.most - after.lower,
          }
    })
}

/** Stock, worst place and margins follow their definitions, and no limits cross. */
export const expectConsistent = (plan: Planned): void => {
  const round = plan.entries.filter(({ kind }) => kind !== 'face')
  for (const [index, expected] of entriesFromSizes(plan).entries()) {
    const { onDiameter } = round[index] as StockEntry
    expect(onDiameter.least).toBeCloseTo(expected.least, 9)
    expect(onDiameter.nominal).toBeCloseTo(expected.nominal, 9)
    expect(onDiameter.most).toBeCloseTo(expected.most, 9)
  }
  for (const { surface, kind, onDiameter, perSide, margin, eccentricity, form } of plan.entries) {
    expect(perSide.least).toBeCloseTo(onDiameter.least / 2 - eccentricity - form, 9)
    expect(perSide.most).toBeCloseTo(onDiameter.most / 2 + eccentricity + form, 9)
    expect(margin.cleanUp).toBeCloseTo(perSide.least - perSide.needed, 9)
    const all = plan.entries.filter(entry => entry.surface === surface)
    const taken = all.reduce((sum, entry) => sum + entry.perSide.most, 0)
    // No depth is asked of a face.
    if (kind === 'face') expect(margin.case).toBeUndefined()
    else if (plan.case)
      expect(margin.case).toBeCloseTo(
        Math.min(plan.case.ordered.least, plan.case.limit.least) - taken - plan.case.asked,
        9,
      )
  }
  for (const size of [...plan.sizes.values()].flat()) expect(size.lower).toBeLessThanOrEqual(size.upper)
}

/** Margins of one entry beside the order: what is left of the case follows the order, which is made for what is taken. */
export function caseOf(
  { entries, case: order }: Planned,
  index = 0,
): { readonly cleanUp: number; readonly ordered: number; readonly overOrder: number } | undefined {
  const entry = entries[index]
  if (!entry || !order || entry.margin.case === undefined) return undefined
  const { cleanUp, case: left } = entry.margin
  return { cleanUp, ordered: order.ordered.least, overOrder: left - order.ordered.least }
}
