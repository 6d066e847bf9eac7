import { describe, expect, it } from 'vitest'
import { toleranceOf } from '../../src/limits.ts'
import { readShop } from '../../src/part/read-shop.ts'
import { planRoute } from '../../src/route/plan-route.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Shop } from '../../src/shop/shop.ts'
import { stockAndShop } from '../../src/stock/closer-turning.ts'
import { partFrom } from '../route/part-text.ts'

/** Invented. */
const sleeve = ({ hardness = 700, stock = '' } = {}) =>
  partFrom(`part: {number: OX-9-1174, title: Test sleeve, revision: A, kind: sleeve}
material: {grade: 34CrAlNi7, hardness: 275 HV, temper: 590}
body:
  length: 64 ±0.2
  outside: {size: 72 g6, Ra: 0.4}
  bore: {size: 61 H7, Ra: 0.4, cylindricity: 0.008}
hardening: {process: gas nitriding, hardness: min ${hardness} HV, depth: min 0.15}
${stock}`)

const plan = (part: ReturnType<typeof sleeve>, shop: Shop = BUILT_IN_SHOP) => {
  const { operations } = planRoute(part, shop)
  const { stock, shop: turned } = stockAndShop(part, shop, operations)
  const said = (severity: string) =>
    stock.findings.filter(finding => finding.severity === severity).map(({ code }) => code)
  const soft = operations.find(({ purpose }) => purpose === 'finish-turn')?.number ?? 0
  const bore = stock.sizes.get(soft)?.find(({ feature, measure }) => feature === 'bore' && measure === 'diameter')
  if (!bore) throw new Error('no finish-turned bore')
  return { stock, turned, errors: said('error'), notes: said('note'), width: toleranceOf(bore) }
}

const worksThat = (habits: string): Shop => {
  const { shop } = readShop(`shop: {name: Test works}\nhabits: {${habits}}\n`, 'shop.yaml')
  if (!shop) throw new Error('no shop')
  return shop
}

describe('a last soft cut taken closer than usual, where the case would be out of reach (common practice, no source)', () => {
  it('is planned where as usual the case would be deeper than the grade is nitrided, with its reason', () => {
    const asUsual = worksThat('finish-turning-tolerance: 0.05, turned-roughness: 20, turned-outside-to-bore: 0.015')
    expect(plan(sleeve(), asUsual).errors).toEqual(['case/deeper-than-usual'])
    const closer = plan(sleeve())
    expect(closer.errors).toEqual([])
    expect(closer.notes).toContain('stock/turned-closer')
    // 34CrAlNi7-10 is nitrided 0.2 to 0.5 mm deep (memory).
    expect(closer.stock.case?.ordered.least).toBeLessThanOrEqual(0.5)
  })

  it('is what the works then cuts and says: tolerance, roughness, truth to the bore, by the handbook', () => {
    const { turned, width, stock } = plan(sleeve())
    expect(width).toBeCloseTo(0.03, 9)
    expect(turned.habits).toMatchObject({
      finishTurningTolerance: 0.03,
      turnedRoughness: 6.3,
      turnedOutsideToBore: 0.01,
    })
    const rests = stock.entries.flatMap(({ basis = [] }) => basis)
    expect(rests.find(({ figure }) => figure === 'roughness before')).toMatchObject({ value: 6.3, from: 'handbook' })
    expect(rests.find(({ figure }) => figure === 'turned outside to bore')).toMatchObject({
      value: 0.01,
      from: 'handbook',
    })
  })

  it('is left where the case is within reach, or where even the closest cut does not bring it there', () => {
    const easy = plan(sleeve({ hardness: 500 }))
    expect([easy.errors, easy.width, easy.turned]).toEqual([[], expect.closeTo(0.05, 9), BUILT_IN_SHOP])
    const beyond = plan(sleeve({ hardness: 900 }))
    expect(beyond.errors.length).toBeGreaterThan(0)
    expect(beyond.turned).toBe(BUILT_IN_SHOP)
  })

  it('changes nothing more where the planned stock is written into the part file', () => {
    const { stock } = plan(sleeve())
    const [outside, bore] = ['outside', 'bore'].map(
      surface => stock.entries.find(entry => entry.surface === surface)?.onDiameter.nominal,
    )
    const written = plan(sleeve({ stock: `stock: {outside: ${outside}, bore: ${bore}}\n` }))
    expect(written.errors).toEqual([])
    expect(written.stock.case?.ordered).toEqual(stock.case?.ordered)
    expect(written.width).toBeCloseTo(0.03, 9)
    expect(written.stock.entries.map(({ margin }) => margin)).toEqual(stock.entries.map(({ margin }) => margin))
  })
})
