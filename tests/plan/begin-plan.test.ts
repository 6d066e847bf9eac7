import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readPart } from '../../src/part/read-part.ts'
import { readShop } from '../../src/part/read-shop.ts'
import { planStockSide } from '../../src/plan/begin-plan.ts'
import { makePlan } from '../../src/plan/make-plan.ts'

describe('the stock side of a plan', () => {
  it.each(['OX-098-21', 'OX-112-03'])('%s: says what the whole Plan says, and no finding that it does not', number => {
    const { part } = readPart(readFileSync(`parts/${number}.yaml`, 'utf8'), 'part.yaml')
    const { shop } = readShop(readFileSync('parts/shop.yaml', 'utf8'), 'shop.yaml')
    if (!part || !shop) throw new Error(number)
    const request = { number: '7', quantity: 12 }
    const { plan: side, findings } = planStockSide(part, shop, request)
    const { plan: whole } = makePlan({
      part,
      shop,
      batch: request,
      issue: { date: '2026-01-01', fingerprint: '0', program: 'test' },
    })
    if (!side || !whole) throw new Error(number)
    const { operations, findings: own, ...rest } = side
    expect(whole).toMatchObject(rest)
    expect(operations.map(({ name }) => name)).toEqual(whole.operations.map(({ name }) => name))
    expect(whole.findings).toEqual(expect.arrayContaining([...findings]))
    expect(own).toEqual(findings)
  })
})
