import { describe, expect, it } from 'vitest'
import { quenchChange } from '../../src/handbook/hardening-growth.ts'
import { hardnessTempered, quenchedStock, throughHardened } from '../../src/handbook/through-hardening.ts'
import { expectDigits } from './to-the-digits.ts'

/** Worked apart: 1.11e-4 k D²/t, not under 0.02; off axis 0.02, bow 0.03 for each 100 mm, skin 0.03 (estimate). */
describe('stock of a part hardened through (estimate; worked apart)', () => {
  it.each([
    { D: 60, t: 4, L: 80, k: 1.8, nominal: '0.107', most: '0.184' },
    { D: 60, t: 4, L: 80, k: 0.3, nominal: '0.0695', most: '0.109' },
    { D: 40, t: 5, L: 60, k: 1.8, nominal: '0.075', most: '0.120' },
    { D: 100, t: 6, L: 150, k: 0.3, nominal: '0.0864', most: '0.1428' },
    { D: 30, t: 4, L: 50, k: 1.8, nominal: '0.0687', most: '0.1075' },
  ])('Ø$D with a wall of $t, $L long, k $k: $nominal a side, $most at most', ({ D, t, L, k, nominal, most }) => {
    const o = Math.max(0.02, (k * 1.11e-4 * D ** 2) / t)
    const given = { e: 0.02, o, b: (0.03 * L) / 100 }
    const s = quenchedStock.value({ ...given, skin: 0.03, u: 0 })
    expectDigits(s, nominal)
    // What may be off is off the other way where most comes off.
    expectDigits(s + quenchedStock.value({ ...given, skin: 0, u: 0 }), most)
  })
})

describe('hardness after the temper (data sheet of a steel maker)', () => {
  it.each([
    ['100Cr6', 150, 63],
    ['100Cr6', 180, 62.4],
    ['100Cr6', 250, 59],
    ['C60', 200, 59],
    ['X46Cr13', 150, 55.5],
  ])('%s tempered at %d °C: %d HRC', (grade, temper, hardness) => {
    const row = throughHardened(grade)
    expect(row && hardnessTempered(row, temper)).toBeCloseTo(hardness, 6)
  })

  it('says nothing past its rows', () => {
    const row = throughHardened('100Cr6')
    expect(row && hardnessTempered(row, 120)).toBeUndefined()
    expect(row && hardnessTempered(row, 320)).toBeUndefined()
  })
})

it('a temper that breaks down 8 points of austenite adds 48 to 53 µm on Ø60 (derived: 0.010 to 0.011 % a point)', () => {
  const given = { process: 'through hardening', grade: '100Cr6', shape: 'sleeve', narrowBar: false, boreHardened: true }
  const share = (austenite?: { least: number; most: number }) =>
    quenchChange({ ...given, shape: 'sleeve', austenite })?.outside.nominal ?? 0
  const added = 60_000 * (share({ least: 8, most: 8 }) - share())
  expect(added).toBeGreaterThan(48)
  expect(added).toBeLessThan(53)
})
