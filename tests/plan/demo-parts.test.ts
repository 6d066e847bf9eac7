import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { PartKind } from '../../src/part/part.ts'
import { partTemplate } from '../../src/part/part-template.ts'
import { readPart } from '../../src/part/read-part.ts'
import { readShop } from '../../src/part/read-shop.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Shop } from '../../src/shop/shop.ts'

const ISSUE = { date: '2026-11-28', fingerprint: '0bd5bebc6b1e', program: 'linerwright 0.1.0' }
const oxmere = readShop(readFileSync('parts/shop.yaml', 'utf8'), 'parts/shop.yaml').shop

function planned(text: string, shop: Shop | undefined) {
  const { part } = readPart(text, 'part.yaml')
  if (!part || !shop) throw new Error('does not read')
  const { plan, findings } = makePlan({ part, shop, batch: { number: '2631', quantity: 10 }, issue: ISSUE })
  return { plan, errors: findings.filter(({ severity }) => severity === 'error').map(({ message }) => message) }
}

/** What a works does itself by cutting has steps; a hole there would be an empty sheet. */
const CUTS = new Set(['saw', 'turn', 'drill', 'mill', 'grind', 'hone', 'lap'])

describe('every part of the demo works is planned whole', () => {
  it.each(['OX-098-30', 'OX-098-31', 'OX-098-34', 'OX-105-02', 'OX-112-03', 'OX-131-07'])(
    '%s, without an error',
    number => {
      const { plan, errors } = planned(readFileSync(`parts/${number}.yaml`, 'utf8'), oxmere)
      expect(errors).toEqual([])
      const house = plan?.operations.filter(({ place, process }) => place === 'house' && CUTS.has(process)) ?? []
      expect(house.length).toBeGreaterThan(1)
      for (const { name, steps } of house) expect(steps.length, name).toBeGreaterThan(0)
      for (const { verdict, margin, told } of plan?.stock ?? []) {
        // A lap takes micrometres, and no comparator tells under one a side: what is to spare cannot be told from none.
        if (verdict === 'marginal') expect(margin.cleanUp).toBeLessThan(told?.value ?? 0)
        else expect(verdict).toBe('ok')
        expect(margin.cleanUp).toBeGreaterThanOrEqual(0)
      }
    },
  )

  it('the pin is drilled, ground through and lapped in the works, carburised outside', () => {
    const { plan } = planned(readFileSync('parts/OX-098-34.yaml', 'utf8'), oxmere)
    const where = plan?.operations.map(({ process, workCentre }) => `${process} at ${workCentre}`)
    expect(where).toContain('grind at centreless grinder')
    expect(where).toContain('lap at lapping lathe')
    expect(where).toContain('case-harden at Quillfen Hardening')
  })

  it('the bar of the pin is ordered annealed, that of the sleeve quenched and tempered', () => {
    const supply = (number: string) =>
      planned(readFileSync(`parts/${number}.yaml`, 'utf8'), oxmere).plan?.material.barSupply
    expect(supply('OX-098-34')).toContain('annealed, 180 HV')
    expect(supply('OX-131-07')).toContain('quenched and tempered to 310 HV')
  })
})

describe('a file to start from', () => {
  it.each<PartKind>(['liner', 'sleeve', 'pin', 'piston'])(
    'of a %s plans without an error in a works of no shop file',
    kind => {
      const { plan, errors } = planned(partTemplate(kind), BUILT_IN_SHOP)
      expect(errors).toEqual([])
      expect(plan?.part.kind).toBe(kind)
    },
  )
})

describe('a piston, of what it is refused', () => {
  const PISTON = readFileSync('parts/OX-098-30.yaml', 'utf8')

  it.each([
    ['a skirt closer than turning holds', PISTON.replace('±0.025', 'h6')],
    ['a smoother one', PISTON.replace('47.93 ±0.025, Ra: 1.6', '47.93 ±0.025, Ra: 0.4')],
    ['a hardened one', `${PISTON}hardening: {process: nitrocarburising, depth: min 0.1}\n`],
  ])('%s is said, and not planned', (_, text) => {
    const { plan, errors } = planned(text, oxmere)
    expect(plan).toBeUndefined()
    expect(errors.join()).toContain('plan')
  })
})
