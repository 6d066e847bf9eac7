import { describe, expect, it } from 'vitest'
import { chance } from '../../src/figures.ts'
import { planStockSide } from '../../src/plan/begin-plan.ts'
import { basisRows, firstArticleLines, oddsRows } from '../../src/sheets/views/odds-rows.ts'
import { paperFigures } from '../../src/sheets/views/paper-figures.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Shop } from '../../src/shop/shop.ts'
import { LINER_TEXT, partFrom } from '../route/part-text.ts'

const MM = paperFigures('mm')
const part = partFrom(LINER_TEXT)
/** Without a record of growth no chance is given. Invented. */
const MEASURED: Shop = {
  ...BUILT_IN_SHOP,
  measured: [
    {
      process: 'gas nitriding',
      pieces: 12,
      date: '2026-03-02',
      growth: {
        outside: { least: 0.012, nominal: 0.015, most: 0.018 },
        bore: { least: 0.002, nominal: 0.005, most: 0.008 },
      },
    },
  ],
}
const stockWith = (bore?: number, shop: Shop = BUILT_IN_SHOP) => {
  const given = bore === undefined ? part : { ...part, stock: { bore } }
  const { plan } = planStockSide(given, shop, { number: '1', quantity: 12 })
  if (!plan) throw new Error('no plan')
  return plan
}

it.each([
  [0, 'under 1 in a million'],
  [2e-6, '1 in 500000'],
  [0.00123, '1 in 810'],
  [0.032, '3.2 %'],
  [0.5, '50 %'],
])('a chance of %f is said as "%s"', (probability, words) => {
  expect(chance(probability)).toBe(words)
})

describe('how the stock may fall', () => {
  it('says the chance of a piece, and of one or more of the pieces started', () => {
    const { stock, batch } = stockWith(0.09, MEASURED)
    const bore = stock.find(({ surface, chance: odds }) => surface === 'bore' && (odds?.piece.notCleanedUp ?? 0) > 1e-4)
    const p = bore?.chance?.piece.notCleanedUp ?? 0
    expect(p).toBeGreaterThan(1e-4)
    // Of independent pieces none fails with (1 - p)^n.
    const any = 1 - (1 - p) ** batch.start
    const row = oddsRows(stock, MM).find(({ operation }) => operation === String(bore?.operation))
    expect(row?.notCleanedUp.split('; ')).toEqual([...new Set([chance(p), chance(any)])])
  })

  it('gives the two half widths, the root of squares never the wider, and nearly all pieces within the worst case', () => {
    const { stock } = stockWith()
    for (const [index, { worstCase, rootSumSquare, nearlyAll }] of oddsRows(stock, MM).entries()) {
      const [wide = 0, narrow = 0] = [worstCase, rootSumSquare].map(text => Number(text.slice(1)))
      expect(narrow).toBeLessThanOrEqual(wide)
      const [least = 0, most = 0] = nearlyAll.split(' to ').map(Number)
      const middle = stock[index]?.onDiameter.nominal ?? 0
      expect(least).toBeGreaterThanOrEqual(middle - wide - 0.001)
      expect(most).toBeLessThanOrEqual(middle + wide + 0.001)
    }
  })
})

describe('what the stock rests on', () => {
  const { stock } = stockWith()

  it('names each figure once with every surface it is for, and whether the works has measured it', () => {
    const rows = basisRows(stock, MM)
    const keys = rows.map(({ figure, value, source }) => [figure, value, source].join())
    expect(new Set(keys).size).toBe(keys.length)
    const growth = rows.filter(({ figure }) => figure === 'growth per side')
    const named = growth.flatMap(({ surfaces }) => surfaces.split(', '))
    expect(named).toEqual(expect.arrayContaining(stock.map(({ surface }) => surface)))
    for (const { from } of growth) expect(from).not.toBe('measured')
  })

  it('writes a figure as it was used, to half a micrometre and a tenth of roughness', () => {
    const rows = basisRows(stock, MM)
    // The built-in run-out of a chuck.
    expect(BUILT_IN_SHOP.habits.chuckRunout).toBe(0.0075)
    expect(rows.find(({ figure }) => figure === 'run-out of the chuck')?.value).toBe('0.0075\u00a0mm')
    expect(rows.find(({ figure }) => figure === 'run-out of the mandrel')?.value).toBe('0.005\u00a0mm')
  })

  it('says what a first article would save where the growth has not been measured', () => {
    const lines = firstArticleLines(stock, MM)
    expect(lines.length).toBeGreaterThan(0)
    for (const line of lines)
      expect(line).toMatch(/^\w.*: measure the growth on a first article, and \d\.\d{3} mm less/)
  })
})
