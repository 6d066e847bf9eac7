import { type Finding, hasErrors } from '../finding.ts'
import type { Part } from '../part/part.ts'
import { planRoute, type Route } from '../route/plan-route.ts'
import type { Shop } from '../shop/shop.ts'
import { stockAndShop } from '../stock/closer-turning.ts'
import { finishChains } from '../stock/finish-chain.ts'
import { planStock } from '../stock/plan-stock.ts'
import { type ChosenStock, chooseStock } from '../stock/settle-stock.ts'
import type { StockEntry, Verdict } from '../stock/stock.ts'
import type { Millimetre } from '../units.ts'
import { thinnestWall } from '../wall.ts'
import { SCRATCH } from '../working.ts'

/** The part and the works with one value changed, or the reasons why there is no such part. */
export type Changed = { readonly part: Part; readonly shop: Shop } | { readonly findings: readonly Finding[] }

export type SweepPoint = {
  readonly value: number
  readonly entries: readonly Pick<StockEntry, 'surface' | 'operation' | 'kind' | 'onDiameter' | 'margin' | 'verdict'>[]
  /** Depth of case ordered, least. */
  readonly ordered?: Millimetre
  /** Nothing in the plan of the stock is an error. */
  readonly serves: boolean
  readonly findings: readonly Finding[]
}

/** A stretch of values in which one finish serves both ends, or all of them do. */
export type SweepWindow = { readonly from: number; readonly to: number }

export type Sweep = {
  readonly points: readonly SweepPoint[]
  /** Where every finish is good. */
  readonly windows: readonly SweepWindow[]
  readonly surfaces: readonly {
    readonly surface: string
    readonly operation: number
    readonly windows: readonly SweepWindow[]
  }[]
}

/**
 * Plans the stock anew at every value. Where only a fixed stock changes, the route and the planner's own choice are kept,
 * so that the case ordered stays what it is and the margins can be read against the stock.
 */
export function planSweep(values: readonly number[], changedTo: (value: number) => Changed): Sweep {
  let last: Kept | undefined
  const points = values.map((value): SweepPoint => {
    const changed = changedTo(value)
    if ('findings' in changed) return { value, entries: [], serves: false, findings: changed.findings }
    last = keep(changed.part, changed.shop, last)
    const { route, chosen, turned = changed.shop } = last
    if (hasErrors(route.findings)) return { value, entries: [], serves: false, findings: route.findings }
    const plan = planStock(changed.part, turned, route.operations, {
      chances: false,
      ...(chosen && { chosen, orderStands: true }),
    })
    return {
      value,
      entries: plan.entries.map(({ surface, operation, kind, onDiameter, margin, verdict }) => ({
        surface,
        operation,
        kind,
        onDiameter,
        margin,
        verdict,
      })),
      ...(plan.case && { ordered: plan.case.ordered.least }),
      serves: !hasErrors(plan.findings),
      findings: plan.findings,
    }
  })
  return { points, windows: windowsOf(points, allOk), surfaces: surfacesOf(points) }
}

type Kept = {
  readonly key: string
  readonly shop: Shop
  /** The works as it turns this part. */
  readonly turned?: Shop
  readonly route: Route
  readonly chosen?: ChosenStock
}

function keep(part: Part, shop: Shop, last: Kept | undefined): Kept {
  const key = JSON.stringify({ ...part, stock: undefined, places: undefined })
  if (last && last.key === key && last.shop === shop) return last
  const route = planRoute(part, shop)
  if (hasErrors(route.findings)) return { key, shop, route }
  const { shop: turned } = stockAndShop(part, shop, route.operations, { chances: false })
  const chains = finishChains(SCRATCH, part, turned, route.operations)
  return { key, shop, turned, route, chosen: chooseStock(part, turned, chains, thinnestWall(part)) }
}

const isOk = (verdict: Verdict | undefined): boolean => verdict === 'ok' || verdict === 'marginal'
const allOk = ({ entries }: SweepPoint): boolean => entries.length > 0 && entries.every(({ verdict }) => isOk(verdict))

function surfacesOf(points: readonly SweepPoint[]): Sweep['surfaces'] {
  const finishes = points.find(({ entries }) => entries.length > 0)?.entries ?? []
  return finishes.map(({ surface, operation }) => ({
    surface,
    operation,
    windows: windowsOf(points, ({ entries }) =>
      isOk(entries.find(entry => entry.surface === surface && entry.operation === operation)?.verdict),
    ),
  }))
}

/** Stretches of neighbouring points that hold. */
function windowsOf(points: readonly SweepPoint[], holds: (point: SweepPoint) => boolean): readonly SweepWindow[] {
  const windows: SweepWindow[] = []
  let open: SweepWindow | undefined
  for (const point of points) {
    if (holds(point)) open = { from: open?.from ?? point.value, to: point.value }
    else if (open) {
      windows.push(open)
      open = undefined
    }
  }
  return open ? [...windows, open] : windows
}
