import { describe, expect, it } from 'vitest'
import { readPart } from '../../src/part/read-part.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import type { Plan } from '../../src/plan/plan.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { GAUGES_TO_GET } from '../../src/shop/gauges-to-get.ts'
import { demoPlan } from '../sheets/demo-packet.ts'

/** A pump sleeve of Oxmere, longer than the built-in drills go and wider than its micrometers reach. */
const WIDE = `part: {number: OX-140-02, title: Pump sleeve, revision: A, kind: sleeve}
material: {grade: C45, hardness: 200 HV}
body: {length: 180 ±0.1, outside: {size: 140 h8, Ra: 1.6}, bore: {size: 118 H8, Ra: 1.6}}
`

function planned(text: string): { readonly plan: Plan; readonly errors: readonly string[] } {
  const { part } = readPart(text, 'sleeve.yaml')
  if (!part) throw new Error('the part was not read')
  const issue = { date: '2026-11-25', fingerprint: '0123456789ab', program: 'test' }
  const { plan, findings } = makePlan({ part, shop: BUILT_IN_SHOP, batch: { number: '1', quantity: 12 }, issue })
  if (!plan) throw new Error('nothing was planned')
  return { plan, errors: findings.filter(({ severity }) => severity === 'error').map(({ message }) => message) }
}

describe('the kit of every operation', () => {
  it('has each tool of its steps once, and every gauge that decides there', async () => {
    const plan = await demoPlan('OX-098-21')
    for (const { number, place, steps } of plan.operations) {
      const kit = plan.kit.filter(({ operation }) => operation === number)
      expect(new Set(kit.map(({ what }) => what)).size).toBe(kit.length)
      if (place === 'outside') expect(kit).toEqual([])
      else
        for (const { tool } of steps)
          if (/^(end mill|drill|boring bar) /.test(tool)) expect(kit.map(({ what }) => what)).toContain(tool)
    }
    expect(plan.kit.every(({ have }) => have)).toBe(true)
  })

  it('counts as many cutters as the batch wears out', async () => {
    const plan = await demoPlan('OX-098-21')
    const worn = plan.operations.flatMap(({ number, steps }) =>
      steps.flatMap(({ tool, wornOut }) => (wornOut === undefined ? [] : [{ number, tool, wornOut }])),
    )
    expect(worn.length).toBeGreaterThan(1)
    for (const { number, tool, wornOut } of worn)
      expect(plan.kit).toContainEqual({
        what: tool,
        kind: 'end mill',
        operation: number,
        quantity: wornOut,
        have: true,
      })
  })

  it('names drill and micrometer that the works lacks, and the plan goes on', () => {
    const { plan, errors } = planned(WIDE)
    expect(errors).toEqual([])
    const toGet = plan.kit.filter(({ have }) => !have)
    expect(toGet.map(({ kind }) => kind)).toEqual(expect.arrayContaining(['drill', 'outside gauge']))
    expect(toGet.map(({ what }) => what)).toContain('outside micrometer 125 to 150')
    for (const { what } of toGet)
      expect(plan.findings.some(({ message }) => message.includes(`to get: ${what}`))).toBe(true)
  })
})

it('gauges to get cover every size to 250 mm without a gap, kind by kind', () => {
  for (const [kind, least, most] of [
    ['outside', 0, 250],
    ['bore', 4, 160],
    ['length', 0, 275],
    ['depth', 0, 600],
  ] as const)
    for (let size = least + 0.5; size <= most; size += 0.5)
      expect(
        GAUGES_TO_GET.some(gauge => gauge.kind === kind && size >= gauge.from && size <= gauge.to),
        `${kind} ${size}`,
      ).toBe(true)
})
