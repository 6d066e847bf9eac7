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
  it('are built in or from the handbook, as long as the works has said nothing', () => {
    expect(fromOf(BUILT_IN_SHOP, 'turned outside to bore')).toBe('built in')
    expect(fromOf(BUILT_IN_SHOP, 'ovality')).toBe('handbook')
    expect(fromOf(BUILT_IN_SHOP, 'growth per side')).toBe('formula')
  })

  it('are the shop file’s where it gives a habit', () => {
    const shop = { ...BUILT_IN_SHOP, set: new Set(['/habits/turned-outside-to-bore']) }
    expect(fromOf(shop, 'turned outside to bore')).toBe('shop')
    expect(fromOf(shop, 'run-out of the mandrel')).toBe('built in')
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

  // An axis bends with the square of the length; further than to three times the length the square is not trusted: estimate.
  it.each([
    [92, 0.006],
    [46, 0.006 * 4],
    [276, 0.006 / 9],
  ])('carry a bow measured on %d mm over to 92 by the square of the lengths', (length, bow) => {
    expect(entry(measured({ ovality: 0, bow: 0.006, length }))?.form).toBeCloseTo(bow / 2, 9)
  })

  it.each([0.01, 30, 280])('do not carry over a bow measured on %d mm, and say so', length => {
    const shop = measured({ ovality: 0, bow: 0.5, length })
    expect(entry(shop)?.form).toBe(entry(measured({ ovality: 0 }))?.form)
    expect(fromOf(shop, 'bow')).not.toBe('measured')
    const said = planned(partFrom(LINER_TEXT), shop).workings.filter(({ meaning }) =>
      meaning.startsWith('bow passed over'),
    )
    expect(said[0]?.meaning).toContain(`on a length of ${length} mm; the part has 92 mm`)
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

/** What the basis of the seat says of a figure, and what the working that it went into was given. */
const both = ({ shop = BUILT_IN_SHOP, text = LINER_TEXT }, figure: string, working: string, symbol: string) => {
  const plan = planned(partFrom(text), shop)
  const seat = plan.entries.find(({ surface }) => surface === 'seat')
  const stands = seat?.basis?.find(row => row.figure === figure)
  const used = plan.workings
    .filter(
      ({ symbol: made, operation, about }) => made === working && operation === seat?.operation && about === 'seat',
    )
    .map(({ inputs = [] }) => inputs.find(input => input.symbol === symbol))
  expect(used.length).toBeGreaterThan(0)
  for (const input of used) {
    expect(input?.from).toBe(stands?.from)
    expect(input?.source).toBe(stands?.source)
    expect(input?.value).toBe(stands?.value)
  }
  return stands
}

const withHabit = (key: string, habits: Partial<Shop['habits']>): Shop => ({
  ...BUILT_IN_SHOP,
  habits: { ...BUILT_IN_SHOP.habits, ...habits },
  set: new Set([`/habits/${key}`]),
})

describe('what a stock rests on and the working that used it', () => {
  it('say the built-in figure, as long as the works has said nothing', () => {
    expect(both({}, 'roughness before', 'r', 'Rz')).toMatchObject({ value: 20, unit: 'µm', from: 'built in' })
    expect(both({}, 'run-out of the mandrel', 'e', 'e_2')).toMatchObject({ value: 0.005, from: 'built in' })
  })

  it('both change with a habit of the shop file', () => {
    const rough = withHabit('turned-roughness', { turnedRoughness: 8 })
    const stands = both({ shop: rough }, 'roughness before', 'r', 'Rz')
    expect(stands).toMatchObject({ value: 8, from: 'shop', source: 'shop file: habits/turned-roughness' })
    const close = withHabit('finish-turning-tolerance', { finishTurningTolerance: 0.03 })
    expect(both({ shop: close }, 'tolerance before', 'S', 'T_before')).toMatchObject({ value: 0.03, from: 'shop' })
    const margin = withHabit('clean-up-allowance', { cleanUpAllowance: 0.007 })
    expect(both({ shop: margin }, 'cut beyond the layer', 'r', 'm')).toMatchObject({ value: 0.007, from: 'shop' })
  })

  it('both change with what the works has measured, and name firm, date and pieces', () => {
    const shop = measured({ ovality: 0.012, growth: { least: 0.01, nominal: 0.011, most: 0.012 }, firm: 'a hardener' })
    const source = 'shop: measured on 24 pieces, 2026-04-14, a hardener'
    expect(both({ shop }, 'ovality', 'f', 'o')).toMatchObject({ value: 0.012, from: 'measured', source })
    expect(both({ shop }, 'growth per side', 'S', 'g')).toMatchObject({ value: 0.011, from: 'measured', source })
  })

  it('both change with the part file', () => {
    const text = LINER_TEXT.replace('55 g6', '55 g7')
    expect(text).not.toBe(LINER_TEXT)
    const before = both({}, 'tolerance after', 'S', 'T_after')
    const after = both({ text }, 'tolerance after', 'S', 'T_after')
    expect([before?.from, after?.from]).toEqual(['part', 'part'])
    // ISO 286-1, Table 1, over 50 up to 80 mm: IT6 19 µm, IT7 30 µm.
    expect(before?.value).toBeCloseTo(0.019, 9)
    expect(after?.value).toBeCloseTo(0.03, 9)
  })

  it('say of a fixed stock that the part file fixes it', () => {
    const text = `${LINER_TEXT}\nstock: {outside: 0.2}\n`
    expect(both({ text }, 'stock on diameter', 'D_before', 'S')).toMatchObject({ value: 0.2, from: 'part' })
  })

  it('name no figure of a face that its stock was not reckoned from', () => {
    const top = planned(partFrom(LINER_TEXT)).entries.find(({ kind }) => kind === 'face')
    const figures = new Map(top?.basis?.map(row => [row.figure, row.value]))
    // A bow tilts a face; an oval outside does not, and compound layer may stay on a face that nothing slides on.
    expect(figures.has('bow')).toBe(true)
    expect(figures.has('ovality')).toBe(false)
    expect(figures.get('compound layer')).toBe(0)
  })
})

describe('what the case rests on', () => {
  const figureOf = (shop: Shop, figure: string) =>
    planned(partFrom(LINER_TEXT), shop).case?.basis?.find(row => row.figure === figure)

  it('is the hardener’s own, where the shop file has it', () => {
    const shop = { ...BUILT_IN_SHOP, reached: [{ grade: '42CrMo4', surface: 640, core: 310, depthConstant: 0.04 }] }
    expect(figureOf(BUILT_IN_SHOP, 'surface hardness reached')?.from).toBe('handbook')
    expect(figureOf(shop, 'surface hardness reached')).toMatchObject({ value: 640, unit: 'HV', from: 'shop' })
    expect(figureOf(shop, 'depth constant at 520 °C')).toMatchObject({ value: 0.04, from: 'shop' })
  })

  it('is the bar’s own hardness and the depth that the part file asks', () => {
    expect(figureOf(BUILT_IN_SHOP, 'depth asked')?.from).toBe('part')
    expect(figureOf(BUILT_IN_SHOP, 'core hardness')?.from).toBe('part')
  })
})

it('say the stock of a face on the face, not doubled as if on a diameter', () => {
  const { entries } = planned(partFrom(`${LINER_TEXT}stock: {top: 0.12}\n`))
  const top = entries.find(({ kind }) => kind === 'face')
  expect(top?.basis).toContainEqual(expect.objectContaining({ figure: 'stock on the face', value: 0.12 }))
})
