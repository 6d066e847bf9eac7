import { describe, expect, it } from 'vitest'
import type { OutsideOrder } from '../../src/orders/order.ts'
import { orderSheets } from '../../src/sheets/order-sheets.ts'
import { orderView } from '../../src/sheets/views/order-view.ts'
import { paperFigures } from '../../src/sheets/views/paper-figures.ts'
import { figureWords, limitWords, quantityWords } from '../../src/sheets/views/quantity-words.ts'
import { returnView } from '../../src/sheets/views/return-view.ts'
import { routeCardView } from '../../src/sheets/views/route-card-view.ts'
import { demoPictures, demoPlan } from './demo-packet.ts'

const plan = demoPlan()
const MM = paperFigures('mm')
const INCH = paperFigures('inch')
const LENGTH = { label: 'bore Ø', standing: 'asked', unit: 'mm', places: 3, written: 'range' } as const

/** Every word of a view, one string a value. */
function wordsOf(view: unknown): readonly string[] {
  if (typeof view === 'string') return [view.replaceAll('\u00a0', ' ')]
  return typeof view === 'object' && view !== null ? Object.values(view).flatMap(wordsOf) : []
}
const printed = (order: OutsideOrder, figures = MM): string =>
  orderSheets(plan, order, figures)
    .flatMap(({ view }) => wordsOf(view))
    .join('\n')
const orderOf = (operation: number): OutsideOrder => {
  const found = plan.orders.find(({ operations }) => operations.includes(operation))
  if (!found) throw new Error(`no order holds ${operation}`)
  return found
}
/** Of a column of the form, its limit in one line. */
const limitOn = (order: OutsideOrder, name: string): string | undefined =>
  returnView(order, MM)
    .flatMap(({ heads }) => heads)
    .find(head => head.name.startsWith(name))
    ?.limits.join(' ')
const NITRIDE = orderOf(70)
const GRIND = orderOf(90)
const RELIEF = orderOf(30)

describe('what was said twice, and differently, on an order', () => {
  it('one hardness is asked of the surface as hardened, and none is expected beside it', () => {
    const asked = [...printed(NITRIDE).matchAll(/surface not under (\d+) HV1/g)].map(([, hardness]) => Number(hardness))
    expect(new Set(asked).size).toBe(1)
    expect(asked[0]).toBeGreaterThanOrEqual(470)
    expect(printed(NITRIDE)).not.toMatch(/650/)
    expect(limitOn(NITRIDE, 'surface hardness')).toBe(`not under ${asked[0]}`)
  })
  it('the test load is one for the surface, whichever sheet names it', () => {
    const loads = new Set([...printed(NITRIDE).matchAll(/(?:under|and) \d{3} (HV[\d.]*)/g)].map(([, load]) => load))
    expect([...loads]).toEqual(['HV1'])
    expect(printed(NITRIDE)).not.toContain('HV5')
  })
  it('stress relief has a window and an aim inside it, not a figure that is aim and limit', () => {
    const [, from, to, aim] =
      /At (\d+) to (\d+) °C, measured at the parts: aim at (\d+) °C\./.exec(printed(RELIEF)) ?? []
    expect(Number(aim)).toBeGreaterThan(Number(from))
    expect(Number(aim)).toBeLessThan(Number(to))
    expect(printed(NITRIDE)).toContain(`Stress relieved at ${aim} °C`)
  })
  it('the part is set true within one figure', () => {
    expect(printed(GRIND).match(/[Ss]et true within [\d.]+ mm/g)).toEqual(['Set true within 0.0075 mm'])
    expect(printed(GRIND)).not.toContain('0.005 mm at both ends')
  })
  it('parts for the hardener are clean and dry on every page', () => {
    expect(printed(NITRIDE)).toContain('metal-clean')
    expect(printed(NITRIDE)).not.toMatch(/\boiled\b/)
  })
  it('the form asks 49 readings of the hardener, with a limit for each that has one', () => {
    const cells = returnView(NITRIDE, MM).flatMap(({ rows }) =>
      rows.flatMap(row => row.cells.filter(({ measure }) => measure)),
    )
    expect(cells).toHaveLength(49)
    expect(limitOn(NITRIDE, 'compound layer')).toBe('not over 0.015')
    expect(limitOn(NITRIDE, 'ovality of seat')).toBe('not over 0.018')
    expect(limitOn(NITRIDE, 'bow of the axis')).toBe('not over 0.010')
    expect(limitOn(NITRIDE, 'seat Ø, before')).toBe('report')
  })
  it('sizes that we only predict are not what goes back from the hardener', () => {
    expect(NITRIDE.finish).toEqual([])
    expect(printed(NITRIDE)).not.toContain('55.1515')
  })
})

