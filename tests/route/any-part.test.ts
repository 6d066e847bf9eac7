import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { planRoute } from '../../src/route/plan-route.ts'
import { ROUTE_RULES } from '../../src/route/rules/route-rules.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { LINER_TEXT, partFrom } from './part-text.ts'

const GRINDERS = { name: 'a grinding firm', processes: ['grind', 'hone'], leadTime: 5 } as const
const SHOPS = [
  BUILT_IN_SHOP,
  {
    ...BUILT_IN_SHOP,
    machines: BUILT_IN_SHOP.machines.filter(({ processes }) => !processes.includes('grind')),
    firms: [...BUILT_IN_SHOP.firms, GRINDERS],
  },
]

/** Liners hardened or soft, ported or plain, with closer or wider surfaces. */
const anyLiner = fc
  .record({
    outside: fc.constantFrom('55 g6, Ra: 0.8', '55 h9', '55 h11, Ra: 3.2', '55 h7'),
    bore: fc.constantFrom('48 H6, Ra: 0.3', '48 H7, Ra: 0.8', '48 H11'),
    top: fc.boolean(),
    hardened: fc.boolean(),
    ported: fc.boolean(),
    kind: fc.constantFrom('liner', 'sleeve'),
  })
  .map(({ outside, bore, top, hardened, ported, kind }) => {
    const drop = (text: string, when: boolean, what: RegExp) => (when ? text.replace(what, '') : text)
    let text = LINER_TEXT.replace('55 g6, Ra: 0.8', outside)
      .replace('48 H6, Ra: 0.3, cylindricity: 0.006', bore)
      .replace('kind: liner', `kind: ${kind}`)
    text = drop(text, !top, / {2}top:.*\n/)
    text = drop(text, !hardened, /hardening:.*\n/)
    text = drop(text, !ported, /ports:[\s\S]*$/)
    return partFrom(text)
  })

describe('the route of any legal liner or sleeve', () => {
  it('keeps every rule of the trade, whatever the works does itself', () => {
    fc.assert(
      fc.property(anyLiner, fc.constantFrom(...SHOPS), (part, shop) => {
        const { operations, findings } = planRoute(part, shop)
        expect(findings).toEqual([])
        const tasks = operations.map(operation => ({ ...operation, why: [] }))
        for (const [index, earlier] of tasks.entries()) {
          for (const later of tasks.slice(index + 1)) {
            expect(ROUTE_RULES.filter(rule => rule.applies(later, earlier)).map(({ name }) => name)).toEqual([])
          }
        }
      }),
      { numRuns: 100 },
    )
  })

  it('checks all work as it goes out and when it is back, in lines of the operation that comes next', () => {
    fc.assert(
      fc.property(anyLiner, fc.constantFrom(...SHOPS), (part, shop) => {
        const { operations } = planRoute(part, shop)
        const lines = operations.flatMap(({ number, checks = [] }) => checks.map(check => ({ at: number, ...check })))
        for (const { number, place } of operations) {
          if (place !== 'outside') continue
          const out = lines.filter(({ kind, of }) => kind === 'despatch' && of.includes(number))
          const back = lines.filter(({ kind, of }) => kind === 'receipt' && of.includes(number))
          expect(out.map(({ at, of }) => at === of[0])).toEqual([true])
          expect(back.map(({ at, of }) => at - (of.at(-1) ?? 0))).toEqual([10])
        }
        expect(operations.filter(({ process }) => process === 'inspect').map(({ purpose }) => purpose)).toEqual([
          'final-inspection',
        ])
      }),
      { numRuns: 100 },
    )
  })
})
