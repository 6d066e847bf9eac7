import { expect, it } from 'vitest'
import { makePlan } from '../../src/plan/make-plan.ts'
import { LINER_TEXT, partFrom } from '../route/part-text.ts'
import { OWN_BORE_SHOP } from '../shop/own-bore-shop.ts'

const ISSUE = { date: '2026-11-25', fingerprint: '0123456789ab', program: 'test' }

it('asks no milling of nothing where the other sizes fill the limits of an edge, and says what closes them', () => {
  const part = partFrom(LINER_TEXT.replace('opens: 106', 'opens: 106 ±0.02'))
  const { findings } = makePlan({ part, shop: OWN_BORE_SHOP, batch: { number: '1', quantity: 10 }, issue: ISSUE })
  const hint = findings.find(({ code }) => code === 'stock/chain-open')?.hint
  expect(hint).toContain('no milling closes it, for the other sizes in the chain fill the limits without it')
  expect(hint).not.toContain('±0.000')
  expect(hint).toMatch(/limits of ±0\.\d\d mm would close it/)
})
