import { describe, expect, it } from 'vitest'
import { type Limits, middleOf } from '../../src/limits.ts'
import { LINER_TEXT, partFrom } from '../route/part-text.ts'
import { expectConsistent, type Planned, planned } from './planned.ts'

describe('stock of the nitrided liner', () => {
  const plan = planned(partFrom(LINER_TEXT))

  it('has one entry for each finishing operation on each surface, all of them good', () => {
    expect(plan.entries.map(({ surface, operation, verdict }) => [surface, operation, verdict])).toEqual([
      ['seat', 80, 'ok'],
      ['bore', 90, 'ok'],
      ['bore', 100, 'ok'],
      ['top', 90, 'ok'],
    ])
    expect(plan.findings.filter(({ severity }) => severity === 'error')).toEqual([])
  })

  it('follows the definitions of stock, worst place and margins', () => {
    expectConsistent(plan)
  })

  it('turns deeper what is measured from the top face, by what is ground off it', () => {
    const depth = plan.sizes.get(40)?.find(({ feature, measure }) => feature === 'flange' && measure === 'depth')
    const { growth, stretch } = plan.axial
    if (!growth || !stretch) throw new Error('nothing grows')
    // What stands between flange and bottom stretches; its middle decides, and the stock is reckoned from the nominal.
    // The flange has a thicker wall than the mean of the part, and counts for less along its 4 mm.
    const counted = stretch.faces.find(({ face }) => face === 'flange')?.depth ?? 0
    expect(counted).toBeGreaterThan(0)
    expect(counted).toBeLessThan(4)
    const between = (92 - counted) * middleOf(stretch.limits)
    const grown = 2 * growth.limits.nominal + 92 * stretch.limits.nominal
    const top = plan.entries.find(({ surface }) => surface === 'top')
    expect(depth && middleOf(depth)).toBeCloseTo(4 + (top?.onDiameter.nominal ?? 0) / 2 - grown + between, 9)
    expect(plan.axial.resultants.find(({ name }) => name === 'depth of flange')?.nominal).toBeCloseTo(4, 4)
  })

  it('says how far the top face stands above the finished one when the ports are milled', () => {
    const { growth, stretch } = plan.axial
    if (!growth || !stretch) throw new Error('nothing grows')
    // At mid length, by the middle of the growth; the stock is reckoned from the nominal growth of both ends.
    const ends = (of: (limits: Limits) => number) => 2 * of(growth.limits) + 92 * of(stretch.limits)
    const [middle, nominal] = [ends(middleOf), ends(limits => limits.nominal)]
    const top = plan.entries.find(({ surface }) => surface === 'top')
    expect(plan.asMilled?.topStock).toBeCloseTo((top?.onDiameter.nominal ?? 0) / 2 + (middle - nominal) - middle / 2, 9)
    expect(plan.asMilled?.shape.top).toBeCloseTo(-(plan.asMilled?.topStock ?? 0), 9)
    expect(plan.asMilled?.shape.ported).toBe(true)
  })

  it('turns what is not ground so that it grows into the limits of the drawing', () => {
    const turned = plan.sizes.get(40)?.find(({ feature, measure }) => feature === 'flange' && measure === 'diameter')
    const g = plan.case?.growth.bands.find(({ surface }) => surface === 'flange')?.growth
    expect((turned?.lower ?? 0) + 2 * (g?.least ?? 0)).toBeCloseTo(61.926, 9)
    expect((turned?.upper ?? 0) + 2 * (g?.most ?? 0)).toBeCloseTo(62, 9)
  })

  it('says for every surface with a case what all its finishes take off together, at their worst places', () => {
    for (const { surface, off } of plan.case?.hardnessAfter ?? []) {
      const own = plan.entries.filter(entry => entry.surface === surface)
      const sum = (of: (entry: (typeof own)[number]) => number) => own.reduce((total, entry) => total + of(entry), 0)
      expect(off.least).toBeCloseTo(
        sum(({ perSide }) => perSide.least),
        12,
      )
      expect(off.nominal).toBeCloseTo(sum(({ onDiameter }) => onDiameter.nominal) / 2, 12)
      expect(off.most).toBeCloseTo(
        sum(({ perSide }) => perSide.most),
        12,
      )
    }
    expect(plan.case?.hardnessAfter.length).toBeGreaterThan(1)
  })

  it('ends on the drawing', () => {
    const last = plan.sizes.get(130)?.map(({ feature, measure, lower, upper }) => [feature, measure, lower, upper])
    expect(last).toContainEqual(['bore', 'diameter', 48, 48.016])
    expect(last).toContainEqual(['length', 'length', 91.95, 92.05])
  })

  it('needs a bar over the largest rough-turned size', () => {
    const rough = plan.sizes.get(20) ?? []
    const widest = Math.max(...rough.filter(({ measure }) => measure === 'diameter').map(({ upper }) => upper))
    expect(plan.need.diameter).toBe(widest)
    expect(plan.need.length).toBe(rough.find(({ feature }) => feature === 'length')?.upper)
  })

  it('names every figure of the chain in its workings', () => {
    const symbols = new Set(plan.workings.map(({ symbol }) => symbol))
    for (const symbol of ['S_least', 'S_most', 'z_least', 'z_most', 'e', 'f', 'r', 'margin', 'N_order'])
      expect(symbols).toContain(symbol)
  })
})

describe('a soft liner, honed', () => {
  const plan = planned(
    partFrom(
      LINER_TEXT.replace('42CrMo4, hardness: 300 HV, temper: 620', 'EN-GJL-250')
        .replace(/hardening:.*\n/, '')
        .replace(/ports:[\s\S]*$/, ''),
    ),
  )

  it('has no case, no growth and no port to mill', () => {
    expect(plan.case).toBeUndefined()
    expect(plan.asMilled).toBeUndefined()
    expect(plan.entries.every(({ margin }) => margin.case === undefined)).toBe(true)
    expectConsistent(plan)
  })

  it('is honed from the boring bar within 0.03 to 0.08 on diameter: common practice, no source', () => {
    const hone = plan.entries.find(({ surface }) => surface === 'bore')
    expect(hone?.onDiameter.nominal).toBeGreaterThanOrEqual(0.03)
    expect(hone?.onDiameter.nominal).toBeLessThanOrEqual(0.08)
  })
})

describe('a bore closer at the top', () => {
  const plan = planned(partFrom(LINER_TEXT.replace('cylindricity: 0.006', 'taper: 0.03')))
  const straight = planned(partFrom(LINER_TEXT))

  it('is given by its two ends, and honed out by the taper more at the bottom', () => {
    const last = plan.sizes.get(100)?.map(({ edge, lower, upper }) => [edge, lower, upper])
    expect(last?.[0]?.[0]).toBe('top')
    expect(last?.[0]?.[1]).toBeCloseTo(47.97, 9)
    expect(last?.[1]).toEqual(['bottom', 48, 48.016])
    const hone = (of: Planned) => of.entries.find(({ operation }) => operation === 100)?.onDiameter
    const spread = (of: Planned) => (hone(of)?.most ?? 0) - (hone(of)?.least ?? 0)
    expect(spread(plan) - spread(straight)).toBeCloseTo(0.03, 9)
  })
})
