import { describe, expect, it } from 'vitest'
import { planRoute } from '../../src/route/plan-route.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { LINER_TEXT, partFrom } from './part-text.ts'

const SOFT = LINER_TEXT.replace('42CrMo4, hardness: 300 HV, temper: 620', 'EN-GJL-250')
  .replace(/hardening:.*\n/, '')
  .replace(/ports:[\s\S]*$/, '')
const purposes = (text: string, shop = BUILT_IN_SHOP) =>
  planRoute(partFrom(text), shop).operations.map(({ purpose }) => purpose)

describe('route of a nitrided, ported liner: common practice, no source', () => {
  const route = planRoute(partFrom(LINER_TEXT), BUILT_IN_SHOP)
  const named = (purpose: string) => route.operations.find(operation => operation.purpose === purpose)

  it('goes from the saw to the final inspection, numbered in tens', () => {
    expect(route.findings).toEqual([])
    expect(route.operations.map(({ purpose }) => purpose)).toEqual([
      'saw-blanks',
      'rough-turn',
      'stress-relieve',
      'finish-turn',
      'mill-ports',
      'deburr-soft',
      'nitride',
      'grind-outside',
      'grind-bore',
      'hone-bore',
      'crack-test',
      'deburr-ports',
      'final-inspection',
    ])
    expect(route.operations.map(({ number }) => number)).toEqual(route.operations.map((_, index) => 10 * (index + 1)))
  })

  it('gives every operation a reason, a holding and a work centre', () => {
    for (const { because, holding, workCentre } of route.operations) {
      expect(because.length).toBeGreaterThan(0)
      expect(holding).not.toBe('')
      expect(workCentre).not.toBe('')
    }
  })

  it('tells every rule that holds a place at least once', () => {
    const told = route.operations.flatMap(({ because }) => because).join('\n')
    expect(told).toContain('a small end mill does not survive a hardened surface')
    expect(told).toContain('a sharp edge hardens through and chips')
    expect(told).toContain('a mandrel in the finished bore would mark it')
  })

  it('locates the bore from the ground outside, and the outside from the bore as turned', () => {
    expect(named('grind-bore')).toMatchObject({ locatedBy: ['seat', 'bottom'], locatedAs: 'ground' })
    expect(named('grind-outside')).toMatchObject({ locatedBy: ['bore'], locatedAs: 'turned', surfaces: ['seat'] })
  })

  it('marks a face that is not ground later', () => {
    expect(named('deburr-soft')?.marks).toBe('flange')
    const all = planRoute(partFrom(LINER_TEXT.replace('62 h9', '62 h6')), BUILT_IN_SHOP)
    expect(all.operations.find(({ purpose }) => purpose === 'deburr-soft')?.marks).toBe('bottom')
  })

  it('hardens outside, where the shop has no furnace, and in house where it has', () => {
    expect(named('nitride')).toMatchObject({ place: 'outside', workCentre: 'a licensed hardener' })
    const furnace = { ...BUILT_IN_SHOP, machines: [...BUILT_IN_SHOP.machines, FURNACE] }
    const own = planRoute(partFrom(LINER_TEXT), furnace).operations
    expect(own.find(({ purpose }) => purpose === 'nitride')).toMatchObject({ place: 'house', workCentre: 'furnace' })
    expect(own.find(({ purpose }) => purpose === 'nitride')?.checks?.map(({ kind }) => kind)).toEqual(['despatch'])
  })
})

const FURNACE = { workCentre: 'furnace', name: 'pit furnace', processes: ['nitride'], setup: 10, handling: 1 } as const
const GRINDERS = { name: 'a grinding firm', processes: ['grind', 'hone'], leadTime: 5 } as const

describe('what the surfaces ask for', () => {
  it('leaves a soft liner without stress relief and hardening, turned in one operation and not tested for cracks', () => {
    expect(purposes(SOFT)).toEqual([
      'saw-blanks',
      'turn',
      'deburr-soft',
      'grind-outside',
      'grind-top',
      'hone-bore',
      'final-inspection',
    ])
  })

  it('does not grind an outside that turning holds', () => {
    expect(purposes(SOFT.replace('55 g6, Ra: 0.8', '55 h9'))).not.toContain('grind-outside')
  })

  it('chucks on the turned outside when that is not ground', () => {
    const route = planRoute(partFrom(LINER_TEXT.replace('55 g6, Ra: 0.8', '55 h9')), BUILT_IN_SHOP)
    expect(route.operations.find(({ purpose }) => purpose === 'grind-bore')?.locatedAs).toBe('turned')
  })

  it('turns a top face that is not asked for more', () => {
    const route = planRoute(partFrom(LINER_TEXT.replace(/ {2}top:.*\n/, '')), BUILT_IN_SHOP)
    expect(route.operations.find(({ purpose }) => purpose === 'grind-bore')?.surfaces).toEqual(['bore'])
  })
})

