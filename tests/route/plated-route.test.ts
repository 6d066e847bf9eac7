import { describe, expect, it } from 'vitest'
import type { Part } from '../../src/part/part.ts'
import { planRoute } from '../../src/route/plan-route.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { platedPart } from '../plating/plated-part.ts'
import { LINER_TEXT, partFrom } from './part-text.ts'

const routeOf = (part: Part) => planRoute(part, BUILT_IN_SHOP)
const purposes = (part: Part) => routeOf(part).operations.map(({ purpose }) => purpose)
const NITRIDED_PORTED = `${LINER_TEXT}plating: {process: chrome}\n`

// Common practice, no source, but for relief and bake: ASTM B849 and B850, ISO 9587.
describe('the route of a plated bore', () => {
  it('hones for form, relieves, plates, bakes, hones to size', () => {
    const route = purposes(platedPart())
    expect(route.slice(route.indexOf('hone-for-plating'))).toEqual([
      'hone-for-plating',
      'relieve-for-plating',
      'plate',
      'bake-after-plating',
      'hone-bore',
      'final-inspection',
    ])
  })
  it('grinds outside, bore and face before it, and breaks the port edges again after the last honing', () => {
    const route = purposes(partFrom(NITRIDED_PORTED))
    const at = (purpose: (typeof route)[number]) => route.indexOf(purpose)
    for (const before of ['mill-ports', 'deburr-soft', 'nitride', 'grind-outside', 'grind-bore'] as const) {
      expect(at(before), before).toBeGreaterThan(-1)
      expect(at(before), before).toBeLessThan(at('hone-for-plating'))
    }
    expect(at('deburr-ports')).toBeGreaterThan(at('hone-bore'))
  })
  it('has both heats done where the plating is done, since the bake begins within hours', () => {
    const { operations } = routeOf(platedPart())
    const where = (purpose: string) => operations.find(operation => operation.purpose === purpose)?.workCentre
    expect(where('plate')).toBe('a licensed plater')
    expect(where('relieve-for-plating')).toBe('a licensed plater')
    expect(where('bake-after-plating')).toBe('a licensed plater')
  })
  it('chamfers port edges and bore ends, and says so', () => {
    const { operations } = routeOf(partFrom(NITRIDED_PORTED))
    const told = (purpose: string) => operations.find(operation => operation.purpose === purpose)?.because.join('\n')
    expect(told('finish-turn')).toContain('both ends of bore 0.5 to 1 mm for plating')
    expect(told('deburr-soft')).toContain('every port edge on the bore 0.5 to 1 mm for plating')
    expect(told('plate')).toContain('masked: flange, seat, top, bottom')
  })
  it('is missed without a firm that plates, at the place that asks for it', () => {
    const part = platedPart()
    const firms = BUILT_IN_SHOP.firms.filter(({ processes }) => !processes.includes('plate'))
    const { findings } = planRoute(part, { ...BUILT_IN_SHOP, firms })
    const missing = findings.filter(({ code }) => code === 'route/no-place')
    expect(missing.map(({ at }) => at.line)).toEqual([7])
  })
  it('is refused for a pin, a piston and a bore closer at the top', () => {
    const refused = (part: Part) => routeOf(part).findings.filter(({ code }) => code === 'route/not-planned')
    const plated = platedPart()
    expect(refused({ ...plated, kind: 'pin' })).toHaveLength(1)
    expect(refused({ ...plated, kind: 'piston' }).some(({ message }) => message.includes('plated piston'))).toBe(true)
    const tapered = plated.bore.map(band => ({ ...band, taper: 0.02 }))
    expect(refused({ ...plated, bore: tapered })).toHaveLength(1)
    expect(refused(plated)).toEqual([])
  })
})