describe('an order on paper', () => {
  it.each(plan.orders.map(order => [order.title, order] as const))(
    '%s: says whom to ring at either end',
    (_, order) => {
      for (const number of ['01632 960 171', order.to.telephone ?? 'none']) expect(printed(order)).toContain(number)
      expect(printed(order)).toContain(order.reference)
    },
  )
  it('leaves a blank for what nobody has said', () => {
    const { parties } = orderView(plan, { ...GRIND, from: {}, to: { name: 'a licensed hardener' } }, MM)
    expect(parties).toEqual([
      { what: 'Name', from: '', to: 'a licensed hardener' },
      { what: 'Ring', from: '', to: '' },
      { what: 'E-mail', from: '', to: '' },
    ])
  })
  it.each(plan.orders.map(order => [order.title, order] as const))(
    '%s: no sentence stands on two pages',
    (_, order) => {
      const sentences = orderSheets(plan, order, MM)
        .flatMap(({ view }) => wordsOf(view))
        .filter(words => /^[A-Z].*\.$/.test(words) && words.includes(' '))
      expect(sentences.length).toBeGreaterThan(5)
      expect(new Set(sentences).size).toBe(sentences.length)
    },
  )
  it('has the pair to judge by in front, the drawing beside it', () => {
    const sheet = orderSheets(plan, GRIND, MM).find(({ template }) => template === 'order')?.view as {
      finish: readonly { what: string; judged: string; drawn: string }[]
    }
    const row = sheet.finish.find(({ what }) => what === 'length')
    expect(row?.judged).toBe('92.004\u00a0/\u00a091.996')
    expect(row?.drawn).toBe('92.010\u00a0/\u00a091.990')
  })
  it('rounds what comes outward and what is asked inward', () => {
    const size = { ...LENGTH, least: 47.82746, most: 47.86954 }
    expect(figureWords({ ...size, standing: 'given', written: 'hole' }, MM)).toBe('47.827\u00a0/\u00a047.870')
    expect(figureWords({ ...size, written: 'hole' }, MM)).toBe('47.828\u00a0/\u00a047.869')
    expect(limitWords({ ...LENGTH, most: 0.01825 }, MM)).toBe('not over 0.018')
    expect(limitWords({ ...LENGTH, least: 0.0561 }, MM)).toBe('not under 0.057')
  })
  it('writes a depth with its upper tolerance, and no figure apart from its unit', () => {
    expect(quantityWords({ ...LENGTH, least: 0.4, most: 0.6, plus: 0.2, places: 2, written: 'plus' }, MM)).toBe(
      '0.40\u00a0+0.20\u00a0−0\u00a0mm',
    )
  })
  it('follows the units of the sheet: 0.015 mm of layer are 0.0005 in at most, never more', () => {
    for (const order of plan.orders) expect(printed(order, INCH)).not.toMatch(/\d mm\b/)
    // 0.015 / 25.4 = 0.00059: rounded down at four places.
    expect(printed(NITRIDE, INCH)).toContain('Not over 0.0005 in, dense')
  })
  it('counts a visit once in the calendar: 8 days for 90 and 100', () => {
    const days = routeCardView(plan, MM).calendar.filter(({ number }) => number === '90' || number === '100')
    expect(days.map(row => row.days)).toEqual(['8', 'with 90'])
  })
})

describe('a figure of an order', () => {
  it('adds up to the upper end as printed, in inches too: 0.40 +0.20 mm are 0.0157 to 0.0236 in', () => {
    const depth = { ...LENGTH, least: 0.4, most: 0.6, plus: 0.2, places: 2, written: 'plus' } as const
    const [low = 0, width = 0] = [...quantityWords(depth, INCH).matchAll(/[\d.]+/g)].map(Number)
    expect(low * 25.4).toBeGreaterThanOrEqual(0.4)
    expect((low + width) * 25.4).toBeLessThanOrEqual(0.6)
  })
  it('does not cross its ends where they are closer than its last place', () => {
    expect(figureWords({ ...LENGTH, least: 47.9702, most: 47.9708, written: 'hole' }, MM)).toBe(
      '47.9702\u00a0/\u00a047.9708',
    )
    expect(figureWords({ ...LENGTH, least: 0.0102, most: 0.0104 }, MM)).toBe('0.010')
  })
  it('is rounded to the nearest where it only tells how things come: a chamfer of 0.5 to 1 mm', () => {
    expect(figureWords({ ...LENGTH, standing: 'given', least: 0.5, most: 1, places: 1 }, INCH)).toBe('0.02 to 0.04')
  })
})

describe('the form that comes back', () => {
  it('numbers its rows as they stand, what is read once in front', () => {
    const plated = demoPlan('OX-105-02').orders[1]
    if (!plated) throw new Error('no order')
    const heads = returnView(plated, MM).flatMap(table => table.heads)
    const numbers = heads.map(({ number }) => Number(number))
    expect(numbers).toEqual(numbers.toSorted((a, b) => a - b))
    expect(heads[0]?.name).toBe('bake, of the load, h')
  })
  it('has a line for each piece by what is written on it, or a blank to write that in', () => {
    const pieces = (order: OutsideOrder) =>
      returnView(order, MM)
        .at(-1)
        ?.rows.map(({ piece }) => piece)
    const { numbered, start, extras } = plan.batch
    expect(pieces(GRIND)).toEqual(Array.from({ length: numbered }, (_, index) => String(index + 1)))
    expect(numbered + extras.reduce((sum, { pieces }) => sum + pieces, 0)).toBe(start)
    expect(pieces(NITRIDE)).toEqual(['', '', '', '', ''])
  })
  it('speaks of numbered pieces only once they are marked', () => {
    const { numbered } = plan.batch
    expect(printed(RELIEF)).not.toMatch(/set-up piece/)
    expect(printed(NITRIDE)).toContain(`1 to ${numbered}; S the set-up piece; C the hardening coupon`)
  })
})

describe('the drawing on the hardener’s order', () => {
  it('shows no size: those after hardening are foretold, and those on arrival stand in the table', () => {
    const texts = (name: string) =>
      (demoPictures(plan).get(name)?.marks ?? []).flatMap(mark => (mark.kind === 'text' ? [mark.text] : []))
    expect(texts('operation-70').filter(text => /\d\d\.\d/.test(text))).toEqual([])
    expect(texts('operation-90').some(text => /47\.9/.test(text))).toBe(true)
  })
})
