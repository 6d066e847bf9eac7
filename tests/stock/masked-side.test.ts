import { describe, expect, it } from 'vitest'
import { hasErrors } from '../../src/finding.ts'
import { endGrowth } from '../../src/handbook/axial-growth.ts'
import { between } from '../../src/limits.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { growthsOf } from '../../src/stock/settle-stock.ts'
import { SCRATCH } from '../../src/working.ts'
import { partFrom } from '../route/part-text.ts'

const ISSUE = { date: '2026-11-25', fingerprint: '0123456789ab', program: 'test' }

const planOf = (text: string) => {
  const planned = makePlan({
    part: partFrom(text),
    shop: BUILT_IN_SHOP,
    batch: { number: '1', quantity: 10 },
    issue: ISSUE,
  })
  if (!planned.plan) throw new Error('no plan')
  return { ...planned, plan: planned.plan }
}

/** Invented. Longer than its diameter, so that the stretch of the length outweighs that of the diameters. */
const sleeve = (masked: string) => `part: {number: OX-098-92, title: Masked sleeve, revision: A, kind: sleeve}
material: {grade: 42CrMo4, hardness: 300 HV, temper: 620}
body:
  length: 120 ±0.2
  outside: {size: 45.5 g6, name: seat}
  bore: {size: 33.3 H6, name: running}
  top: {Ra: 0.8}
hardening: {process: gas nitriding, depth: min 0.15, masked: [${masked}]}
`

describe.each(['seat', 'outside', 'running', 'bore'])('a sleeve with its %s masked', masked => {
  const { plan } = planOf(sleeve(masked))

  it('is planned, and everything that grows does so from least to most', () => {
    const growths = [plan.case?.growth.outside, plan.case?.growth.bore]
    for (const growth of growths) {
      expect(growth?.least).toBeLessThanOrEqual(growth?.nominal ?? Number.NaN)
      expect(growth?.nominal).toBeLessThanOrEqual(growth?.most ?? Number.NaN)
    }
    for (const { sizes } of plan.operations)
      for (const { lower, upper } of sizes) expect(lower).toBeLessThanOrEqual(upper)
  })

  it('stretches along its length as it does across: worked by hand from the growth of its masked side', () => {
    const side = masked === 'seat' || masked === 'outside' ? 'outside' : 'bore'
    const growth = plan.case?.growth
    if (!growth) throw new Error('no case')
    const [sign, diameter, open] = side === 'outside' ? ([1, 45.5, 'bore'] as const) : ([-1, 33.3, 'outside'] as const)
    const epsilon = (2 * sign * growth[side].most) / diameter
    // The open side moves by free growth, and by the stretch of its own diameter.
    const free = growth[open].most + (side === 'outside' ? (epsilon * 33.3) / 2 : (-epsilon * 45.5) / 2)
    expect(epsilon).toBeGreaterThan(0)
    expect(endGrowth.value({ F: free, epsilon, L: 120 })).toBeCloseTo(
      growthsOf(SCRATCH, partFrom(sleeve(masked)), growth).of({ kind: 'face', final: between(119.8, 120.2) }).most,
      9,
    )
  })
})

it('says of a bore whose tolerance growth takes whole that nothing is left to the turner, and plans the rest', () => {
  const { plan, findings } = planOf(`part: {number: OX-098-93, title: Nitrided pin, revision: A, kind: pin}
material: {grade: 42CrMo4, hardness: 300 HV, temper: 620}
body:
  length: 61 ±0.1
  outside: 37.5 h5
  bore: 25 H7
hardening: {process: nitrocarburising}
`)
  expect(findings.map(({ code }) => code)).toContain('stock/growth-over-tolerance')
  expect(hasErrors(findings)).toBe(true)
  expect(plan.inspection.characteristics.length).toBeGreaterThan(0)
})
