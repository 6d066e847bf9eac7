import type { BatchRequest } from '../batch/batch.ts'
import { type BatchPlan, planBatch } from '../batch/plan-batch.ts'
import { byPlace, type Finding, hasErrors } from '../finding.ts'
import type { Part } from '../part/part.ts'
import type { Purpose } from '../route/operation.ts'
import { planRoute, type Route } from '../route/plan-route.ts'
import type { Shop } from '../shop/shop.ts'
import { stockAndShop } from '../stock/closer-turning.ts'
import type { StockPlan } from '../stock/plan-stock.ts'
import { withBatchChances } from '../stock/with-chances.ts'
import type { StockSide } from './plan.ts'

/** The rooms that need no port, tool or gauge. Without them the part cannot be put in order. */
export type Begun = {
  readonly rooms?: {
    readonly route: Route
    readonly stock: StockPlan
    readonly batch: BatchPlan
    /** The works as it turns this part. */
    readonly shop: Shop
  }
  readonly findings: readonly Finding[]
}

/** Route, stock and batch, each from the ones before. */
export function beginPlan(part: Part, given: Shop, request: BatchRequest, wanted?: readonly Purpose[]): Begun {
  const route = planRoute(part, given, wanted)
  if (hasErrors(route.findings)) return { findings: byPlace(route.findings) }
  const { stock, shop } = stockAndShop(part, given, route.operations)
  const batch = planBatch({ part, shop, request, operations: route.operations, need: stock.need })
  const findings = byPlace([...route.findings, ...stock.findings, ...batch.findings])
  return { rooms: { route, stock, batch, shop }, findings }
}

/** The stock alone, for who asks nothing else: what it needs of the Plan, and the findings of the rooms it went through. */
export function planStockSide(
  part: Part,
  shop: Shop,
  request: BatchRequest,
): { readonly plan?: StockSide; readonly findings: readonly Finding[] } {
  const { rooms, findings } = beginPlan(part, shop, request)
  if (!rooms) return { findings }
  const { route, stock, batch } = rooms
  const { number, title, revision, kind } = part
  return {
    findings,
    plan: {
      part: { number, title, revision, kind },
      batch: batch.batch,
      operations: route.operations,
      stock: withBatchChances(stock.entries, batch.batch.start),
      ladders: stock.ladders,
      ...(stock.case && { case: stock.case }),
      ...(stock.quench && { quench: stock.quench }),
      ...(stock.plating && { plating: stock.plating }),
      findings,
    },
  }
}
