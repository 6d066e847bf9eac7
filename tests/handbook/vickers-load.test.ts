import { describe, expect, it } from 'vitest'
import { largestLoad, STANDARD_LOADS, standardLoad } from '../../src/handbook/vickers-load.ts'
import { expectDigits } from './to-the-digits.ts'

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
    // Diagonal by the definition of Vickers hardness (ISO 6507-1:2018); the indentation is a seventh of it deep.
    expect(Math.sqrt((1.8544 * F) / 650) / 7).toBeCloseTo(0.02, 12)
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
