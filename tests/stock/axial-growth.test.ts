import { describe, expect, it } from 'vitest'
import { depthGrowth, endGrowth } from '../../src/handbook/axial-growth.ts'
import { profileFactor } from '../../src/handbook/wall-stretch.ts'
import type { CasePlan } from '../../src/hardening/case-plan.ts'
import type { Growth } from '../../src/hardening/growth.ts'
import { middleOf, toleranceOf } from '../../src/limits.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { growthOfDepth } from '../../src/stock/axial-growth.ts'
import { growthsOf } from '../../src/stock/settle-stock.ts'
import { SCRATCH } from '../../src/working.ts'
import { partFrom } from '../route/part-text.ts'
import { planned } from './planned.ts'

/** Invented. */
const pin = (
  process: string,
  length = '60 ±0.1',
  bore = '',
) => `part: {number: OX-098-94, title: Pin, revision: A, kind: pin}
material: {grade: ${process === 'carburising' ? '16MnCr5, hardness: 180 HV' : '42CrMo4, hardness: 300 HV, temper: 620'}}
body:
  length: ${length}
  outside: 20 h6
${bore}hardening: {process: ${process}, depth: min ${process === 'carburising' ? 0.4 : 0.2}}
`

const FLANGED = `part: {number: OX-098-95, title: Flanged sleeve, revision: A, kind: sleeve}
material: {grade: 42CrMo4, hardness: 300 HV, temper: 620}
body:
  length: 104 ±0.2
  outside:
    - {to: 5, size: 62 h9, name: flange}
    - {to: 104, size: 54 g6, Ra: 0.8, name: seat}
  bore: {size: 46 H6, Ra: 0.3}
hardening: {process: gas nitriding, depth: min 0.20}
`

const growthOf = (plan: { readonly case?: CasePlan }): Growth => {
  if (!plan.case) throw new Error('no case')
  return plan.case.growth
}

describe('the faces of a quenched part', () => {
  // Common practice/estimate, no source: a solid pin changes by 0.03 ±0.10 % of its length, so by 9 ±30 µm at each end of 60.
  it('move by half of the change of the length, 9 ±30 µm at each end of 60 mm', () => {
    const part = partFrom(pin('carburising'))
    const growth = growthOf(planned(part))
    const face = growthsOf(SCRATCH, part, growth).of({ kind: 'face', surface: 'top', final: part.length })
    expect(face.least).toBeCloseTo(-0.021, 9)
    expect(face.nominal).toBeCloseTo(0.009, 9)
    expect(face.most).toBeCloseTo(0.039, 9)
  })

  it('of a longer part move more, in proportion', () => {
    const at = (length: number) => planned(partFrom(pin('carburising', `${length} ±0.2`))).axial.resultants[0]
    const [short, long] = [at(60), at(120)]
    // 0.2 % of 60 mm more, which the tolerance of turning gives up.
    expect((long?.worstCase ?? 0) - (short?.worstCase ?? 0)).toBeGreaterThan(0)
    const growth = growthOf(planned(partFrom(pin('carburising', '120 ±0.2'))))
    const part = partFrom(pin('carburising', '120 ±0.2'))
    const face = growthsOf(SCRATCH, part, growth).of({ kind: 'face', surface: 'top', final: part.length })
    expect(face.most).toBeCloseTo(2 * 0.039, 9)
  })

  // Common practice/estimate, no source: a hollow pin +0.05 ±0.10 % of the length.
  it('move so in a hollow part too, where the two sides would cancel', () => {
    const part = partFrom(pin('carburising', '60 ±0.1', '  bore: 10 ±0.1\n'))
    const plan = planned(part)
    const e = plan.axial.stretch?.limits
    expect([e?.lower, e?.upper].map(share => share?.toFixed(5))).toEqual(['-0.00050', '0.00150'])
    // ±0.060 of the ±0.100 that the drawing allows: ±0.030 is the most that the turner may have, and gets.
    const [length] = plan.axial.resultants
    expect(length?.nominal).toBeCloseTo(60, 4)
    expect(length?.worstCase).toBeCloseTo(0.03 + 0.06, 3)
    expect(plan.findings.filter(({ code }) => code === 'stock/chain-open')).toEqual([])
  })

  it('open a drawing that allows less than the quench makes, where no face is ground after it', () => {
    const waive = 'waive: [{rule: length-closer-than-quenched, because: agreed}]\n'
    const plan = planned(partFrom(`${pin('carburising', '60 ±0.05')}${waive}`))
    const open = plan.findings.find(({ code }) => code === 'stock/chain-open')
    expect(open?.severity).toBe('error')
    expect(open?.message).toContain('±0.060 mm at the worst')
  })

  // Common practice/estimate, no source: the length of an induction hardened part changes by 0.02 ±0.05 %.
  it('change less along than across where induction hardens the skin alone', () => {
    const text = pin('induction hardening').replace('42CrMo4, hardness: 300 HV, temper: 620', 'C45, hardness: 200 HV')
    const e = planned(partFrom(text)).axial.stretch?.limits
    expect([e?.lower, e?.nominal, e?.upper].map(share => share?.toFixed(5))).toEqual(['-0.00030', '0.00020', '0.00070'])
  })
})

