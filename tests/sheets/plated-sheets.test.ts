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
const operation = (purpose: string) => {
  const found = plan.operations.find(one => one.purpose === purpose)
  if (!found) throw new Error(`no ${purpose}`)
  return found
}
const told = (rows: readonly { readonly what: string; readonly value: string }[], what: string) =>
  rows.find(row => row.what === what)?.value.replaceAll('\u00a0', ' ')

describe('the plated demo part on paper', () => {
  it('plans without an error or a warning', () => {
    expect(plan.findings.filter(({ severity }) => severity !== 'note')).toEqual([])
  })
  it('orders the plating with specification and return form, and the heats beside it in a page each', () => {
    const titles = (purpose: string) => orderSheets(plan, operation(purpose), MM).map(({ template }) => template)
    expect(titles('plate')).toEqual(['order', 'order-terms', 'return-form'])
    expect(titles('relieve-for-plating')).toEqual(['order'])
    expect(titles('bake-after-plating')).toEqual(['order'])
  })
  it('tells the plater what comes, what to lay on and what to bake', () => {
    const view = orderView(plan, operation('plate'), MM)
    expect(view.arrives.find(({ surface }) => surface === 'bore Ø')?.limits).toMatch(/60\.150.*60\.163/)
    expect(view.sizes.map(({ limits }) => limits.replaceAll('\u00a0', ' '))).toEqual(['59.937 / 59.976'])
    expect(told(view.treatment, 'Layer as plated')).toContain('0.100')
    expect(told(view.treatment, 'Bake after plating')).toContain('8 h or more at 190 to 220 °C')
  })
  it('points the two heats to the plating they go with, and names the standard, not a recipe', () => {
    const relief = orderView(plan, operation('relieve-for-plating'), MM).treatment
    expect(told(relief, 'Together with')).toContain(`operation ${operation('plate').number}`)
    expect(told(relief, 'Relieve')).toContain('ASTM B849 or ISO 9587')
    expect(told(orderView(plan, operation('bake-after-plating'), MM).treatment, 'Bake after plating')).toContain('8 h')
  })
  it('tells the honer what lies on the bore and what must be left', () => {
    const view = orderView(plan, operation('hone-bore'), MM)
    expect(told(view.condition, 'To be left')).toContain('0.056 mm a side or more')
    expect(view.leftHead).toBe('Spare plating')
  })
  it('shows on the stock sheet the layer, what is left of it and how it is judged', () => {
    const view = stockView(plan, MM, [])
    expect(view.entries.at(-1)).toMatchObject({ surface: 'bore', verdict: 'cleans up, plating left' })
    expect(told(view.plating, 'Layer left after honing')).toMatch(/0\.075 \(0\.063 to 0\.087\) mm/)
    expect(told(view.plating, 'Masked')).toContain('top, bottom')
  })
  it('draws the layer building up: what it adds, and shade under the bar from the plating on', () => {
    const { marks } = drawLadders(plan, 500, typeface.measure)
    const texts = marks.flatMap(mark => (mark.kind === 'text' ? [mark.text] : []))
    expect(texts).toContain('adds 0.081 to 0.119')
    const shades = marks.filter(mark => mark.kind === 'path' && mark.fill === SHADE)
    expect(shades).toHaveLength(2)
  })
})
