import { describe, expect, it } from 'vitest'
import { SHAFT_DEVIATIONS } from '../../src/handbook/fundamental-deviation.ts'
import { GRADES, STANDARD_TOLERANCES, standardTolerance, toleranceCell } from '../../src/handbook/standard-tolerance.ts'
import { standardToleranceFactor } from './second-models/standard-tolerance.ts'

/** Multiples of i: memory, ISO 286-1:1988 Annex A; ten times every five grades from IT6. */
const MULTIPLES = { 5: 7, 6: 10, 7: 16, 8: 25, 9: 40, 10: 64, 11: 100, 12: 160 } as const

const meanOf = ({ over, upTo }: { over: number; upTo: number }): number => Math.sqrt(Math.max(over, 1) * upTo)

/** Public data table of IT01 to IT18 that cites IS 919-2:1993 (ISO 286-2:1988); IT5 to IT11 agree in six further tables. */
const REPRINT = [
  [3, 2, 3, 4, 6, 10, 14, 25, 40, 60, 100],
  [6, 2.5, 4, 5, 8, 12, 18, 30, 48, 75, 120],
  [10, 2.5, 4, 6, 9, 15, 22, 36, 58, 90, 150],
  [18, 3, 5, 8, 11, 18, 27, 43, 70, 110, 180],
  [30, 4, 6, 9, 13, 21, 33, 52, 84, 130, 210],
  [50, 4, 7, 11, 16, 25, 39, 62, 100, 160, 250],
  [80, 5, 8, 13, 19, 30, 46, 74, 120, 190, 300],
  [120, 6, 10, 15, 22, 35, 54, 87, 140, 220, 350],
  [180, 8, 12, 18, 25, 40, 63, 100, 160, 250, 400],
  [250, 10, 14, 20, 29, 46, 72, 115, 185, 290, 460],
] as const

describe('standard tolerances against ISO 286-2:1988, Table 1, as reprinted', () => {
  it.each(REPRINT)('up to %d mm, IT3 to IT12', (upTo, ...cells) => {
    const grades = GRADES.filter(grade => grade >= 3)
    expect(grades.map(grade => toleranceCell(upTo, grade))).toEqual(cells)
  })

  it('puts a size on a boundary into the lower range', () => {
    expect(standardTolerance(30, 7)).toBe(0.021)
    expect(standardTolerance(30.001, 7)).toBe(0.025)
  })

  it('throws outside the table', () => {
    expect(() => standardTolerance(251, 7)).toThrow('got IT7 at 251 mm')
    expect(() => standardTolerance(48, 13)).toThrow(RangeError)
    expect(() => standardTolerance(0, 7)).toThrow(RangeError)
  })
})

describe('typing of the tables against the generating formulas of ISO 286-1:1988, Annex A', () => {
  const overThree = STANDARD_TOLERANCES.rows.filter(({ over }) => over >= 3)

  it.each(overThree)('over $over up to $upTo mm within a tenth, IT5 to IT12', row => {
    const i = standardToleranceFactor.value({ D: meanOf(row) })
    for (const [grade, multiple] of Object.entries(MULTIPLES)) {
      const cell = toleranceCell(row.upTo, Number(grade)) ?? 0
      expect(Math.abs(multiple * i - cell) / cell, `IT${grade}`).toBeLessThan(0.1)
    }
  })

  // Memory: ISO 286-1:1988 Annex A. The standard's rounding moves a cell by up to a micrometre.
  it.each(SHAFT_DEVIATIONS.rows.filter(({ over }) => over >= 3))('over $over: deviations within 1 µm', row => {
    const D = meanOf(row)
    expect(Math.abs(-row.f - 5.5 * D ** 0.41)).toBeLessThan(1)
    expect(Math.abs(-row.g - 2.5 * D ** 0.34)).toBeLessThan(1)
    expect(Math.abs(row.k - 0.6 * Math.cbrt(D))).toBeLessThan(1)
    expect(Math.abs(row.m - 2.8 * Math.cbrt(D))).toBeLessThan(1)
    expect(Math.abs(row.n - 5 * D ** 0.34)).toBeLessThan(1)
    const IT7 = toleranceCell(row.upTo, 7) ?? 0
    expect(row.p - IT7).toBeGreaterThanOrEqual(0)
    expect(row.p - IT7).toBeLessThanOrEqual(5)
  })
})

describe('shape of the tables', () => {
  it.each([
    ['tolerances', STANDARD_TOLERANCES.rows],
    ['deviations', SHAFT_DEVIATIONS.rows],
  ])('%s: ranges meet without gap', (_, rows) => {
    expect(rows[0]?.over).toBe(0)
    expect(rows.at(-1)?.upTo).toBe(250)
    for (const [index, row] of rows.entries()) {
      if (index > 0) expect(row.over).toBe(rows[index - 1]?.upTo)
    }
  })

  it('never decreases with size or with grade', () => {
    for (const [index, row] of STANDARD_TOLERANCES.rows.entries()) {
      const before = STANDARD_TOLERANCES.rows[index - 1]
      for (const grade of GRADES) {
        if (before) expect(row[`IT${grade}`]).toBeGreaterThanOrEqual(before[`IT${grade}`])
        const finer = GRADES.find(other => other === grade - 1)
        if (finer) expect(row[`IT${grade}`]).toBeGreaterThan(row[`IT${finer}`])
      }
    }
  })
})
