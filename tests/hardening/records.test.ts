import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fewLoadsBand, nextLoadBand } from '../../src/handbook/next-load.ts'
import { studentT } from '../../src/handbook/student-t.ts'
import { growthFor, planCase } from '../../src/hardening/plan-case.ts'
import { pooledGrowth } from '../../src/hardening/pooled-loads.ts'
import type { Spread } from '../../src/limits.ts'
import { chooseMeasured } from '../../src/shop/measured.ts'
import type { Measured, MeasuredLoad } from '../../src/shop/record.ts'
import type { Shop } from '../../src/shop/shop.ts'
import { openNotebook, SCRATCH } from '../../src/working.ts'
import { expectDigits } from '../handbook/to-the-digits.ts'
import { hardenedBy, SHOP, SLEEVE } from './case-part.ts'

const load = (batch: string, pieces: number, mean: number, spread: number): MeasuredLoad => ({
  batch,
  pieces,
  mean: mean / 1000,
  spread: spread / 1000,
})
/** Worked example of four loads, µm: pieces, mean, spread. */
const FOUR = [load('1', 18, 11.2, 1), load('2', 12, 11, 0.93), load('3', 16, 9.4, 1.1), load('4', 10, 12.3, 0.9)]
const PRIOR: Spread = { least: 0.0052, nominal: 0.0095, most: 0.0138 }
const pooled = (loads: readonly MeasuredLoad[], expected = PRIOR) =>
  pooledGrowth(SCRATCH, { loads, expected, about: 'growth' })

describe("Student's quantile (derived: closed forms of one, two and four degrees of freedom)", () => {
  it.each([0.6, 0.9, 0.975, 0.9986])('at %d', q => {
    expect(studentT(q, 1)).toBeCloseTo(Math.tan(Math.PI * (q - 0.5)), 6)
    const a = 4 * q * (1 - q)
    expect(studentT(q, 2)).toBeCloseTo((2 * (q - 0.5) * Math.SQRT2) / Math.sqrt(a), 8)
    const cosine = Math.cos(Math.acos(Math.sqrt(a)) / 3) / Math.sqrt(a)
    expect(studentT(q, 4)).toBeCloseTo(2 * Math.sqrt(cosine - 1), 6)
  })
  it('is that of printed tables (memory: 95 % two-sided)', () => {
    expectDigits(studentT(0.975, 3), '3.182')
    expectDigits(studentT(0.975, 11), '2.201')
    expectDigits(studentT(0.975, 30), '2.042')
  })
})

describe('growth pooled over furnace loads, µm (derived: worked twice, independently)', () => {
  it('of four loads holds a whole next load of 18 within 10.975 ± 5.287', () => {
    const { least, nominal, most } = pooled(FOUR)
    expectDigits(1000 * nominal, '10.975')
    expectDigits(1000 * (most - nominal), '5.287')
    expectDigits(1000 * (nominal - least), '5.287')
  })
  it('writes down the spread between the loads, 1.195', () => {
    const notebook = openNotebook()
    pooledGrowth(notebook, { loads: FOUR, expected: PRIOR, about: 'growth' })
    expect(notebook.workings.at(-1)?.expression).toMatch(/0\.001195/)
  })
  it('of one load moves the handbook to 10.800 and never narrows it', () => {
    const { least, nominal, most } = pooled([load('1', 12, 11, 0.93)])
    expectDigits(1000 * nominal, '10.800')
    expect(most - nominal).toBeCloseTo(0.0043, 9)
    expect(nominal - least).toBeCloseTo(0.0043, 9)
  })
  it('of two loads moves it to 10.988', () => {
    expectDigits(1000 * pooled([load('1', 18, 11.2, 1), load('2', 12, 11, 0.93)]).nominal, '10.988')
  })
  it.each([
    { V: 0.786 ** 2, freedom: 11, s_w: 0.93, half: '4.19' },
    { V: 0.572 ** 2, freedom: 28, s_w: Math.sqrt((17 + 11 * 0.93 ** 2) / 28), half: '3.73' },
  ])('would stand at $half by itself', ({ V, freedom, s_w, half }) => {
    const t_w = studentT(1 - 0.025 / 18, freedom)
    expectDigits(1000 * fewLoadsBand.value({ V: V * 1e-6, tau: 0.0008, t_w, s_w: s_w / 1000 }), half)
  })
  it('holds the mean of the next load within 4.254 of four, and a single piece of it within 4.703', () => {
    const means = FOUR.map(({ mean }) => 1000 * mean)
    const middle = means.reduce((sum, mean) => sum + mean, 0) / 4
    const s_b = Math.sqrt(means.reduce((sum, mean) => sum + (mean - middle) ** 2, 0) / 3)
    const s_w = Math.sqrt(FOUR.reduce((sum, { pieces, spread }) => sum + (pieces - 1) * (1000 * spread) ** 2, 0) / 52)
    const half = (t_w: number) =>
      nextLoadBand.value({ t_b: studentT(0.975, 3), s_b: s_b / 1000, k: 4, t_w, s_w: s_w / 1000 })
    expectDigits(1000 * half(0), '4.254')
    expectDigits(1000 * half(studentT(0.975, 52)), '4.703')
  })
  // Half band for a whole load of 18, 12 measured a load, 1.0 µm within a load; spread between loads 0.3, 0.5, 1.0, 1.5 µm.
  it.each([
    [3, [3.84, 4.32, 6.1, 8.25]],
    [4, [3.5, 3.78, 4.87, 6.29]],
    [5, [3.38, 3.59, 4.45, 5.6]],
    [6, [3.32, 3.5, 4.24, 5.26]],
    [8, [3.25, 3.4, 4.04, 4.91]],
    [10, [3.22, 3.35, 3.93, 4.74]],
    [20, [3.15, 3.27, 3.76, 4.46]],
  ])('narrows with the loads measured: %d of them', (k, halves) => {
    for (const [index, tau] of [0.3, 0.5, 1, 1.5].entries()) {
      const s_b = Math.sqrt(tau ** 2 + 1 / 12) / 1000
      const t_w = studentT(1 - 0.025 / 18, 11 * k)
      const h = nextLoadBand.value({ t_b: studentT(0.975, k - 1), s_b, k, t_w, s_w: 0.001 })
      expectDigits(1000 * h, (halves[index] ?? 0).toFixed(2))
    }
  })
  it('of two loads further apart than the furnace is thought to scatter takes their own distance', () => {
    const [near, far] = [
      pooled([load('1', 12, 10, 1), load('2', 12, 11, 1)]),
      pooled([load('1', 12, 6, 1), load('2', 12, 15, 1)]),
    ]
    expect(far.most - far.least).toBeGreaterThan(near.most - near.least)
  })
})

