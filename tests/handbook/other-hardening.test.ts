import { describe, expect, it } from 'vitest'
import { CARBURISED_CORE, CARBURISED_SURFACE, carburisingTime } from '../../src/handbook/carburising.ts'
import { REMOVAL_SHARE_CARBURISED } from '../../src/handbook/case-limits.ts'
import { depthToOrder } from '../../src/handbook/grinding-off-case.ts'
import { convertedFrom } from '../../src/handbook/hardness-conversion.ts'
import { CARBON, martensiteHardness } from '../../src/handbook/induction.ts'
import { materialOf } from '../../src/handbook/materials.ts'
import { PIN_CASES, pinCase } from '../../src/handbook/pin-case.ts'
import { expectDigits } from './to-the-digits.ts'

describe('carburising, total carbon depth after Harris', () => {
  it.each([
    [1.27, 4],
    [2.54, 16],
  ])('%f mm at 926.7 °C takes %d h, as the published table has it to 0.013 mm (Engineers Edge)', (depth, hours) => {
    const time = carburisingTime.value({ CHD: 0.7 * depth, r: 0.7, T: (1700 - 32) / 1.8 })
    expect(Math.abs(depth * Math.sqrt(hours / time) - depth)).toBeLessThan(0.013)
  })

  it.each([
    [0.4, '0.78'],
    [0.6, '1.76'],
    [0.8, '3.12'],
    [1, '4.88'],
  ])('CHD %d at 930 °C with a share of 0.70: %s h (derived)', (CHD, printed) => {
    expectDigits(carburisingTime.value({ CHD, r: 0.7, T: 930 }), printed)
  })

  it('a final 0.5 with 0.20 to grind orders 0.70, takes 2.390 h, and 28.6 % is over the usual 20 %', () => {
    const CHD = depthToOrder.value({ N_f: 0.5, s_max: 0.2 })
    expectDigits(CHD, '0.70')
    expectDigits(carburisingTime.value({ CHD, r: 0.7, T: 930 }), '2.390')
    expectDigits((100 * 0.2) / CHD, '28.6')
    expect(0.2 / CHD).toBeGreaterThan(REMOVAL_SHARE_CARBURISED.warn)
    // 1.00 is what the 20 % line needs.
    expect(0.2 / 1).toBeLessThanOrEqual(REMOVAL_SHARE_CARBURISED.warn)
  })

  it('has surface and core as converted from 58 to 62 and 30 to 40 HRC', () => {
    expect(convertedFrom('HRC', 58)?.HV).toBeCloseTo(CARBURISED_SURFACE.least, -1)
    expect(convertedFrom('HRC', 62)?.HV).toBeCloseTo(CARBURISED_SURFACE.most, -1)
    expect(convertedFrom('HRC', 30)?.HV).toBeCloseTo(CARBURISED_CORE.least, -1)
    expect(convertedFrom('HRC', 40)?.HV).toBeCloseTo(CARBURISED_CORE.most, -1)
  })
})

describe('induction hardening', () => {
  it('C45 averages 58.2 HRC, 42CrMo4 56.6 (induction-heating page; trade: 55 and more, 54 to 59)', () => {
    expectDigits(martensiteHardness.value({ C: 0.45 }), '58.2')
    expectDigits(martensiteHardness.value({ C: CARBON['42CrMo4'] ?? 0 }), '56.6')
    expect(martensiteHardness.value({ C: CARBON['C45'] ?? 0 })).toBeGreaterThan(55)
  })

  it('names only grades of the materials table, with the carbon of their name', () => {
    for (const [grade, carbon] of Object.entries(CARBON)) {
      expect(materialOf(grade)?.grade).toBe(grade)
      expect(grade).toContain(String(Math.round(100 * carbon)))
    }
  })
})

describe('case of pins, ISO 18669 as a pin maker reprints it', () => {
  it('has rows that meet, and a case that never gets shallower with the wall', () => {
    PIN_CASES.slice(1).forEach((row, index) => {
      const before = PIN_CASES[index]
      expect(row.from).toBe(before?.upTo)
      expect(row.inside).toBeGreaterThanOrEqual(before?.inside ?? 0)
      expect(row.outside ?? 0).toBeGreaterThanOrEqual(before?.outside ?? 0)
    })
  })
  it.each([
    [1.5, 0.1, undefined],
    [2, 0.1, 0.3],
    [3, 0.1, 0.3],
    [3.1, 0.2, 0.4],
    [5, 0.2, 0.4],
    [8, 0.4, 0.6],
    [20, 0.6, 0.8],
  ])('wall %d: inside %d, outside %s', (wall, inside, outside) => {
    expect(pinCase(wall)).toMatchObject(outside === undefined ? { inside } : { inside, outside })
  })
  it('has none under 1.5 mm', () => {
    expect(pinCase(1.4)).toBeUndefined()
  })
})