describe('a step of a nitrided part', () => {
  // Derived: tube 54/60, both sides treated, 80 long, stretch 2.039e-4, free growth 9.5 µm a face: the length grows by
  // 80 × 2.039e-4 + 2 × 9.5 = 35.3 µm; the underside of a flange of 5 mm by 1.0 + 19.0 = 20.0 µm.
  it('stands off by free growth and by the stretch of its own distance, not of the whole length', () => {
    const growth = { n: 2, F: 0.0095, epsilon: 2.039e-4 }
    expect(2 * endGrowth.value({ ...growth, L: 80 })).toBeCloseTo(0.0353, 4)
    expect(depthGrowth.value({ ...growth, z: 80 })).toBeCloseTo(0.0353, 4)
    expect(depthGrowth.value({ ...growth, z: 5 })).toBeCloseTo(0.02, 4)
    expect(depthGrowth.value({ ...growth, n: 0, z: 5 })).toBeCloseTo(0.001, 4)
  })

  it('is turned and charted by that, and comes out in the middle of the drawing', () => {
    const part = partFrom(FLANGED)
    const plan = planned(part)
    const growth = growthOf(plan)
    // By hand: the second stage leaves 0.8 of the stress (estimate); the flange has a wall of 8, the skirt one of 4, so it stretches half as much along.
    const e0 = (s_0: number, h: number) => (0.7 * s_0 * 2 * h) / 206_000
    const s_0 = growth.along.most / ((e0(1, plan.case?.ordered.most ?? 0) * (5 / 8 + 99 / 4)) / 104)
    expect(s_0).toBeCloseTo(0.8 * 600 * profileFactor.value({ H_s: 650, H_c: 300, n: 1.7 }), 6)
    const at = (end: 'least' | 'most') => {
      const skirt = growth.along[end] / ((5 / 2 + 99) / 104)
      return { flange: 2 * growth.face[end] + (5 * skirt) / 2, bottom: 2 * growth.face[end] + (5 / 2 + 99) * skirt }
    }
    const [least, most] = [at('least'), at('most')]
    const { axial } = growthsOf(SCRATCH, part, growth)
    expect(growthOfDepth(axial, 'down', 5).most).toBeCloseTo(most.flange, 9)
    expect(growthOfDepth(axial, 'down', 104).most).toBeCloseTo(most.bottom, 9)
    expect(most.bottom - most.flange).toBeGreaterThan(0.015)
    const soft = plan.sizes.get(plan.operations.find(({ purpose }) => purpose === 'finish-turn')?.number ?? 0) ?? []
    const turned = soft.find(({ feature, measure }) => feature === 'flange' && measure === 'depth')
    expect(turned && middleOf(turned)).toBeCloseTo(5 - (least.flange + most.flange) / 2, 9)
    const depth = plan.axial.resultants.find(({ name }) => name === 'depth of flange')
    expect(depth?.nominal).toBeCloseTo(5, 4)
    expect(depth?.worstCase).toBeCloseTo(
      (toleranceOf(turned ?? { nominal: 0, lower: 0, upper: 0 }) + most.flange - least.flange) / 2,
      4,
    )
  })
})

describe('a length that is not ground after hardening', () => {
  it('is turned about the middle of the growth, so that growth that reaches further one way closes', () => {
    const shop = {
      ...BUILT_IN_SHOP,
      growth: [],
      habits: { ...BUILT_IN_SHOP.habits, faceTurningTolerance: 0.2 },
    }
    const plan = planned(partFrom(pin('gas nitriding', '60 ±0.05')), shop)
    const [length] = plan.axial.resultants
    const { lower = 0, nominal = 0, upper = 0 } = plan.axial.growth?.limits ?? {}
    expect((lower + upper) / 2).not.toBeCloseTo(nominal, 4)
    expect(length?.nominal).toBeCloseTo(60, 9)
    expect(length?.worstCase).toBeCloseTo(0.05, 9)
    expect(plan.findings.filter(({ code }) => code === 'stock/chain-open')).toEqual([])
  })
})
