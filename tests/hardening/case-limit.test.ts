import { describe, expect, it } from 'vitest'
import { DEEPEST_CASE } from '../../src/handbook/case-limits.ts'
import { upperTolerance } from '../../src/handbook/case-tolerance.ts'
import { caseLimit } from '../../src/hardening/case-limit.ts'
import { partFrom } from '../route/part-text.ts'
import { type Planned, planned } from '../stock/planned.ts'
import { hardenedBy, SLEEVE } from './case-part.ts'

/** Invented solid pins. */
const pin = (diameter: string, grade: string, hardening: string): Planned =>
  planned(
    partFrom(`part: {number: OX-098-95, title: Test pin, revision: A, kind: pin}
material: ${grade}
body:
  length: 80 ±0.1
  outside: {size: ${diameter}, Ra: 0.4, name: pin}
hardening: ${hardening}
`),
  )

/** The depth that a margin is judged on: what is left, what is asked and what is taken, together. */
const depthsOf = ({ entries, case: order }: Planned): readonly number[] =>
  [...new Set(entries.map(({ surface }) => surface))].map(surface => {
    const own = entries.filter(entry => entry.surface === surface)
    const taken = own.reduce((sum, { perSide }) => sum + perSide.most, 0)
    return (own[0]?.margin.case ?? Number.NaN) + taken + (order?.asked ?? Number.NaN)
  })

describe('the deepest case that may be ordered', () => {
  it('is what firms offer, by process', () => {
    // 0.1 to 1 mm: a heat treater's range of gas nitriding. 5 mm at 3 to 10 kHz: memory. 2.5 mm: common practice.
    expect(Object.entries(DEEPEST_CASE).map(([term, { depth }]) => [term, depth])).toEqual([
      ['NHD', 1],
      ['CHD', 2.5],
      ['SHD', 5],
    ])
  })

  it('of a sleeve is what its wall bears at the upper end of the order', () => {
    // Wall 4: max(0.5 * 4, 1.95) = 2 mm on both sides, 1 a side; 0.75 +0.25 is 1, and 0.80 +0.25 is more.
    expect(caseLimit(SLEEVE, 'gas nitriding', 'NHD', 4)).toMatchObject({ least: 0.75, by: 'wall' })
    // Wall 6, 2.5 mm on both sides: 1.25 a side is more than firms nitride.
    expect(caseLimit(SLEEVE, 'gas nitriding', 'NHD', 6)).toMatchObject({ least: 1, by: 'process' })
    // Hardened through under 3 depths: 9 / 3 = 3, and 1.95 +1 is within where 2.00 +1.6 is not.
    expect(caseLimit(SLEEVE, 'induction hardening', 'SHD', 9)).toMatchObject({ least: 1.95, by: 'wall' })
  })

  it('with one side carburised is half of what both may have and a fifth of the wall', () => {
    // 1 + 0.2 * 4 = 1.8: 1.35 +0.5 is more, 1.30 +0.5 is 1.8.
    const masked = hardenedBy({ process: 'carburising', masked: ['bore'] })
    expect(caseLimit(masked, 'carburising', 'CHD', 4)).toMatchObject({ least: 1.3, by: 'wall' })
  })

  it('leaves its whole tolerance in the wall, and the next step does not', () => {
    for (let wall = 1.5; wall < 12; wall += 0.1) {
      const { least, by } = caseLimit(SLEEVE, 'gas nitriding', 'NHD', wall)
      if (by !== 'wall') continue
      const bears = Math.max(wall <= 3 ? 0.65 * wall : 0.5 * wall, wall <= 3 ? 0 : 1.95) / 2
      expect(least + upperTolerance('NHD', least)).toBeLessThanOrEqual(bears + 1e-9)
      expect(least + 0.05 + upperTolerance('NHD', least + 0.05)).toBeGreaterThan(bears)
    }
  })
})

describe('a deep case in a solid pin', () => {
  it('is carburised: 1 mm to be left in Ø40 is no depth that a hardener refuses', () => {
    const plan = pin('40 h6', '{grade: 20MnCr5, hardness: 180 HV}', '{process: carburising, depth: min 1.0}')
    expect(plan.case?.ordered.least).toBeGreaterThan(1)
    expect(plan.case?.limit).toMatchObject({ least: 2.5, by: 'process' })
    expect(plan.entries.map(({ verdict }) => verdict)).toEqual(plan.entries.map(() => 'ok'))
    for (const { margin } of plan.entries) expect(margin.case).toBeGreaterThanOrEqual(-1e-9)
    expect(plan.findings.filter(({ severity }) => severity === 'error')).toEqual([])
  })

  it('is induction hardened: 1.5 mm to be left', () => {
    const plan = pin(
      '30 h6',
      '{grade: C45, hardness: 220 HV}',
      '{process: induction hardening, hardness: min 500 HV, depth: min 1.5}',
    )
    expect(plan.case?.ordered.least).toBeGreaterThan(1.5)
    expect(plan.entries.map(({ verdict }) => verdict)).toEqual(plan.entries.map(() => 'ok'))
    expect(plan.findings.filter(({ code }) => code.startsWith('stock/'))).toEqual([])
  })
})

describe('a case that the wall does not bear', () => {
  const thin = (depth: number): Planned =>
    planned({ ...hardenedBy({ depth: { least: depth } }), length: SLEEVE.length, stock: {} })

  it('is judged on the depth that the wall bears, in the margins and in the verdict alike', () => {
    const plan = thin(0.8)
    expect(plan.case?.limit).toMatchObject({ least: 0.75, by: 'wall' })
    for (const depth of depthsOf(plan)) expect(depth).toBeCloseTo(0.75, 9)
    for (const { margin, verdict } of plan.entries) {
      expect(margin.case).toBeLessThan(0)
      expect(verdict).not.toBe('ok')
    }
  })

  it('is refused by the limit that binds, named with its numbers', () => {
    const said = (depth: number) =>
      thin(depth)
        .findings.filter(({ code }) => code === 'stock/impossible' || code === 'stock/deep')
        .map(({ message }) => message)
    expect(said(0.8).length).toBeGreaterThan(0)
    for (const message of said(0.8)) expect(message).toContain('the wall of 4.00 mm bears 2 mm of case on both sides')
    expect(said(0.2)).toEqual([])
  })
})