const on = {
  process: 'nitride',
  hardening: 'gas nitriding',
  grade: '42CrMo4',
  firm: 'Quillfen',
  wall: 4,
  diameter: 60,
  depth: 0.4,
} as const
const row = (more: Partial<Measured>): Measured => ({
  process: 'gas nitriding',
  pieces: 12,
  date: '2026-01-01',
  ovality: 0.02,
  ...more,
})
const chosen = (...measured: readonly Measured[]) => chooseMeasured({ measured }, on, 'ovality')

describe('the record that counts', () => {
  it('is the newest, whatever the order in the file', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray([1, 2, 3, 4, 5, 6], { minLength: 1 }), days => {
        const rows = days.map(day => row({ date: `2026-03-0${day}`, ovality: day / 100 }))
        expect(chosen(...rows).row?.ovality).toBe(Math.max(...days) / 100)
      }),
    )
  })
  it('of one day is the last written', () => {
    expect(chosen(row({ ovality: 0.01 }), row({ ovality: 0.03 })).row?.ovality).toBe(0.03)
  })
  it.each([
    [{ grade: '31CrMoV9' }, 'on 31CrMoV9, not 42CrMo4'],
    [{ firm: 'Brackwater' }, 'by Brackwater; the pieces go to Quillfen'],
    [{ process: 'nitrocarburising' as const }, 'on nitrocarburising, not gas nitriding'],
    [{ depth: 0.31 }, 'at a depth of 0.31 mm; 0.4 mm is ordered'],
    [{ wall: 6, diameter: 60 }, 'on a wall of 6 mm at Ø60; the part has 4 mm at Ø60'],
  ])('is none that was measured on another: %j', (more, why) => {
    const { row: found, passedOver } = chosen(
      row({ date: '2026-01-01', grade: '42CrMo4' }),
      row({ date: '2026-09-01', ...more }),
    )
    expect(found?.date).toBe('2026-01-01')
    expect(passedOver.map(({ why }) => why).join()).toContain(why)
  })
  it('may be a fifth deeper or shallower, thicker or thinner', () => {
    for (const more of [{ depth: 0.48 }, { depth: 0.32 }, { wall: 4.8, diameter: 60 }, { wall: 4, diameter: 72 }])
      expect(chosen(row(more)).row).toBeDefined()
  })
  it('of nitriding at large is none for nitrocarburising', () => {
    const other = { ...on, hardening: 'nitrocarburising' } as const
    expect(chooseMeasured({ measured: [row({ process: 'nitride' })] }, other, 'ovality').row).toBeUndefined()
  })
})

