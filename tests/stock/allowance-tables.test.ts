import { describe, expect, it } from 'vitest'
import { planRoute } from '../../src/route/plan-route.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { planStock } from '../../src/stock/plan-stock.ts'
import { partFrom, sleeveText } from '../route/part-text.ts'
import {
  BORE_ALLOWANCE_BY_LENGTH,
  HONING_ALLOWANCE,
  OUTSIDE_ALLOWANCE_BY_LENGTH,
  OUTSIDE_GRINDING_ALLOWANCE,
} from './grinding-allowance.ts'

/** A sleeve with a wall of an eighth of its diameter, as long as it is wide. */
const sleeve = (diameter: number, stock?: string) => {
  const bore = Math.round(diameter * 0.75)
  const part = partFrom(
    sleeveText({
      outside: `${diameter} h6`,
      bore: `${bore} H6`,
      length: diameter,
      ...(stock !== undefined && { stock }),
    }),
  )
  return planStock(part, BUILT_IN_SHOP, planRoute(part, BUILT_IN_SHOP).operations)
}

/**
 * The tables are for quenched parts; nitriding distorts less, so the planner's nominal lies under their figure, and over the
 * least that finish grinding alone is given.
 */
describe('planner against OST 1.41512-86, as reprinted in a Kazan textbook, Table P8', () => {
  it.each([12, 16, 20, 25, 30, 40, 50, 60, 80, 100, 120])(
    'Ø%i lies between the finish cut and the single cut',
    diameter => {
      const row = OUTSIDE_GRINDING_ALLOWANCE.find(({ over, upTo }) => diameter > over && diameter <= upTo)
      const entry = sleeve(diameter).entries.find(({ kind }) => kind === 'outside')
      expect(entry?.onDiameter.nominal).toBeGreaterThanOrEqual(row?.finish ?? Infinity)
      expect(entry?.onDiameter.nominal).toBeLessThanOrEqual(row?.single ?? 0)
      expect(entry?.verdict).toBe('ok')
    },
  )
})

describe('0.2 mm on diameter after nitriding, 25 to 60 mm: common practice, no source', () => {
  it.each([25, 30, 35, 40, 45, 50, 55, 60])('is good for an ordinary set-up at Ø%i', diameter => {
    const { entries } = sleeve(diameter, '{outside: 0.2, bore: 0.2}')
    expect(entries.map(({ surface, verdict }) => [surface, verdict])).toEqual(
      entries.map(({ surface }) => [surface, 'ok']),
    )
  })
})

describe('hone after internal grinding, 0.015 to 0.04 on diameter: common practice, no source', () => {
  it.each([30, 60, 90])('is within it at Ø%i', diameter => {
    const hone = sleeve(diameter).entries.find(({ surface, perSide }) => surface === 'bore' && perSide.needed < 0.01)
    expect(hone?.onDiameter.nominal).toBeGreaterThanOrEqual(HONING_ALLOWANCE.afterGrinding.least)
    expect(hone?.onDiameter.nominal).toBeLessThanOrEqual(HONING_ALLOWANCE.afterGrinding.most)
  })
})

describe('shape of the allowance tables', () => {
  it('meet without gap or overlap and never decrease', () => {
    for (const table of [OUTSIDE_GRINDING_ALLOWANCE, OUTSIDE_ALLOWANCE_BY_LENGTH, BORE_ALLOWANCE_BY_LENGTH]) {
      for (const [index, row] of table.slice(1).entries()) expect(row.over).toBe(table[index]?.upTo)
    }
    for (const { single, rough, finish } of OUTSIDE_GRINDING_ALLOWANCE) {
      expect(rough + finish).toBeLessThanOrEqual(single + 1e-9)
    }
    for (const { lengths } of [...OUTSIDE_ALLOWANCE_BY_LENGTH, ...BORE_ALLOWANCE_BY_LENGTH]) {
      for (const [index, cell] of lengths.slice(1).entries()) {
        expect(cell.upTo).toBeGreaterThan(lengths[index]?.upTo ?? 0)
        expect(cell.hardened).toBeGreaterThanOrEqual(lengths[index]?.hardened ?? 0)
      }
    }
  })
})
