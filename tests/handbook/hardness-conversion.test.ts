import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { convertedFrom, vickersFrom, vickersFromRockwell } from '../../src/handbook/hardness-conversion.ts'
import { CONVERSION_ROWS } from '../../src/handbook/hardness-conversion-rows.ts'
import { strengthFromVickers } from './second-models/hardness-conversion.ts'
import { expectDigits } from './to-the-digits.ts'

describe('against DIN 50150 conversion tables, interpolated (derived)', () => {
  it('305 HV is 30.4 HRC, 290 HB and about 980 MPa', () => {
    const row = convertedFrom('HV', 305)
    expectDigits(row?.HRC ?? 0, '30.4')
    // 289.5 is printed 290.
    expect(row?.HB).toBeCloseTo(290, 0)
    expect(row?.strength).toBe(980)
  })
  it('28 HRC is 286.4 HV and 919 MPa; 34 HRC is 336.4 HV and 1082 MPa', () => {
    const soft = convertedFrom('HRC', 28)
    expectDigits(soft?.HV ?? 0, '286.4')
    // 919.3
    expectDigits(soft?.strength ?? 0, '919')
    const hard = convertedFrom('HRC', 34)
    expectDigits(hard?.HV ?? 0, '336.4')
    expectDigits(hard?.strength ?? 0, '1082')
  })
  it('336.36 HV is 1082.3 MPa', () => {
    expectDigits(convertedFrom('HV', 336.36)?.strength ?? 0, '1082.3')
  })
  it('the worked sleeves: 320 HV is 1030 MPa, 390 HV is 1255 MPa', () => {
    expect(convertedFrom('HV', 320)?.strength).toBe(1030)
    expect(convertedFrom('HV', 390)?.strength).toBe(1255)
  })
})

/** ASTM A370-03a conversion table, a copy: HRC, HV. */
const A370: readonly (readonly [number, number])[] = [
  [68, 940],
  [67, 900],
  [66, 865],
  [65, 832],
  [64, 800],
  [63, 772],
  [62, 746],
  [61, 720],
  [60, 697],
  [59, 674],
  [58, 653],
  [57, 633],
  [56, 613],
  [55, 595],
  [54, 577],
  [53, 560],
  [52, 544],
  [51, 528],
  [50, 513],
  [49, 498],
  [48, 484],
  [47, 471],
  [46, 458],
  [45, 446],
  [44, 434],
  [43, 423],
  [42, 412],
  [41, 402],
  [40, 392],
]

/** Memory: ASTM E140 Table 1. */
const E140: readonly (readonly [number, number])[] = [
  [39, 382],
  [38, 372],
  [37, 363],
  [36, 354],
  [35, 345],
  [34, 336],
  [33, 327],
  [32, 318],
  [31, 310],
  [30, 302],
  [29, 294],
  [28, 286],
  [27, 279],
  [26, 272],
  [25, 266],
  [24, 260],
  [23, 254],
  [22, 248],
  [21, 243],
]

describe('the table against ASTM A370-03a, and E140 from memory', () => {
  it.each([...A370, ...E140])('%d HRC is %d HV within 0.5 %', (HRC, HV) => {
    const ours = convertedFrom('HRC', HRC)?.HV ?? 0
    expect(Math.abs(ours / HV - 1)).toBeLessThan(0.005)
  })
})

describe('the closed form against ASTM A370-03a, and E140 from memory', () => {
  it.each([...A370, ...E140])('%d HRC is %d HV within 0.9 %, 1.4 % at the hardest', (HRC, HV) => {
    const difference = Math.abs(vickersFromRockwell.value({ HRC }) / HV - 1)
    expect(difference).toBeLessThan(HRC === 68 ? 0.0145 : 0.0095)
  })
  it('gives 697.0 HV at 60 HRC and 302.7 HV at 30 HRC', () => {
    expectDigits(vickersFromRockwell.value({ HRC: 60 }), '697.0')
    expectDigits(vickersFromRockwell.value({ HRC: 30 }), '302.7')
  })
})

describe('the strength formula against the table', () => {
  it.each(CONVERSION_ROWS.filter(({ HV, strength }) => HV <= 430 && strength !== undefined))('$HV HV', row => {
    expect(Math.abs(strengthFromVickers.value({ HV: row.HV }) / (row.strength ?? 1) - 1)).toBeLessThan(0.011)
  })
})

describe('always', () => {
  it('rises in every column, no hardness twice, HB 0.95 of HV to a unit', () => {
    for (const column of ['HV', 'HB', 'HRC', 'strength'] as const) {
      const values = CONVERSION_ROWS.flatMap(row => row[column] ?? [])
      values.slice(1).forEach((value, index) => {
        expect(value, column).toBeGreaterThan(values[index] ?? 0)
      })
    }
    for (const { HV, HB } of CONVERSION_ROWS) if (HB !== undefined) expect(Math.abs(HB - 0.95 * HV)).toBeLessThan(1.01)
  })

  it('a harder steel never converts softer', () => {
    const monotone = fc.property(
      fc.double({ min: 20.3, max: 67.9, noNaN: true }),
      fc.double({ min: 0, max: 0.1, noNaN: true }),
      (HRC, more) => {
        expect(convertedFrom('HRC', HRC + more)?.HV).toBeGreaterThanOrEqual(convertedFrom('HRC', HRC)?.HV ?? 0)
      },
    )
    fc.assert(monotone)
  })

  it('goes there and back', () => {
    const back = fc.property(fc.double({ min: 240, max: 940, noNaN: true }), HV => {
      expect(convertedFrom('HRC', convertedFrom('HV', HV)?.HRC ?? 0)?.HV).toBeCloseTo(HV, 6)
    })
    fc.assert(back)
  })

  it('refuses what does not exist: under 240 and over 940 HV there is no HRC', () => {
    expect(convertedFrom('HV', 950)).toBeUndefined()
    expect(convertedFrom('HRC', 20)).toBeUndefined()
    expect(convertedFrom('HRC', 68.1)).toBeUndefined()
    expect(convertedFrom('HV', 237)?.HRC).toBeUndefined()
    expect(convertedFrom('HV', 655)?.strength).toBeUndefined()
    expect(convertedFrom('HV', 150)).toBeUndefined()
  })
})

// Memory: ISO 18265 Table A.1: 76 HB is 80 HV, 114 HB 120 HV, 143 HB 150 HV.
describe('softer than the tables', () => {
  it.each([
    [76, 80],
    [114, 120],
    [143, 150],
  ])('%d HB is about %d HV', (HB, HV) => expect(Math.abs((vickersFrom('HB', HB) ?? 0) - HV)).toBeLessThan(1))

  it('goes on where the tables begin, and for no other scale', () => {
    expect(vickersFrom('HB', 189.999)).toBeCloseTo(vickersFrom('HB', 190) ?? 0, 1)
    expect(vickersFrom('HRC', 15)).toBeUndefined()
    expect(vickersFrom('HB', 900)).toBeUndefined()
  })
})
