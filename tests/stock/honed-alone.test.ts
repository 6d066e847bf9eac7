import { describe, expect, it } from 'vitest'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Shop } from '../../src/shop/shop.ts'
import { partFrom } from '../route/part-text.ts'
import { planned } from './planned.ts'

/** Invented. */
const liner = (process: string, { length = 90, waived = true, shop = BUILT_IN_SHOP } = {}) =>
  planned(
    partFrom(`part: {number: OX-098-94, title: Test liner, revision: A, kind: liner}
material: {grade: 42CrMo4, hardness: 300 HV, temper: 620}
body:
  length: ${length} ±0.1
  outside: {size: 58 g6, Ra: 0.8, name: seat}
  bore: {size: 50 H7, Ra: 0.4, cylindricity: 0.01}
hardening: {process: ${process}, hardness: min 450 HV, depth: min 0.15}
${waived ? 'waive: [{rule: ground-before-honing, because: it comes nearly true from our hardener}]' : ''}
`),
    shop,
  )
const boreOf = (plan: ReturnType<typeof liner>) => plan.entries.filter(({ surface }) => surface === 'bore')
const known = (ovality: number, bow: number): Shop => ({
  ...BUILT_IN_SHOP,
  measured: [
    {
      process: 'nitride',
      grade: '42CrMo4',
      pieces: 18,
      date: '2026-03-02',
      ovality,
      bow,
      growth: { least: 0.008, nominal: 0.009, most: 0.01 },
    },
  ],
})

describe('a nitrided bore that is honed and not ground (common practice/estimate)', () => {
  it('is ground first, unless the part waives it', () => {
    const purposes = (plan: ReturnType<typeof liner>) => plan.operations.map(({ purpose }) => purpose)
    expect(purposes(liner('gas nitriding', { waived: false }))).toContain('grind-bore')
    expect(purposes(liner('gas nitriding'))).not.toContain('grind-bore')
    expect(purposes(liner('gas nitriding'))).toContain('hone-bore')
  })

  it.each([
    ['gas nitriding', 0.03, 0.02, 0.015],
    ['plasma nitriding', 0.02, 0.01, 0.01],
  ])('%s, %f oval and %f bowed: a quarter and a half of them, off no centre, beyond the layer', (process, o, b, C) => {
    const [cut] = boreOf(liner(process, { shop: known(o, b) }))
    expect(cut?.eccentricity).toBe(0)
    expect(cut?.form).toBeCloseTo(o / 4 + b / 2, 12)
    // The layer and the fine-bored roughness under it, Rz 6.3 (memory: Kosilova & Meshcheryakov, vol. 1).
    expect(cut?.perSide.needed).toBeCloseTo(C + 0.0063, 12)
    // On diameter at least twice their sum, middle to middle with 0.03 bored and 0.025 finished, and 2 µm of growth.
    const least = 2 * (o / 4 + b / 2 + C + 0.0063) + (0.03 + 0.025) / 2 + 2 * 0.001
    expect(cut?.onDiameter.nominal).toBeGreaterThanOrEqual(least - 1e-9)
    expect(cut?.onDiameter.nominal).toBeLessThan(least + 0.031)
  })

  it('is refused where the hone could not make it good, and told the limit that binds', () => {
    const said = (plan: ReturnType<typeof liner>) =>
      plan.findings.find(({ code }) => code === 'stock/honed-alone')?.message
    expect(said(liner('plasma nitriding', { shop: known(0.02, 0.01) }))).toBeUndefined()
    expect(said(liner('plasma nitriding', { shop: known(0.05, 0.01) }))).toContain('50 µm oval')
    expect(said(liner('plasma nitriding', { length: 160, shop: known(0.02, 0.01) }))).toContain('3.2 times as long')
    // One stage leaves a thick layer.
    expect(said(liner('gas nitriding, temperature: 520', { shop: known(0.04, 0.03) }))).toContain('0.06 are the most')
  })

  it('is sent to a thinner layer only where there is one', () => {
    const advised = (plan: ReturnType<typeof liner>) =>
      plan.findings.find(({ code }) => code === 'stock/honed-alone')?.hint
    expect(advised(liner('gas nitriding, temperature: 520', { shop: known(0.04, 0.03) }))).toContain('thinner layer')
    const plasma = advised(liner('plasma nitriding', { shop: known(0.05, 0.01) }))
    expect(plasma).toContain('truer from the furnace')
    expect(plasma).not.toContain('layer')
  })
})

describe('a nitrocarburised bore that is used as it comes (common practice/estimate)', () => {
  const sleeve = (process: string) =>
    planned(
      partFrom(`part: {number: OX-098-96, title: Test sleeve, revision: A, kind: sleeve}
material: {grade: 42CrMo4, hardness: 300 HV, temper: 640}
body:
  length: 60 ±0.1
  outside: {size: 52 h9, name: seat}
  bore: {size: 42 H9, name: bore}
hardening: {process: ${process}, depth: min 0.1}
`),
    )
  it('asks for 11 µm and more: 15 less 4 as it may come, so that 6 are left when 5 are polished off', () => {
    const { case: order, findings, entries } = sleeve('nitrocarburising')
    expect(entries).toEqual([])
    expect(order?.compoundLayer).toEqual({ nominal: 0.015, most: 0.025, kept: 0.011 })
    expect(findings.find(({ code }) => code === 'case/layer-kept')?.severity).toBe('note')
  })
  it('warns of the layer of gas and plasma, which nothing should run on', () => {
    for (const process of ['gas nitriding', 'plasma nitriding']) {
      const { case: order, findings } = sleeve(process)
      expect(order?.compoundLayer.kept).toBeUndefined()
      expect(findings.find(({ code }) => code === 'case/layer-kept')?.severity).toBe('warning')
    }
  })
})
