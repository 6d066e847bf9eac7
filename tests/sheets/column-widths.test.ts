import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { columnWidths } from '../../src/sheets/column-widths.ts'

const column = fc
  .record({
    least: fc.double({ min: 5, max: 40, noNaN: true }),
    more: fc.double({ min: 0, max: 200, noNaN: true }),
    writes: fc.boolean(),
  })
  .map(({ least, more, writes }) => ({ least, most: least + more, writes }))

describe('widths of columns', () => {
  it('fill the table and leave each its widest word where there is room for all', () => {
    fc.assert(
      fc.property(fc.array(column, { minLength: 1, maxLength: 9 }), needs => {
        const widths = columnWidths(needs, 500, 6, true)
        expect(widths.reduce((sum, width) => sum + width, 6 * (needs.length - 1))).toBeCloseTo(500, 6)
        widths.forEach((width, index) => {
          expect(width).toBeGreaterThanOrEqual((needs[index]?.least ?? 0) - 1e-6)
        })
      }),
    )
  })

  it('are numbers, and none below nothing, whichever columns are empty and however many there are', () => {
    const maybeEmpty = fc.oneof(column, fc.constant({ least: 0, most: 0, writes: false }))
    fc.assert(
      fc.property(fc.array(maybeEmpty, { minLength: 1, maxLength: 120 }), fc.boolean(), (needs, stretch) => {
        for (const width of columnWidths(needs, 500, 6, stretch)) expect(width).toBeGreaterThanOrEqual(0)
      }),
    )
    expect(
      columnWidths(
        [
          { least: 0, most: 0, writes: false },
          { least: 494, most: 494, writes: false },
        ],
        500,
        6,
        true,
      ),
    ).toEqual([0, 494])
  })

  it('take from what a template gives a column before a word is cut', () => {
    const needs = [
      { least: 40, most: 120, fixed: 130, writes: false },
      { least: 60, most: 60, writes: false },
      { least: 55, most: 55, writes: true },
    ]
    const [given, words, box] = columnWidths(needs, 200, 0, true)
    expect(given).toBeCloseTo(200 - 60 - 55, 9)
    expect(words).toBeCloseTo(60, 9)
    expect(box).toBeCloseTo(55, 9)
    expect(columnWidths(needs, 100, 0, true).reduce((sum, width) => sum + width)).toBeCloseTo(100, 9)
  })

  it('give what is over to the columns that are written in', () => {
    const needs = [
      { least: 10, most: 20, writes: false },
      { least: 51, most: 51, writes: true },
    ]
    expect(columnWidths(needs, 200, 0, true)).toEqual([20, 180])
  })
})
