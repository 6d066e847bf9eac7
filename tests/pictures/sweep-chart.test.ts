import { describe, expect, it } from 'vitest'
import type { Units } from '../../src/figures.ts'
import { drawSweep } from '../../src/pictures/sweep-chart.ts'
import { planSweep } from '../../src/plan/sweep.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { LINER_TEXT, partFrom } from '../route/part-text.ts'
import { faultsOf } from './legibility.ts'
import { measure } from './measure.ts'

const part = partFrom(LINER_TEXT)
const sweepOf = (values: readonly number[]) =>
  planSweep(values, value => ({ part: { ...part, stock: { bore: value } }, shop: BUILT_IN_SHOP }))
const drawn = (values: readonly number[], units: Units = 'mm') => {
  const sweep = sweepOf(values)
  const naming = { part: part.number, path: 'stock.bore', words: 'In words.' }
  return { sweep, picture: drawSweep({ sweep, names: naming, room: { width: 510, height: 380 }, measure, units }) }
}

describe('picture of a sweep', () => {
  const values = Array.from({ length: 26 }, (_, index) => Number((0.1 + 0.02 * index).toFixed(2)))
  const { sweep, picture } = drawn(values)
  const shades = picture.marks.flatMap(mark => (mark.kind === 'path' && mark.fill ? [mark.steps] : []))

  it('can be read', () => {
    const crossed = /line through/
    expect(faultsOf(picture, measure).filter(fault => !crossed.test(fault))).toEqual([])
  })

  it('shades as much of the width as the values in which both ends hold, in both halves', () => {
    const [window] = sweep.windows
    if (!window) throw new Error('nowhere')
    const axis = picture.marks.flatMap(mark => (mark.kind === 'line' && mark.y1 === mark.y2 ? [mark.x2 - mark.x1] : []))
    const share = (window.to - window.from) / (0.6 - 0.1)
    expect(shades).toHaveLength(2)
    for (const steps of shades) {
      const xs = steps.flatMap(step => ('x' in step ? [step.x] : []))
      expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(share * Math.max(...axis), 6)
    }
  })

  it('crosses zero where the verdict turns', () => {
    const bore = sweep.points.map(({ entries }) => entries.find(({ operation }) => operation === 90))
    // Within a micrometre of nothing to spare no gauge can tell: marginal.
    for (const { margin, verdict } of bore.flatMap(entry => entry ?? [])) {
      if (verdict !== 'marginal') expect(margin.cleanUp < 0).toBe(verdict === 'thin')
      else expect(Math.abs(margin.cleanUp)).toBeLessThan(0.00101)
    }
    expect(new Set(bore.map(entry => entry?.verdict)).size).toBeGreaterThan(1)
  })

  it('counts margins in inches where the sheet does, and the values as the file writes them', () => {
    const inInches = drawn(values, 'inch').picture
    expect(faultsOf(inInches, measure)).toEqual(faultsOf(picture, measure))
    const texts = inInches.marks.flatMap(mark => (mark.kind === 'text' ? [mark.text] : []))
    expect(texts).toContain('to spare to clean up, inches each side')
    expect(texts).toContain('stock.bore, as in the file')
    expect(texts).toContain('0.6')
    const largest = Math.max(...sweep.points.flatMap(({ entries }) => entries.map(({ margin }) => margin.cleanUp)))
    const ticks = inInches.marks.flatMap(mark =>
      mark.kind === 'text' && mark.anchor === 'end' ? [Number(mark.text)] : [],
    )
    const topmost = Math.max(...ticks) * 25.4
    expect(topmost).toBeGreaterThan(largest * 0.8)
    expect(topmost).toBeLessThan(largest * 1.8)
  })

  it('of one value alone is drawn too', () => {
    const marks = drawn([0.2]).picture.marks.flatMap(mark =>
      mark.kind === 'line' ? [mark.x1, mark.x2, mark.y1, mark.y2] : [],
    )
    expect(marks.every(Number.isFinite)).toBe(true)
  })
})
