import { describe, expect, it } from 'vitest'
import type { StockChoice } from '../../src/part/part.ts'
import { planSweep } from '../../src/plan/sweep.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { LINER_TEXT, partFrom } from '../route/part-text.ts'
import { planned } from '../stock/planned.ts'

const part = partFrom(LINER_TEXT)
const values = Array.from({ length: 27 }, (_, index) => Number((0.08 + 0.02 * index).toFixed(2)))
const sweepOf = (key: keyof StockChoice) =>
  planSweep(values, value => ({ part: { ...part, stock: { [key]: value } }, shop: BUILT_IN_SHOP }))

describe('sweep of a stock', () => {
  const sweep = sweepOf('bore')
  const bore = (index: number) => sweep.points[index]?.entries.find(({ operation }) => operation === 90)

  it('has one point for each value, each as it is planned alone but for the order, which stands', () => {
    expect(sweep.points.map(({ value }) => value)).toEqual(values)
    const order = planned(part).case?.ordered
    const alike = values.flatMap((value, index) => {
      const alone = planned({ ...part, stock: { bore: value } })
      const found = sweep.points[index]
      expect(found?.ordered).toBe(order?.least)
      if (alone.case?.ordered.least !== order?.least) return []
      expect(found?.entries.map(({ margin }) => margin)).toEqual(alone.entries.map(({ margin }) => margin))
      return [value]
    })
    expect(alike.length).toBeGreaterThan(1)
  })

  it('raises the clean-up margin and lowers the case margin all along', () => {
    for (const index of values.slice(1).keys()) {
      expect(bore(index + 1)?.margin.cleanUp).toBeGreaterThan(bore(index)?.margin.cleanUp ?? 9)
      expect(bore(index + 1)?.margin.case).toBeLessThan(bore(index)?.margin.case ?? -9)
    }
  })

  it('goes from thin over marginal and ok to deep, and tells the window in which both ends hold', () => {
    const verdicts = values.map((_, index) => bore(index)?.verdict)
    expect([...new Set(verdicts)]).toEqual(['thin', 'marginal', 'ok', 'deep'])
    const surface = sweep.surfaces.find(({ operation }) => operation === 90)
    expect(surface?.windows).toEqual([
      { from: values[verdicts.indexOf('marginal')], to: values[verdicts.lastIndexOf('ok')] },
    ])
    expect(sweep.windows).toEqual(surface?.windows)
  })
})

describe('sweep of any other value', () => {
  it('replans the route where that changes', () => {
    const sweep = planSweep([0.4, 3.2], roughness => ({
      part: partFrom(LINER_TEXT.replace('55 g6, Ra: 0.8', `55 h9, Ra: ${roughness}`)),
      shop: BUILT_IN_SHOP,
    }))
    expect(sweep.points.map(({ entries }) => entries.some(({ surface }) => surface === 'seat'))).toEqual([true, false])
  })

  it('keeps the reasons of a value that makes no part', () => {
    const findings = [
      { code: 'input/schema', severity: 'error', message: 'no', at: { file: 'x', line: 1, column: 1 } },
    ] as const
    const sweep = planSweep([1], () => ({ findings }))
    expect(sweep.points).toEqual([{ value: 1, entries: [], serves: false, findings }])
    expect(sweep.windows).toEqual([])
  })
})
