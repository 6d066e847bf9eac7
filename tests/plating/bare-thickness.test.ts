import { describe, expect, it } from 'vitest'
import { platingSizes } from '../../src/plating/plating-sizes.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { openNotebook } from '../../src/working.ts'
import { platedPart } from './plated-part.ts'

describe('a bare thickness is a wish with a least', () => {
  it.each(['60 H6', '60 H7', '60 H8'])(
    'aims deeper where a bore of %s would leave less than a quarter under it',
    bore => {
      for (const thickness of [0.05, 0.06, 0.075, 0.1]) {
        const part = platedPart({ bore, plating: `{process: hard chrome, thickness: ${thickness}}` })
        const sizes = platingSizes(openNotebook(), part, BUILT_IN_SHOP)
        if (!sizes) throw new Error('not plated')
        expect(sizes.aim.value).toBeGreaterThanOrEqual(thickness)
        expect(sizes.left.least).toBeGreaterThanOrEqual(0.75 * thickness - 1e-9)
      }
    },
  )

  it('keeps the middle of two limits, which are a tolerance', () => {
    const part = platedPart({ bore: '60 H8', plating: '{process: hard chrome, thickness: 0.05 ±0.005}' })
    expect(platingSizes(openNotebook(), part, BUILT_IN_SHOP)?.aim.value).toBeCloseTo(0.05, 9)
  })
})
