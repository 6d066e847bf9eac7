import { expect, it } from 'vitest'
import { jawLimit } from '../../src/orders/jaw-limit.ts'
import type { OrderedOperation, OrderSource } from '../../src/orders/order-source.ts'
import { SCRATCH } from '../../src/working.ts'
import { demo, NO_GRINDERS, planOf } from './planned-orders.ts'

const plan = planOf(demo('OX-098-21'), NO_GRINDERS)
const operations: readonly OrderedOperation[] = plan.operations.map(operation => ({ ...operation, firms: [] }))
const grind = operations.find(({ purpose }) => purpose === 'grind-bore')

function limitIn(grade: string): number {
  if (!grind) throw new Error('nothing is ground')
  const { part, batch, stock } = plan
  const characteristics = plan.inspection.characteristics
  const source: OrderSource = {
    part,
    batch,
    works: {},
    firms: [],
    grade,
    operations,
    ladders: [],
    stock,
    ovality: () => undefined,
    ported: true,
    characteristics,
  }
  return jawLimit({ source, operations: [grind], notebook: SCRATCH }, grind) ?? Number.NaN
}

// Moduli, N/mm²: steel 210 000 (data sheets), grey iron 110 000, ductile iron 170 000, bronze 110 000 (memory).
it.each([
  ['EN-GJL-250', 110],
  ['EN-GJS-600-3', 170],
  ['CuSn12-C', 110],
])('a ring of %s springs more than one of steel, so its jaws may press with %d parts of 210', (grade, modulus) => {
  expect(limitIn(grade) / limitIn('42CrMo4')).toBeCloseTo(modulus / 210, 9)
})
