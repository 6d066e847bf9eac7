import { describe, expect, it } from 'vitest'
import { planRoute } from '../../src/route/plan-route.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Shop } from '../../src/shop/shop.ts'
import { planned } from '../stock/planned.ts'
import { partFrom } from './part-text.ts'

/** Invented. */
const sleeve = (length: string, waive = '') =>
  partFrom(`part: {number: OX-098-97, title: Test sleeve, revision: A, kind: sleeve}
material: {grade: 42CrMo4, hardness: 280 HV}
body:
  length: ${length}
  outside: {size: 60 h7, Ra: 0.8, name: seat}
  bore: {size: 40 H7, Ra: 0.8}
hardening: {process: induction hardening, hardness: min 550 HV, depth: min 1.0, masked: [seat, top, bottom]}
${waive}`)
const faced = (length: string, shop: Shop = BUILT_IN_SHOP, waive = '') =>
  planRoute(sleeve(length, waive), shop).operations.find(({ name }) => /^Grind .*top face/.test(name))

/** Induction changes a length by +0.02 ±0.05 % (common practice, no source): 0.12 mm over 120. */
describe('a length that the quench moves by more than the drawing allows', () => {
  it('has its top face ground after it, with the reason', () => {
    const operation = faced('120 ±0.05')
    expect(operation?.surfaces).toContain('length')
    expect(operation?.because.join(' ')).toContain(
      'a length within 0.10 mm is closer than hardening leaves it: it differs by 0.12 mm',
    )
  })

  it('then comes out within the drawing, where turning alone left the chain open', () => {
    const codes = (waive = '') => planned(sleeve('120 ±0.05', waive)).findings.map(({ code }) => code)
    expect(codes()).not.toContain('stock/chain-open')
    expect(codes('waive: [{rule: length-closer-than-quenched, because: agreed}]')).toContain('stock/chain-open')
  })

  it.each(['120 ±0.1', '60 ±0.05'])('is turned only, where the drawing leaves the turner room: %s', length => {
    expect(faced(length)).toBeUndefined()
  })

  it('is left to the records of a works that has measured it', () => {
    const measured = {
      process: 'induction-harden',
      grade: '42CrMo4',
      growth: { least: 0, nominal: 0.005, most: 0.01 },
      pieces: 20,
      date: '2026-01-10',
    } as const
    expect(faced('120 ±0.05', { ...BUILT_IN_SHOP, measured: [measured] })).toBeUndefined()
  })
})
