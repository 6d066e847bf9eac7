import { type Micrometre, type Millimetre, millimetres } from '../units.ts'
import { rowFor } from './nominal-range.ts'

/**
 * Standard tolerance grades, µm, by nominal size, mm. Sizes up to 1 mm share the first row, where IT14 and coarser would
 * not. Cell by cell as reprinted in public tables that cite ISO 286-2:1988 (IS 919-2:1993); the standard was not at hand.
 */
export const STANDARD_TOLERANCES = {
  source: 'ISO 286-2:1988, standard tolerance grades, from public reprints',
  rows: [
    {
      over: 0,
      upTo: 3,
      IT2: 1.2,
      IT3: 2,
      IT4: 3,
      IT5: 4,
      IT6: 6,
      IT7: 10,
      IT8: 14,
      IT9: 25,
      IT10: 40,
      IT11: 60,
      IT12: 100,
    },
    {
      over: 3,
      upTo: 6,
      IT2: 1.5,
      IT3: 2.5,
      IT4: 4,
      IT5: 5,
      IT6: 8,
      IT7: 12,
      IT8: 18,
      IT9: 30,
      IT10: 48,
      IT11: 75,
      IT12: 120,
    },
    {
      over: 6,
      upTo: 10,
      IT2: 1.5,
      IT3: 2.5,
      IT4: 4,
      IT5: 6,
      IT6: 9,
      IT7: 15,
      IT8: 22,
      IT9: 36,
      IT10: 58,
      IT11: 90,
      IT12: 150,
    },
    {
      over: 10,
      upTo: 18,
      IT2: 2,
      IT3: 3,
      IT4: 5,
      IT5: 8,
      IT6: 11,
      IT7: 18,
      IT8: 27,
      IT9: 43,
      IT10: 70,
      IT11: 110,
      IT12: 180,
    },
    {
      over: 18,
      upTo: 30,
      IT2: 2.5,
      IT3: 4,
      IT4: 6,
      IT5: 9,
      IT6: 13,
      IT7: 21,
      IT8: 33,
      IT9: 52,
      IT10: 84,
      IT11: 130,
      IT12: 210,
    },
    {
      over: 30,
      upTo: 50,
      IT2: 2.5,
      IT3: 4,
      IT4: 7,
      IT5: 11,
      IT6: 16,
      IT7: 25,
      IT8: 39,
      IT9: 62,
      IT10: 100,
      IT11: 160,
      IT12: 250,
    },
    {
      over: 50,
      upTo: 80,
      IT2: 3,
      IT3: 5,
      IT4: 8,
      IT5: 13,
      IT6: 19,
      IT7: 30,
      IT8: 46,
      IT9: 74,
      IT10: 120,
      IT11: 190,
      IT12: 300,
    },
    {
      over: 80,
      upTo: 120,
      IT2: 4,
      IT3: 6,
      IT4: 10,
      IT5: 15,
      IT6: 22,
      IT7: 35,
      IT8: 54,
      IT9: 87,
      IT10: 140,
      IT11: 220,
      IT12: 350,
    },
    {
      over: 120,
      upTo: 180,
      IT2: 5,
      IT3: 8,
      IT4: 12,
      IT5: 18,
      IT6: 25,
      IT7: 40,
      IT8: 63,
      IT9: 100,
      IT10: 160,
      IT11: 250,
      IT12: 400,
    },
    {
      over: 180,
      upTo: 250,
      IT2: 7,
      IT3: 10,
      IT4: 14,
      IT5: 20,
      IT6: 29,
      IT7: 46,
      IT8: 72,
      IT9: 115,
      IT10: 185,
      IT11: 290,
      IT12: 460,
    },
  ],
} as const

export type StandardToleranceRow = (typeof STANDARD_TOLERANCES.rows)[number]

export const GRADES = [2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] as const
export type Grade = (typeof GRADES)[number]
export const isGrade = (grade: number): grade is Grade => GRADES.some(known => known === grade)

/** The cell of the table, µm; nothing for a size over 250 mm or a grade the table does not carry. */
export function toleranceCell(nominal: Millimetre, grade: number): Micrometre | undefined {
  return isGrade(grade) ? rowFor<StandardToleranceRow>(STANDARD_TOLERANCES.rows, nominal)?.[`IT${grade}`] : undefined
}

/**
 * Width of the tolerance of a grade, mm. Throws a RangeError outside the table: over 0 to 250 mm, IT2 to IT12.
 *
 * @example standardTolerance(48, 6) // 0.016
 */
export function standardTolerance(nominal: Millimetre, grade: number): Millimetre {
  const cell = toleranceCell(nominal, grade)
  if (cell === undefined) {
    throw new RangeError(`IT2 to IT12 over 0 up to 250 mm only, got IT${grade} at ${nominal} mm`)
  }
  return millimetres(cell)
}
