import { describe, expect, it } from 'vitest'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Shop } from '../../src/shop/shop.ts'
import { LINER_TEXT, partFrom } from '../route/part-text.ts'
import { planned } from './planned.ts'

const entry = (shop: Shop, surface = 'seat') =>
  planned(partFrom(LINER_TEXT), shop).entries.find(entry => entry.surface === surface)
const fromOf = (shop: Shop, figure: string) => entry(shop)?.basis?.find(row => row.figure === figure)?.from

const measured = (more: Partial<Shop['measured'][number]>): Shop => ({
  ...BUILT_IN_SHOP,
  measured: [{ process: 'nitride', pieces: 24, date: '2026-04-14', ...more }],
})

describe('figures that a stock stands on', () => {
  it('are default or from the handbook, as long as the works has said nothing', () => {
    expect(fromOf(BUILT_IN_SHOP, 'turned outside to bore')).toBe('default')
    expect(fromOf(BUILT_IN_SHOP, 'ovality')).toBe('handbook')
    expect(fromOf(BUILT_IN_SHOP, 'growth per side')).toBe('handbook')
  })

  it('are the shop file’s where it gives a habit', () => {
    const shop = { ...BUILT_IN_SHOP, set: new Set(['/habits/turned-outside-to-bore']) }
    expect(fromOf(shop, 'turned outside to bore')).toBe('shop')
    expect(fromOf(shop, 'run-out of the mandrel')).toBe('default')
  })

  it('are measured where the works has measured, and override what is usual', () => {
    const shop = measured({ ovality: 0.012, bow: 0.006 })
    expect(fromOf(shop, 'ovality')).toBe('measured')
    // Derived: a quarter of the ovality and half of the bow.
    expect(entry(shop)?.form).toBeCloseTo(0.012 / 4 + 0.006 / 2, 9)
  })

  it('take the measurement of the grade before that of any grade, and none of another', () => {
    const shop: Shop = {
      ...BUILT_IN_SHOP,
      measured: [
        { process: 'nitride', pieces: 9, date: '2026-04-14', ovality: 0.04, bow: 0 },
        { process: 'nitride', grade: '42CrMo4', pieces: 9, date: '2026-04-15', ovality: 0.02 },
        { process: 'nitride', grade: '31CrMoV9', pieces: 9, date: '2026-04-16', ovality: 0.08 },
      ],
    }
    expect(entry(shop)?.form).toBeCloseTo(0.02 / 4, 9)
  })

  it('tell what a measured first article would save, until growth has been measured', () => {
    const { firstArticle } = entry(BUILT_IN_SHOP) ?? {}
    const growth = planned(partFrom(LINER_TEXT)).case?.growth.outside
    expect(firstArticle?.stock).toBeCloseTo(2 * ((growth?.nominal ?? 0) - (growth?.least ?? 0)), 9)
    expect(entry(measured({ growth: { least: 0.01, nominal: 0.012, most: 0.014 } }))?.firstArticle).toBeUndefined()
  })

  it('close the stock when growth is measured closely', () => {
    const close = entry(measured({ growth: { least: 0.011, nominal: 0.012, most: 0.013 } }))
    const open = entry(BUILT_IN_SHOP)
    expect(close?.spread?.worstCase).toBeLessThan(open?.spread?.worstCase ?? 0)
  })
})
