import { describe, expect, it } from 'vitest'
import type { AxialLocator } from '../../src/route/operation.ts'
import { planRoute } from '../../src/route/plan-route.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { planStock } from '../../src/stock/plan-stock.ts'
import { LINER_TEXT, partFrom } from '../route/part-text.ts'

const part = partFrom(LINER_TEXT)
const { operations } = planRoute(part, BUILT_IN_SHOP)

/** The dimension that the top face is ground to when the route measures it from a face. */
const groundTo = (axialLocator: AxialLocator) => {
  const told = operations.map(operation => (operation.axialLocator ? { ...operation, axialLocator } : operation))
  const plan = planStock(part, BUILT_IN_SHOP, told)
  const facing = told.find(operation => operation.axialLocator)?.number ?? 0
  const sizes = (plan.sizes.get(facing) ?? []).filter(({ measure }) => measure !== 'diameter')
  const cut = plan.axial.dimensions.find(({ operation }) => operation === facing)
  return { sizes: sizes.map(({ feature, measure }) => `${feature} ${measure}`), from: cut?.from }
}

describe('the face that the top face is ground from', () => {
  it('stands in the route on the one operation that grinds the top', () => {
    expect(
      operations.filter(({ axialLocator }) => axialLocator).map(({ surfaces }) => surfaces.includes('top')),
    ).toEqual([true])
  })

  it('is taken from the route by sizes and chart alike', () => {
    expect(groundTo({ face: 'bottom' })).toEqual({ sizes: ['length length'], from: 'bottom' })
    const flange = part.outside[0]?.name ?? ''
    expect(groundTo({ face: 'shoulder', band: flange })).toEqual({ sizes: [`${flange} depth`], from: flange })
  })
})
