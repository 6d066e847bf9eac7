import { readFileSync } from 'node:fs'
import { planBatch } from '../../src/batch/plan-batch.ts'
import type { OperationState } from '../../src/cutting/operation-state.ts'
import type { Part } from '../../src/part/part.ts'
import { readPart } from '../../src/part/read-part.ts'
import { planPorts } from '../../src/ports/plan-ports.ts'
import type { PlannedPort } from '../../src/ports/port.ts'
import { planRoute } from '../../src/route/plan-route.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { planStock } from '../../src/stock/plan-stock.ts'

export type Demo = {
  readonly part: Part
  readonly states: readonly OperationState[]
  readonly ports: readonly PlannedPort[]
  readonly start: number
}

/** A part of the demo, planned as far as cutting needs it. */
export function demo(file: 'OX-098-21' | 'OX-112-03'): Demo {
  const { part } = readPart(readFileSync(new URL(`../../parts/${file}.yaml`, import.meta.url), 'utf8'), `${file}.yaml`)
  if (!part) throw new Error(`${file} has errors`)
  const shop = BUILT_IN_SHOP
  const { operations } = planRoute(part, shop)
  const stock = planStock(part, shop, operations)
  const { ports } = stock.asMilled ? planPorts(part, shop, stock.asMilled) : { ports: [] }
  const batch = planBatch({ part, shop, request: { number: 'test', quantity: 12 }, operations, need: stock.need })
  let present = batch.sawn.shape
  const states = operations.map((operation): OperationState => {
    const before = present
    present = stock.shapes.get(operation.number) ?? present
    const sizes = operation.purpose === 'saw-blanks' ? batch.sawn.sizes : (stock.sizes.get(operation.number) ?? [])
    return { operation, sizes, before, after: present, roughed: stock.roughed }
  })
  return { part, states, ports, start: batch.batch.start }
}
