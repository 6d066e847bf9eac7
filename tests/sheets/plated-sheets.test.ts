import { describe, expect, it } from 'vitest'
import { SHADE } from '../../src/pictures/marks.ts'
import { drawLadders } from '../../src/pictures/size-ladder.ts'
import { orderSheets } from '../../src/sheets/order-sheets.ts'
import { orderView } from '../../src/sheets/views/order-view.ts'
import { paperFigures } from '../../src/sheets/views/paper-figures.ts'
import { stockView } from '../../src/sheets/views/stock-view.ts'
import { demoPlan, typeface } from './demo-packet.ts'

const plan = demoPlan('OX-105-02')
const MM = paperFigures('mm')
const told = (rows: readonly { readonly what: string; readonly value: string }[], what: string) =>
  rows.find(row => row.what === what)?.value.replaceAll('\u00a0', ' ')

describe('the plated demo part on paper', () => {
  it('plans without an error or a warning', () => {
    expect(plan.findings.filter(({ severity }) => severity !== 'note')).toEqual([])
  })
  it('orders the plating and the heats beside it once, with specification and return form in one', () => {
    const titles = plan.orders.map(order => orderSheets(plan, order, MM).map(({ template }) => template))
    expect(titles).toEqual(Array.from({ length: 3 }, () => ['order']))
  })
  it('tells the plater what comes, what to lay on and what to bake', () => {
    const [, plating] = plan.orders
    if (!plating) throw new Error('no order')
    const view = orderView(plan, plating, MM)
    expect(view.arrives.find(({ what }) => what === 'bore Ø')?.limits).toMatch(/60\.150.*60\.163/)
    // From 59.9365 and 59.9765: never printed outside.
    expect(view.finish.map(({ judged }) => judged.replaceAll('\u00a0', ' '))).toEqual(['59.937 / 59.976'])
    const text = view.points
      .map(({ text }) => text)
      .join('\n')
      .replaceAll('\u00a0', ' ')
    expect(text).toContain('a layer of 0.100 (0.081 to 0.119) mm a side')
    expect(text).toContain('Bake 8 h or more at 190 to 220 °C, begun within 3 h')
    expect(text).toContain('ASTM B849 or ISO 9587')
  })
  it('shows on the stock sheet the layer, what is left of it and how it is judged', () => {
    const view = stockView(plan, MM, [])
    expect(view.entries.at(-1)).toMatchObject({ surface: 'bore', verdict: 'cleans up, plating left' })
    expect(told(view.plating, 'Layer left after honing')).toMatch(/0\.075 \(0\.062 to 0\.087\) mm/)
    expect(told(view.plating, 'Masked')).toContain('top, bottom')
  })
  it('draws the layer building up: what it adds, and shade under the bar from the plating on', () => {
    const { marks } = drawLadders(plan, 500, typeface.measure)
    const texts = marks.flatMap(mark => (mark.kind === 'text' ? [mark.text] : []))
    expect(texts).toContain('adds 0.081 to 0.119')
    const shades = marks.filter(mark => mark.kind === 'path' && mark.fill === SHADE)
    // Plated, honed, and the sample beside its name.
    expect(shades).toHaveLength(3)
  })
})
