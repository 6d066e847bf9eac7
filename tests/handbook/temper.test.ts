import { describe, expect, it } from 'vitest'
import { STRESS_RELIEF_MARGINS, stressReliefCeiling, stressReliefFloor } from '../../src/handbook/stress-relief.ts'
import { equivalentTemper } from '../../src/handbook/temper.ts'
import { TEMPER_RESPONSES, temperEstimates, temperForStrength } from '../../src/handbook/temper-response.ts'
import { expectDigits } from './to-the-digits.ts'

describe('Hollomon-Jaffe, constant 20 (derived from the parameter; a note cites the constant)', () => {
  const CYCLES: readonly (readonly [number, number, string])[] = [
    [480, 40, '528.3'],
    [500, 60, '556.3'],
    [520, 36, '569.0'],
    [520, 50, '574.6'],
    [520, 100, '586.4'],
    [550, 40, '602.8'],
    [570, 4, '582.5'],
    [580, 2, '580.0'],
    [580, 3, '587.4'],
  ]
  it.each(CYCLES)('%d °C for %d h', (T, t, equivalent) => {
    expectDigits(equivalentTemper.value({ T, t, t_0: 2 }), equivalent)
  })

  it('a cycle like the temper is its own equivalent', () => {
    expect(equivalentTemper.value({ T: 600, t: 2, t_0: 2 })).toBeCloseTo(600, 9)
  })
})

describe('stress relief', () => {
  it('temper 620, nitriding 520: 540 to 570 °C (Lucefin technical card 42CrMo4: 50 K under the temper)', () => {
    const { overNitriding, underTemper } = STRESS_RELIEF_MARGINS
    expect(stressReliefFloor.value({ T_n: 520, m: overNitriding })).toBe(540)
    expect(stressReliefCeiling.value({ T_t: 620, m: underTemper })).toBe(570)
  })
})

describe('tempering response of 42CrMo4', () => {
  const [card, handbook] = TEMPER_RESPONSES
  it('puts 1000 MPa at 642 °C by the Lucefin card and at 521 °C by the eFunda data: 120 K apart', () => {
    if (!card || !handbook) throw new Error('two tables')
    expectDigits(temperForStrength(card, 1000) ?? 0, '642')
    expectDigits(temperForStrength(handbook, 1000) ?? 0, '521')
  })

  it('has falling rows', () => {
    for (const { rows } of TEMPER_RESPONSES) {
      rows.slice(1).forEach((row, index) => {
        expect(row.temper).toBeGreaterThan(rows[index]?.temper ?? 0)
        expect(row.strength).toBeLessThan(rows[index]?.strength ?? 0)
      })
    }
  })

  it('shows both estimates or none', () => {
    expect(temperEstimates('42CrMo4', 320)).toHaveLength(2)
    expect(temperEstimates('42CrMo4', 640)).toBeUndefined()
    expect(temperEstimates('C45', 320)).toBeUndefined()
    if (card) expect(temperForStrength(card, 2300)).toBeUndefined()
    if (card) expect(temperForStrength(card, 800)).toBeUndefined()
  })
})
