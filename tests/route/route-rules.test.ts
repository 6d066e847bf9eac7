import { describe, expect, it } from 'vitest'
import type { RouteRule, Task } from '../../src/route/rules/route-rule.ts'
import { ROUTE_RULES } from '../../src/route/rules/route-rules.ts'
import { task } from './task.ts'

type Pair = readonly [first: Task, then: Task]
const MARKS = { marks: 'flange' } as const

/** Order of the trade: common practice, no source. For each rule a pair it must order and one it must leave alone. */
const CASES: Readonly<Record<string, { readonly orders: Pair; readonly leaves: Pair }>> = {
  'sawn-first': {
    orders: [task('saw-blanks'), task('rough-turn')],
    leaves: [task('rough-turn'), task('saw-blanks')],
  },
  'roughed-first': {
    orders: [task('rough-turn'), task('finish-turn')],
    leaves: [task('finish-turn'), task('finish-turn')],
  },
  'roughed-before-stress-relief': {
    orders: [task('rough-turn'), task('stress-relieve')],
    leaves: [task('finish-turn'), task('stress-relieve')],
  },
  'stress-relieved-before-finish-turning': {
    orders: [task('stress-relieve'), task('finish-turn')],
    leaves: [task('stress-relieve'), task('rough-turn')],
  },
  'turned-before-ports': {
    orders: [task('finish-turn'), task('mill-ports')],
    leaves: [task('grind-outside'), task('mill-ports')],
  },
  'turned-before-holes': {
    orders: [task('finish-turn'), task('mill-features')],
    leaves: [task('deburr-soft'), task('mill-features')],
  },
  'pin-bored-before-lands': {
    orders: [task('bore-pin'), task('finish-turn')],
    leaves: [task('bore-pin'), task('grind-outside')],
  },
  'marked-on-a-finished-face': {
    orders: [task('finish-turn'), task('deburr-soft', MARKS)],
    leaves: [task('mill-ports'), task('deburr-soft', MARKS)],
  },
  'deburred-after-cutting': {
    orders: [task('mill-ports'), task('deburr-soft')],
    leaves: [task('mill-ports'), task('deburr-ports')],
  },
  'ports-milled-soft': {
    orders: [task('mill-ports'), task('nitride')],
    leaves: [task('hone-bore'), task('nitride')],
  },
  'turned-soft': {
    orders: [task('finish-turn'), task('nitride')],
    leaves: [task('grind-bore'), task('nitride')],
  },
  'edges-broken-before-hardening': {
    orders: [task('deburr-soft'), task('nitride')],
    leaves: [task('deburr-ports'), task('nitride')],
  },
  'marked-before-hardening': {
    orders: [task('deburr-soft', MARKS), task('nitride')],
    leaves: [task('deburr-soft'), task('stress-relieve')],
  },
  'form-before-plating': {
    orders: [task('hone-for-plating'), task('plate')],
    leaves: [task('hone-bore'), task('plate')],
  },
  'finished-elsewhere-before-plating': {
    orders: [task('grind-outside'), task('plate')],
    leaves: [task('hone-bore'), task('plate')],
  },
  'chamfered-before-plating': {
    orders: [task('deburr-soft'), task('plate')],
    leaves: [task('deburr-ports'), task('plate')],
  },
  'hardened-before-plating': {
    orders: [task('nitride'), task('plate')],
    leaves: [task('bake-after-plating'), task('plate')],
  },
  'worked-before-relief': {
    orders: [task('grind-outside'), task('relieve-for-plating')],
    leaves: [task('hone-bore'), task('relieve-for-plating')],
  },
  'relieved-before-plating': {
    orders: [task('relieve-for-plating'), task('plate')],
    leaves: [task('stress-relieve'), task('plate')],
  },
  'baked-after-plating': {
    orders: [task('plate'), task('bake-after-plating')],
    leaves: [task('plate'), task('relieve-for-plating')],
  },
  'baked-before-honing': {
    orders: [task('bake-after-plating'), task('hone-bore')],
    leaves: [task('bake-after-plating'), task('hone-for-plating')],
  },
  'honed-after-plating': {
    orders: [task('plate'), task('hone-bore')],
    leaves: [task('plate'), task('hone-for-plating')],
  },
  'crack-tested-before-plating': {
    orders: [task('crack-test'), task('plate')],
    leaves: [task('crack-test'), task('hone-bore')],
  },
  'finished-after-turning': {
    orders: [task('finish-turn'), task('hone-bore')],
    leaves: [task('finish-turn'), task('deburr-ports')],
  },
  'ports-before-finishing': {
    orders: [task('mill-ports'), task('grind-outside')],
    leaves: [task('mill-ports'), task('final-inspection')],
  },
  'deburred-before-finishing': {
    orders: [task('deburr-soft'), task('grind-outside')],
    leaves: [task('deburr-ports'), task('grind-outside')],
  },
  'finished-after-hardening': {
    orders: [task('nitride'), task('grind-outside')],
    leaves: [task('stress-relieve'), task('grind-outside')],
  },
  'locator-finished-first': {
    orders: [
      task('grind-outside', { surfaces: ['seat'] }),
      task('grind-bore', { locatedBy: ['seat'], locatedAs: 'ground' }),
    ],
    // The mandrel sits in the bore as turned: the bore need not be ground first.
    leaves: [
      task('grind-bore', { surfaces: ['bore'] }),
      task('grind-outside', { locatedBy: ['bore'], locatedAs: 'turned' }),
    ],
  },
  'bore-last': {
    orders: [task('grind-outside'), task('grind-bore')],
    leaves: [task('grind-bore'), task('hone-bore')],
  },
  'honed-after-grinding': {
    orders: [task('grind-bore'), task('hone-bore')],
    leaves: [task('hone-bore'), task('grind-bore')],
  },
  'lapped-after-grinding': {
    orders: [task('grind-outside'), task('lap-outside')],
    leaves: [task('hone-bore'), task('lap-outside')],
  },
  'crack-tested-after-grinding-and-lapping': {
    orders: [task('lap-outside'), task('crack-test')],
    leaves: [task('hone-for-plating'), task('crack-test')],
  },
  'washed-after-crack-test': {
    orders: [task('crack-test'), task('deburr-ports')],
    leaves: [task('crack-test'), task('deburr-soft')],
  },
  'port-edges-broken-again': {
    orders: [task('hone-bore'), task('deburr-ports')],
    leaves: [task('hone-bore'), task('deburr-soft')],
  },
  'inspected-last': {
    orders: [task('deburr-ports'), task('final-inspection')],
    leaves: [task('final-inspection'), task('final-inspection')],
  },
}

const ruleNamed = (name: string): RouteRule => {
  const rule = ROUTE_RULES.find(rule => rule.name === name)
  if (!rule) throw new Error(`no rule ${name}`)
  return rule
}

describe('rules of the route: common practice, no source', () => {
  it('are all tried here', () => {
    expect(ROUTE_RULES.map(({ name }) => name).toSorted()).toEqual(Object.keys(CASES).toSorted())
  })

  it.each(Object.keys(CASES))('%s orders its pair and leaves its near miss', name => {
    const rule = ruleNamed(name)
    const { orders, leaves } = CASES[name] ?? {}
    expect(orders && rule.applies(...orders)).toBe(true)
    expect(leaves && rule.applies(...leaves)).toBe(false)
  })

  it('say a reason and a source each, and no name twice', () => {
    for (const { because, source } of ROUTE_RULES) {
      expect(because.length).toBeGreaterThan(10)
      expect(source).not.toBe('')
    }
    expect(new Set(ROUTE_RULES.map(({ name }) => name)).size).toBe(ROUTE_RULES.length)
  })
})
