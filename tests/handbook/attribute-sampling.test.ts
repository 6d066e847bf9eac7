import { describe, expect, it } from 'vitest'
import {
  CODE_LETTERS,
  INSPECTION_LEVELS,
  MASTER_TABLE,
  QUALITY_LIMITS,
  resolvedPlan,
  samplingPlan,
} from '../../src/handbook/attribute-sampling.ts'

/** One-page chart of ANSI/ASQC Z1.4, MIL-STD-105E and ISO 2859: letters by lot size. */
const LETTERS = [
  [2, 8, 'A A A A A A B'],
  [9, 15, 'A A A A A B C'],
  [16, 25, 'A A B B B C D'],
  [26, 50, 'A B B C C D E'],
  [51, 90, 'B B C C C E F'],
  [91, 150, 'B B C D D F G'],
  [151, 280, 'B C D E E G H'],
  [281, 500, 'B C D E F H J'],
  [501, 1200, 'C C E F G J K'],
  [1201, 3200, 'C D E G H K L'],
  [3201, 10_000, 'C D F G J L M'],
] as const

/** Derived: the arrows of MIL-STD-105E, Table II-A, followed by hand. J/0.65 and G/0.65 as printed in a paper on ISO 2859-1:1999. */
const RESOLVED = [
  ['A', '20,0/1', '13,0/1', '8,0/1', '5,0/1', '3,0/1'],
  ['B', '20,0/1', '13,0/1', '8,0/1', '5,0/1', '3,0/1'],
  ['C', '20,0/1', '13,0/1', '8,0/1', '5,0/1', '3,0/1'],
  ['D', '20,0/1', '13,0/1', '8,0/1', '5,0/1', '13,1/2'],
  ['E', '20,0/1', '13,0/1', '8,0/1', '20,1/2', '13,1/2'],
  ['F', '20,0/1', '13,0/1', '32,1/2', '20,1/2', '20,2/3'],
  ['G', '20,0/1', '50,1/2', '32,1/2', '32,2/3', '32,3/4'],
  ['H', '80,1/2', '50,1/2', '50,2/3', '50,3/4', '50,5/6'],
  ['J', '80,1/2', '80,2/3', '80,3/4', '80,5/6', '80,7/8'],
  ['K', '125,2/3', '125,3/4', '125,5/6', '125,7/8', '125,10/11'],
  ['L', '200,3/4', '200,5/6', '200,7/8', '200,10/11', '200,14/15'],
  // Memory: code M.
  ['M', '315,5/6', '315,7/8', '315,10/11', '315,14/15', '315,21/22'],
] as const

describe('sample-size code letters against the chart of ISO 2859 and its forerunners', () => {
  it.each(LETTERS)('lots of %d to %d', (least, most, letters) => {
    for (const lot of [least, most]) {
      const row = CODE_LETTERS.rows.find(({ over, upTo }) => lot > over && lot <= upTo)
      expect(INSPECTION_LEVELS.map(level => row?.[level]).join(' ')).toBe(letters)
    }
  })
})

describe('single sampling, normal inspection, against MIL-STD-105E, Table II-A, arrows followed', () => {
  it.each(RESOLVED)('code letter %s', (letter, ...plans) => {
    const found = QUALITY_LIMITS.map(limit => {
      const plan = resolvedPlan(letter, limit)
      return plan && `${plan.sampleSize},${plan.accept}/${plan.reject}`
    })
    expect(found).toEqual(plans)
  })

  it('follows an arrow to the sample size of the other plan as well', () => {
    expect(samplingPlan(40, 'II', 2.5)).toMatchObject({ letter: 'C', sampleSize: 5, accept: 0, reject: 1 })
    expect(samplingPlan(40, 'II', 4)).toMatchObject({ letter: 'E', sampleSize: 13, accept: 1, reject: 2 })
  })

  it('says to inspect every piece where the sample is the lot', () => {
    expect(samplingPlan(12, 'II', 1)?.everyPiece).toBe(true)
    expect(samplingPlan(14, 'II', 1)?.everyPiece).toBe(false)
  })

  it('has no plan for one piece, or for more than it covers', () => {
    expect(samplingPlan(1, 'II', 1)).toBeUndefined()
    expect(samplingPlan(10_001, 'II', 1)).toBeUndefined()
  })

  it('never accepts on fewer with a larger sample, nor with a laxer limit', () => {
    for (const limit of QUALITY_LIMITS) {
      const column = MASTER_TABLE.rows.map(row => row[limit]).filter(cell => typeof cell === 'number')
      expect(column).toEqual(column.toSorted((a, b) => a - b))
    }
    for (const row of MASTER_TABLE.rows) {
      const cells = QUALITY_LIMITS.map(limit => row[limit]).filter(cell => typeof cell === 'number')
      expect(cells).toEqual(cells.toSorted((a, b) => a - b))
    }
  })
})
