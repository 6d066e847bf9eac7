import { describe, expect, it } from 'vitest'
import {
  largestLoad,
  STANDARD_LOADS,
  standardLoad,
  VICKERS_SPACING,
  vickersDiagonal,
} from '../../src/handbook/vickers-load.ts'
import { expectDigits } from './to-the-digits.ts'

describe('geometry of the indentation (derived; distances ISO 6507-1:2018)', () => {
  const ROWS: readonly (readonly [number, number, string, string, string, string])[] = [
    [0.1, 650, '16.89', '2.41', '42.2', '50.7'],
    [0.3, 650, '29.26', '4.18', '73.1', '87.8'],
    [0.5, 650, '37.77', '5.40', '94.4', '113.3'],
    [1, 650, '53.41', '7.63', '133.5', '160.2'],
    [1, 800, '48.15', '6.88', '120.4', '144.4'],
    [0.5, 370, '50.06', '7.15', '125.1', '150.2'],
    [10, 320, '240.7', '34.4', '601.8', '722.2'],
  ]
  it.each(ROWS)('HV%d in %d HV, µm', (F, HV, diagonal, depth, edge, next) => {
    const d = 1000 * vickersDiagonal.value({ F, HV })
    expectDigits(d, diagonal)
    expectDigits(d / 7, depth)
    expectDigits(VICKERS_SPACING.toEdge * d, edge)
    expectDigits(VICKERS_SPACING.toNext * d, next)
  })
})

describe('largest load by the Bueckle rule, kgf (derived)', () => {
  const ROWS: readonly (readonly [number, string, string, string, string])[] = [
    [0.05, '0.33', '0.43', '0.53', '0.63'],
    [0.1, '1.32', '1.72', '2.11', '2.51'],
    [0.15, '2.97', '3.86', '4.76', '5.65'],
    [0.2, '5.28', '6.87', '8.46', '10.04'],
    [0.3, '11.89', '15.46', '19.03', '22.59'],
  ]
  it.each(ROWS)('%d mm left, in 500, 650, 800 and 950 HV', (N_r, ...printed) => {
    for (const [index, HV] of [500, 650, 800, 950].entries())
      expectDigits(largestLoad.value({ HV, N_r }), printed[index] ?? '')
  })

  it('penetrates a tenth of the layer, no more', () => {
    const F = largestLoad.value({ HV: 650, N_r: 0.2 })
    expect(vickersDiagonal.value({ F, HV: 650 }) / 7).toBeCloseTo(0.02, 12)
  })
})

describe('standard loads', () => {
  it('rise', () => {
    expect(STANDARD_LOADS).toEqual([...STANDARD_LOADS].sort((a, b) => a - b))
  })
  it('takes the one at or below, and says when even the smallest is too much', () => {
    expect(standardLoad(6.87)).toEqual({ load: 5, borne: true })
    expect(standardLoad(1)).toEqual({ load: 1, borne: true })
    expect(standardLoad(500)).toEqual({ load: 10, borne: true })
    expect(standardLoad(0.05)).toEqual({ load: 0.1, borne: false })
  })
})