describe('work that goes to a firm for finishing', () => {
  const shop = {
    ...BUILT_IN_SHOP,
    machines: BUILT_IN_SHOP.machines.filter(({ workCentre }) => !/internal|honing/.test(workCentre)),
    firms: [...BUILT_IN_SHOP.firms, GRINDERS],
  }

  it('is checked as it leaves and when it comes back, in the operations that come next', () => {
    const { operations } = planRoute(partFrom(LINER_TEXT), shop)
    const from = operations.findIndex(({ purpose }) => purpose === 'nitride')
    const lines = operations
      .slice(from)
      .map(({ purpose, checks = [] }) => [purpose, ...checks.map(({ kind, of }) => `${kind} ${of.join()}`)])
    expect(lines).toEqual([
      ['nitride', 'despatch 70'],
      ['grind-outside', 'receipt 70'],
      ['grind-bore', 'despatch 90,100'],
      ['hone-bore'],
      ['crack-test', 'receipt 90,100', 'despatch 110'],
      ['deburr-ports', 'receipt 110'],
      ['final-inspection'],
    ])
  })

  it('stays at one firm for all that the firm does', () => {
    const all = { ...GRINDERS, processes: ['grind', 'hone', 'crack-test'] } as const
    const { operations } = planRoute(partFrom(LINER_TEXT), { ...shop, firms: [...BUILT_IN_SHOP.firms, all] })
    expect(operations.filter(({ workCentre }) => workCentre === all.name).map(({ purpose }) => purpose)).toEqual([
      'grind-bore',
      'hone-bore',
      'crack-test',
    ])
  })

  it('is planned at a crack-testing firm that is still to be found, where the shop file has none', () => {
    const none = {
      ...BUILT_IN_SHOP,
      firms: BUILT_IN_SHOP.firms.filter(({ processes }) => !processes.includes('crack-test')),
    }
    const { operations, findings } = planRoute(partFrom(LINER_TEXT), none)
    expect(findings.map(({ code, severity }) => [code, severity])).toEqual([['route/no-place', 'note']])
    expect(operations.find(({ purpose }) => purpose === 'crack-test')?.place).toBe('outside')
  })

  it('leaves unchecked what the part says needs no check', () => {
    const waive = `${LINER_TEXT}waive:\n  - {rule: checked-on-return, because: the firm sends its readings}\n`
    const kinds = planRoute(partFrom(waive), shop).operations.flatMap(({ checks = [] }) =>
      checks.map(({ kind }) => kind),
    )
    expect(new Set(kinds)).toEqual(new Set(['despatch']))
  })

  it('is a finding when neither a machine nor a firm does it', () => {
    const firms = BUILT_IN_SHOP.firms.filter(({ processes }) => !processes.includes('grind'))
    const { operations, findings } = planRoute(partFrom(LINER_TEXT), { ...shop, firms })
    expect(findings.map(({ code }) => code)).toEqual(['route/no-place', 'route/no-place'])
    expect(operations.some(({ purpose }) => purpose === 'hone-bore')).toBe(false)
  })
})

describe('rules that a part waives', () => {
  const waive = (rule: string) => `${LINER_TEXT}waive:\n  - {rule: ${rule}, because: agreed with the customer}\n`

  it('are named, with the reason, beside the operations they would have held', () => {
    const { operations, findings } = planRoute(partFrom(waive('edges-broken-before-hardening')), BUILT_IN_SHOP)
    expect(findings.map(({ code, at }) => [code, at.line])).toEqual([['route/waived', 15]])
    const deburr = operations.find(({ purpose }) => purpose === 'deburr-soft')
    expect(deburr?.because).toContain('rule edges-broken-before-hardening waived: agreed with the customer')
  })

  it('take the stress relief away when that is waived', () => {
    expect(purposes(waive('stress-relieved-before-nitriding'))).not.toContain('stress-relieve')
  })

  it('are suggested when the name is misspelt', () => {
    const { findings } = planRoute(partFrom(waive('edges-broken-before-hardning')), BUILT_IN_SHOP)
    expect(findings.map(({ code, hint }) => [code, hint])).toEqual([
      ['route/unknown-rule', 'did you mean edges-broken-before-hardening?'],
    ])
  })
})

describe('parts that have no route yet', () => {
  it.each([
    [
      'gas nitriding, hardness: min 500 HV',
      'through hardening, hardness: min 500 HV',
      'a depth of 0.2 mm is asked of a part that is hardened through',
    ],
    ['top: {Ra: 0.8', 'bottom: {Ra: 0.8}\n  top: {Ra: 0.8', 'a bottom face finished after hardening is not planned'],
  ])('refuses %s as %s, with its place', (from, to, message) => {
    const { operations, findings } = planRoute(partFrom(LINER_TEXT.replace(from, to)), BUILT_IN_SHOP)
    expect(operations).toEqual([])
    expect(findings.map(finding => [finding.code, finding.message.startsWith(message)])).toEqual([
      ['route/not-planned', true],
    ])
    expect(findings[0]?.at.line).toBeGreaterThan(0)
  })
})

describe('what holds the part', () => {
  it('is said of every operation whose sizes hang on it, with the end that jaws grip', () => {
    const { operations } = planRoute(partFrom(LINER_TEXT), BUILT_IN_SHOP)
    const held = operations.flatMap(({ purpose, heldIn, gripsAt, locatedBy }) =>
      heldIn ? [[purpose, heldIn, gripsAt, locatedBy.includes('seat')]] : [],
    )
    expect(held).toEqual([
      ['finish-turn', 'jaws', 'bottom', true],
      ['mill-ports', 'jaws', 'bottom', true],
      ['grind-outside', 'mandrel', undefined, false],
      ['grind-bore', 'jaws', 'bottom', true],
    ])
  })
})
