import { describe, expect, it } from 'vitest'
import { GENERAL_TOLERANCES, generalTolerance } from '../../src/handbook/general-tolerance.ts'

/** Shared copy of the tables of DIN ISO 2768-1 and five public data tables; both agree but for class c up to 6 mm. */
const REPRINT = [
  [2, 0.05, 0.1, 0.2, undefined],
  [5, 0.05, 0.1, 0.3, 0.5],
  [20, 0.1, 0.2, 0.5, 1],
  [80, 0.15, 0.3, 0.8, 1.5],
  [200, 0.2, 0.5, 1.2, 2.5],
  [700, 0.3, 0.8, 2, 4],
  [1500, 0.5, 1.2, 3, 6],
  [3000, undefined, 2, 4, 8],
] as const

describe('general tolerances against ISO 2768-1:1989, linear sizes, as reprinted', () => {
  it.each(REPRINT)('%d mm', (size, ...cells) => {
    expect((['f', 'm', 'c', 'v'] as const).map(c => generalTolerance(size, c))).toEqual(cells)
  })

  it('counts a boundary to the lower range, and 0.5 mm to the first', () => {
    expect(generalTolerance(6, 'm')).toBe(0.1)
    expect(generalTolerance(6.01, 'm')).toBe(0.2)
    expect(generalTolerance(0.5, 'm')).toBe(0.1)
  })

  it('gives none below 0.5 mm or over 4000 mm', () => {
    expect(generalTolerance(0.49, 'm')).toBeUndefined()
    expect(generalTolerance(4001, 'v')).toBeUndefined()
  })

  it('has ranges that meet and values that grow with size and class', () => {
    for (const [index, row] of GENERAL_TOLERANCES.rows.entries()) {
      if (index > 0) expect(row.over).toBe(GENERAL_TOLERANCES.rows[index - 1]?.upTo)
      const cells = [row.f, row.m, row.c, row.v].filter(cell => cell !== undefined)
      expect(cells).toEqual(cells.toSorted((a, b) => a - b))
    }
  })
})
