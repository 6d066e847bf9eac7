import { describe, expect, it } from 'vitest'
import type { Characteristic } from '../../src/inspection/characteristic.ts'
import { planInspection } from '../../src/inspection/plan-inspection.ts'
import type { Purpose } from '../../src/route/operation.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { platedPart } from '../plating/plated-part.ts'
import { OWN_BORE_SHOP } from '../shop/own-bore-shop.ts'
import { planned } from '../stock/planned.ts'

const inspected = (...written: Parameters<typeof platedPart>) => {
  const plan = planned(platedPart(...written), OWN_BORE_SHOP)
  const { part, operations, sizes, plating } = plan
  const { characteristics } = planInspection({
    part,
    shop: OWN_BORE_SHOP,
    operations,
    sizes,
    ports: [],
    casePlan: plan.case,
    ovality: () => undefined,
    pieces: 12,
    plating,
    datum: undefined,
  })
  const at = (purpose: Purpose): readonly Characteristic[] => {
    const number = operations.find(operation => operation.purpose === purpose)?.number
    return characteristics.filter(({ operation }) => operation === number)
  }
  return { at, plan }
}
const names = (list: readonly Characteristic[]): readonly string[] => list.map(({ name }) => name)
const named = (list: readonly Characteristic[], name: string): Characteristic => {
  const found = list.find(one => one.name.startsWith(name))
  if (!found) throw new Error(`no ${name} among ${names(list).join(', ')}`)
  return found
}

describe('a bore that goes from the honing firm straight to the plater', () => {
  const { operations, sizes, plating, part, ...plan } = planned(platedPart())
  const { characteristics } = planInspection({
    part,
    shop: BUILT_IN_SHOP,
    operations,
    sizes,
    ports: [],
    casePlan: plan.case,
    ovality: () => undefined,
    pieces: 12,
    plating,
    datum: undefined,
  })
  const next = operations.find(({ purpose }) => purpose === 'relieve-for-plating')
  const here = characteristics.filter(({ operation }) => operation === next?.number)

  it('is looked at as it comes back and as it leaves, in one operation', () => {
    expect(next?.checks?.map(({ kind }) => kind)).toEqual(['receipt', 'despatch'])
  })

  it('is counted once and read once', () => {
    expect(names(here).filter(name => /^count/.test(name))).toHaveLength(1)
    const bores = here.filter(({ name }) => name === 'bore diameter')
    expect(bores.map(({ stage, readAt }) => [stage, readAt])).toEqual([
      ['on-return', undefined],
      ['before-sending', bores[0]?.number],
    ])
  })
})

// Common practice, no source.
describe('what is measured of a plated bore', () => {
  const { at, plan } = inspected()
  it('before plating: size, to be written down, form and edges', () => {
    const before = at('relieve-for-plating')
    expect(names(before)).toEqual([
      'count, serials and heat number',
      'bore diameter',
      'bore cylindricity, before plating',
      'bore roughness Ra, before plating',
      'edges chamfered 0.5 to 1 mm',
    ])
    expect(named(before, 'bore diameter').remark).toContain('the plating is what the same piece differs by')
    expect(named(before, 'bore diameter').lower).toBeCloseTo(60.15, 9)
  })
  it('after plating: size, thickness by the difference of the bore, soundness, charts', () => {
    const after = at('hone-bore').filter(({ stage }) => stage === 'on-return')
    expect(named(after, 'bore diameter').upper).toBeCloseTo(plan.plating?.plated.upper ?? 0, 9)
    const layer = named(after, 'plating a side as plated')
    const { before, plated } = plan.plating ?? { before: undefined, plated: undefined }
    expect(layer.lower).toBeCloseTo(((before?.lower ?? 0) - (plated?.upper ?? 0)) / 2, 9)
    expect(layer.upper).toBeCloseTo(((before?.upper ?? 0) - (plated?.lower ?? 0)) / 2, 9)
    expect(names(after).some(name => name.includes('no blister'))).toBe(true)
  })
  it("bake: 8 h, 190 to 220 °C, begun within 3 h (ASTM B850-98(2009), a plater's copy), off the chart", () => {
    const after = at('hone-bore').filter(({ stage }) => stage === 'on-return')
    expect(named(after, 'bake')).toMatchObject({ lower: 8, unit: 'h', gauge: 'bake chart' })
    expect(named(after, 'bake temperature')).toMatchObject({ lower: 190, upper: 220 })
    expect(named(after, 'bake begun')).toMatchObject({ upper: 3 })
    const soft = inspected({ material: '{grade: 42CrMo4, hardness: 250 HV, temper: 650}' })
    expect(
      names(soft.at('hone-bore').filter(({ stage }) => stage === 'on-return')).some(name => /bake|relief/.test(name)),
    ).toBe(false)
  })
  it('finished: as much left as asked, and what is uneven on top, with a gauge that can tell', () => {
    const layer = named(at('final-inspection'), 'plating a side, finished')
    const { asked, left, before, finished } = plan.plating ?? planFails()
    const uneven = (before.lower - finished.upper) / 2 - left.least
    expect(layer.lower).toBeCloseTo(asked.least + uneven, 9)
    expect(layer.uncertainty).toBeLessThanOrEqual(0.003)
  })
  it('hardness only where the drawing asks for it, on a test piece', () => {
    expect(
      names(at('hone-bore').filter(({ stage }) => stage === 'on-return')).some(name => name.startsWith('hardness')),
    ).toBe(false)
    const hard = inspected({ plating: '{process: chrome, hardness: min 900 HV}' })
    expect(
      named(
        hard.at('hone-bore').filter(({ stage }) => stage === 'on-return'),
        'hardness of the plating',
      ),
    ).toMatchObject({ lower: 900, sample: 1 })
  })
  it('leaves the bath to the check: nothing is measured in it', () => {
    expect(at('plate')).toEqual([])
  })
})

function planFails(): never {
  throw new Error('nothing is plated')
}
