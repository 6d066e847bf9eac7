import { describe, expect, it } from 'vitest'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Shop } from '../../src/shop/shop.ts'
import { growthOfDepth, NO_AXIAL_GROWTH } from '../../src/stock/axial-growth.ts'
import { LINER_TEXT, partFrom } from '../route/part-text.ts'
import { planned } from './planned.ts'

describe('a depth below the top face, where every treated face moves out of the metal by 10 µm', () => {
  const layer = { ...NO_AXIAL_GROWTH, free: { ...NO_AXIAL_GROWTH.free, least: 0.008, nominal: 0.01, most: 0.012 } }
  // Derived: the top moves up or stays, a face that looks down moves down, one that looks up moves up.
  it.each([
    ['down', true, 0.02],
    ['down', false, 0.01],
    ['up', true, 0],
    ['up', false, -0.01],
  ] as const)('to a face that looks %s, the top treated %s: %d mm more', (looks, topOpen, more) => {
    const { least, nominal, most } = growthOfDepth({ ...layer, topOpen }, looks, 30)
    expect(nominal).toBeCloseTo(more, 12)
    expect(most - least).toBeCloseTo(0.4 * Math.abs(more), 12)
  })
})

describe('what would make a stock possible', () => {
  const bent: Shop = {
    ...BUILT_IN_SHOP,
    measured: [{ process: 'nitride', pieces: 12, date: '2026-03-02', ovality: 0.9, bow: 0.3 }],
  }
  it('is said to the micrometre, the last place that a works reads', () => {
    const hints = planned(partFrom(LINER_TEXT), bent).findings.flatMap(({ code, hint }) =>
      code === 'stock/impossible' ? [hint ?? ''] : [],
    )
    expect(hints.length).toBeGreaterThan(0)
    for (const hint of hints) {
      const numbers = hint.match(/\d+\.\d+/g) ?? []
      expect(numbers.length).toBeGreaterThan(1)
      for (const number of numbers) expect(number).toMatch(/^\d+\.\d{3}$/)
    }
  })
})

describe('the chance of too little case', () => {
  // A chance is said only where growth has been measured.
  const growth = { least: 0.01, nominal: 0.012, most: 0.014 }
  const measured: Shop = {
    ...BUILT_IN_SHOP,
    measured: [{ process: 'nitride', pieces: 12, date: '2026-03-02', growth }],
  }
  const chance = (bore: number) =>
    planned(partFrom(`${LINER_TEXT}stock: {bore: ${bore}}\n`), measured).entries.find(
      ({ surface }) => surface === 'bore',
    )?.chance?.piece.tooLittleCase ?? Number.NaN
  it('is hardly a piece while the order goes deeper with the stock, rises beyond, and is then nearly every one', () => {
    const chances = [0.2, 0.5, 0.8, 0.95, 1.1].map(chance)
    const [followed, beyond] = [chances.slice(0, 2), chances.slice(2)]
    for (const each of followed) expect(each).toBeLessThan(1e-5)
    expect(beyond).toEqual(beyond.toSorted((a, b) => a - b))
    expect(beyond[0]).toBeGreaterThan(Math.max(...followed))
    expect(beyond.at(-1)).toBeGreaterThan(0.5)
  })
})
