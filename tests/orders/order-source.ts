import { readFileSync } from 'node:fs'
import { withLadderPlaces, withPlaces } from '../../src/inspection/size-places.ts'
import type { OrderedOperation, OrderSource } from '../../src/orders/outside-order.ts'
import type { Part } from '../../src/part/part.ts'
import { readPart } from '../../src/part/read-part.ts'
import { planRoute } from '../../src/route/plan-route.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { planStock } from '../../src/stock/plan-stock.ts'

/** A part of the demo works, read from its file. */
export function demoPart(file: string): Part {
  const { part } = readPart(readFileSync(`parts/${file}`, 'utf8'), file)
  if (!part) throw new Error(`${file} does not read`)
  return part
}

/** Route and stock of a part, as far as an order needs them. */
export function orderSource(part: Part): OrderSource & { readonly operations: readonly OrderedOperation[] } {
  const { operations } = planRoute(part, BUILT_IN_SHOP)
  const stock = planStock(part, BUILT_IN_SHOP, operations)
  return {
    part,
    batch: { number: '2631', start: 15, heat: 'H-4471' },
    material: { grade: part.material.grade },
    operations: operations.map(operation => ({
      ...operation,
      sizes: withPlaces(stock.sizes.get(operation.number) ?? [], operation.number, []),
    })),
    ladders: withLadderPlaces(stock.ladders, []),
    stock: stock.entries,
    ...(stock.case && { case: stock.case }),
    ...(stock.plating && { plating: stock.plating }),
    ports: part.ports,
    inspection: { characteristics: [] },
  }
}