const shopOf = (...measured: readonly Measured[]): Shop => ({ ...SHOP, measured })
/** Derived: a measured outside of +15.3 µm and a bore that closes by 3.7 are 9.5 of free growth and 5.8 of the wall. */
const PARTED: Measured = {
  process: 'gas nitriding',
  pieces: 12,
  date: '2026-06-01',
  depth: 0.3,
  wall: 4,
  diameter: 60,
  length: 80,
  growth: {
    outside: { least: 0.0123, nominal: 0.0153, most: 0.0183 },
    bore: { least: 0.0007, nominal: 0.0037, most: 0.0067 },
  },
}

describe('growth measured outside and in the bore', () => {
  const growth = growthFor(SLEEVE, shopOf(PARTED), 0.3)
  const of = (name: string) => growth.bands.find(({ surface }) => surface === name)
  it('is planned as it was measured on a part like the one it was measured on', () => {
    expect(growth.outside.nominal).toBeCloseTo(0.0153, 9)
    expect(growth.bore.nominal).toBeCloseTo(0.0037, 9)
    expect(growth.outside.most - growth.outside.nominal).toBeCloseTo(0.003, 9)
  })
  it('is parted into 9.5 µm of free growth, which the faces have, and 5.8 of the wall', () => {
    expectDigits(1000 * growth.face.nominal, '9.5')
    expectDigits(1000 * (of('seat')?.wallMoves.nominal ?? 0), '5.8')
    // Along: the wall moves by its mean radius of 28 times the stretch.
    expect(growth.along.nominal).toBeCloseTo(0.0058 / 28, 9)
  })
  it('is carried over to another wall and depth by the movement of the wall alone', () => {
    const other = growthFor(SLEEVE, shopOf({ ...PARTED, wall: 3.5, diameter: 55, depth: 0.27 }), 0.3)
    const w = (5.8 * (28 / 25.75) * (3.5 / 4) * 0.3) / 0.27
    expect(1000 * other.outside.nominal).toBeCloseTo(9.5 + w, 6)
    expect(1000 * other.bore.nominal).toBeCloseTo(9.5 - w, 6)
  })
  it('moves a masked side by half of the wall, and takes no free growth there', () => {
    const masked = growthFor(hardenedBy({ masked: ['bore'] }), shopOf(PARTED), 0.3)
    expect(1000 * masked.bore.nominal).toBeCloseTo(-2.9, 1)
    expect(1000 * masked.outside.nominal).toBeCloseTo(9.5 + 2.9, 1)
  })
  it('of a length tells the stretch along', () => {
    const growth = { ...PARTED.growth, length: { least: 0.03, nominal: 0.035, most: 0.04 } }
    expect(growthFor(SLEEVE, shopOf({ ...PARTED, growth }), 0.3).along.nominal).toBeCloseTo((0.035 - 0.019) / 80, 9)
  })
  it('of the outside alone tells the bore by the reckoned movement of the wall', () => {
    const outside = { least: 0.0123, nominal: 0.0153, most: 0.0183 }
    const one = growthFor(SLEEVE, shopOf({ ...PARTED, growth: { outside } }), 0.3)
    const reckoned = growthFor(SLEEVE, SHOP, 0.3).bands.find(({ surface }) => surface === 'seat')?.wallMoves
    expect(one.outside.nominal).toBeCloseTo(0.0153, 9)
    expect(one.bore.nominal).toBeCloseTo(0.0153 - 2 * (reckoned?.nominal ?? 0), 4)
    expect(one.bore.most - one.bore.least).toBeGreaterThan(0.006)
  })
})

describe('a plan', () => {
  const planOf = (shop: Shop) =>
    planCase({ part: SLEEVE, shop, removal: [{ surface: 'seat', least: 0.05, nominal: 0.08, most: 0.1 }], wall: 4 })
  it('says which record it stands on, and which it passes over and why', () => {
    const { case: order, findings } = planOf(shopOf(PARTED, { ...PARTED, date: '2026-09-01', grade: '31CrMoV9' }))
    expect(order?.records).toEqual([
      { record: 'gas nitriding, 2026-06-01, 12 pieces', used: true, why: expect.stringContaining('growth') },
      { record: 'gas nitriding, 2026-09-01, 12 pieces', used: false, why: 'on 31CrMoV9, not 42CrMo4' },
    ])
    expect(findings.map(({ code }) => code)).toContain('case/record-passed-over')
  })
  it('warns of a record with one growth for both sides of a thin wall, and says by how much they differ', () => {
    const alike = { ...PARTED, growth: { least: 0.008, nominal: 0.011, most: 0.014 } }
    const found = planOf(shopOf(alike)).findings.find(({ code }) => code === 'case/record-undivided')
    expect(found?.message).toMatch(/\d+ µm a side more than the bore closes/)
  })
})
