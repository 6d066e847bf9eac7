import { readPart } from '../../src/part/read-part.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import type { Plan } from '../../src/plan/plan.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'

/** A part as it is planned for twelve good pieces in the built-in works. */
export function planOf(text: string): Plan {
  const { part, findings } = readPart(text, 'part.yaml')
  if (!part) throw new Error(findings.map(({ message }) => message).join('\n'))
  const { plan, findings: more } = makePlan({
    part,
    shop: BUILT_IN_SHOP,
    batch: { number: '2631', quantity: 12 },
    issue: { date: '2026-11-30', fingerprint: '', program: '' },
  })
  if (!plan) throw new Error(more.map(({ message }) => message).join('\n'))
  return plan
}
