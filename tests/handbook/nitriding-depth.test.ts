import { describe, expect, it } from 'vitest'
import {
  depthConstant,
  nitridingTime,
  NITROGEN_ACTIVATION_ENERGY as Q,
  REFERENCE_TEMPERATURE as T_ref,
} from '../../src/handbook/nitriding-depth.ts'
import { NITRIDED_GRADES, nitridedGrade } from '../../src/handbook/nitriding-steels.ts'
import { expectDigits } from './to-the-digits.ts'

const constantAt = (K_ref: number, T: number, energy = Q): number => depthConstant.value({ K_ref, T, T_ref, Q: energy })

describe('scaling of the depth constant, derived from the activation energy', () => {
  // Derived: exp(-Q/2R (1/T - 1/T_ref)), worked out apart from this code.
  const FACTORS: readonly (readonly [number, string, string])[] = [
    [480, '0.7248', '0.6685'],
    [500, '0.8549', '0.8219'],
    [510, '0.9255', '0.9077'],
    [520, '1.0000', '1.0000'],
    [530, '1.0784', '1.0990'],
    [540, '1.1607', '1.2050'],
    [550, '1.2471', '1.3183'],
    [560, '1.3376', '1.4391'],
    [570, '1.4323', '1.5677'],
    [580, '1.5313', '1.7044'],
    [590, '1.6346', '1.8494'],
  ]
  it.each(FACTORS)('%d °C: %s, and %s with 100 kJ/mol', (T, factor, sensitive) => {
    expectDigits(10 * constantAt(0.1, T), factor)
    expectDigits(10 * constantAt(0.1, T, 100_000), sensitive)
  })

  it('works out 31CrMoV9 at 560 °C for 0.40 mm', () => {
    const K = constantAt(0.045, 560)
    expectDigits(K, '0.06019')
    expectDigits(nitridingTime.value({ N: 0.4, K }), '44.16')
  })

  it('works out 42CrMo4 for 0.30 mm at 500, 520 and 550 °C', () => {
    const hours = (T: number) => nitridingTime.value({ N: 0.3, K: constantAt(0.05, T) })
    expectDigits(hours(520), '36.00')
    expectDigits(hours(500), '49.25')
    expectDigits(hours(550), '23.15')
  })

  it('works out the depths to order with 0.0975 and 0.1375 to take off', () => {
    expectDigits(nitridingTime.value({ N: 0.2975, K: 0.05 }), '35.40')
    expectDigits(nitridingTime.value({ N: 0.3375, K: 0.05 }), '45.56')
  })
})

describe('hours at 520 °C by grade (derived from the constants; constants memory/estimate)', () => {
  const HOURS: readonly (readonly [number, string, string, string, string])[] = [
    [0.1, '4.0', '4.9', '6.2', '3.3'],
    [0.2, '16.0', '19.8', '25.0', '13.2'],
    [0.3, '36.0', '44.4', '56.2', '29.8'],
    [0.4, '64.0', '79.0', '100.0', '52.9'],
    [0.5, '100.0', '123.5', '156.2', '82.6'],
    [0.6, '144.0', '177.8', '225.0', '119.0'],
  ]
  const GRADES = ['42CrMo4', '31CrMoV9', '34CrAlNi7-10', '38MnVS6']
  it.each(HOURS)('%d mm', (N, ...printed) => {
    GRADES.forEach((grade, index) => {
      const K = nitridedGrade(grade)?.depthConstant?.usual ?? 0
      expectDigits(nitridingTime.value({ N, K }), printed[index] ?? '')
    })
  })
})

describe('hours by grade for 0.2, 0.3 and 0.4 mm at 520 °C (derived; constants memory/estimate)', () => {
  it.each([
    ['34CrMo4', '15', '33', '59'],
    ['50CrMo4', '17', '39', '69'],
    ['34CrNiMo6', '17', '39', '69'],
    ['32CrMo12', '23', '51', '91'],
    ['34CrAlMo5-10', '25', '56', '100'],
    ['41CrAlMo7-10', '25', '56', '100'],
    ['16MnCr5', '15', '33', '59'],
    ['20MnCr5', '15', '33', '59'],
    ['100Cr6', '20', '44', '79'],
  ])('%s: %s, %s and %s h', (grade, ...printed) => {
    const K = nitridedGrade(grade)?.depthConstant?.usual ?? 0
    for (const [index, hours] of printed.entries())
      expectDigits(nitridingTime.value({ N: 0.2 + 0.1 * index, K }), hours)
  })
})

describe('published depths', () => {
  it('puts every steel inside 0.02 to 1 mm in 20 to 100 h at 480 to 600 °C (Haerterei Reinhard: 0.1 to 1 mm)', () => {
    const steels = NITRIDED_GRADES.filter(({ depthConstant, tempered }) => depthConstant && tempered)
    expect(steels.length).toBeGreaterThan(2)
    for (const { depthConstant: K } of steels) {
      expect(nitridingTime.value({ N: 0.1, K: constantAt(K?.usual ?? 0, 480) })).toBeLessThan(20)
      expect(nitridingTime.value({ N: 1, K: constantAt(K?.usual ?? 0, 600) })).toBeGreaterThan(100)
    }
  })

  it('puts 42CrMo4, 50 h at 520 °C inside 0.2 to 0.4 mm (aircraft-materials teaching text, 50 h)', () => {
    expect(nitridingTime.value({ N: 0.2, K: 0.05 })).toBeLessThan(50)
    expect(nitridingTime.value({ N: 0.4, K: 0.05 })).toBeGreaterThan(50)
  })
})

describe('always', () => {
  it('lists no grade twice, and every range in order', () => {
    expect(new Set(NITRIDED_GRADES.map(({ grade }) => grade)).size).toBe(NITRIDED_GRADES.length)
    for (const { surface, core, depthConstant, usualDepth, source } of NITRIDED_GRADES) {
      for (const range of [surface, core, depthConstant]) {
        if (!range) continue
        expect(range.least).toBeLessThanOrEqual(range.usual)
        expect(range.usual).toBeLessThanOrEqual(range.most)
      }
      if (usualDepth) expect(usualDepth.least).toBeLessThan(usualDepth.most)
      if (surface && core) expect(surface.least - core.most).toBeGreaterThan(50)
      expect(source).not.toBe('')
    }
  })
})
