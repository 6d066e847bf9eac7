import { describe, expect, it } from 'vitest'
import { breakPlated } from '../../src/handbook/edge-break.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import type { Plan } from '../../src/plan/plan.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { LINER_TEXT, partFrom } from '../route/part-text.ts'

const ISSUE = { date: '2026-11-25', fingerprint: '0123456789ab', program: 'test' }

const planOf = (text: string): Plan => {
  const { plan, findings } = makePlan({
    part: partFrom(text),
    shop: BUILT_IN_SHOP,
    batch: { number: '1', quantity: 10 },
    issue: ISSUE,
  })
  if (!plan) throw new Error(findings.map(({ message }) => message).join('\n'))
  return plan
}

const breakOf = ({ ports }: Plan, port: string) => {
  const found = ports.find(({ name }) => name === port)?.edge?.edgeBreak
  if (!found) throw new Error(`no break of ${port}`)
  return found
}

/** Depth of the crown of 54 by 100 at a crank angle, by the slider-crank. */
const crown = (degree: number): number => {
  const t = (degree * Math.PI) / 180
  return 0.4 + 127 - 27 * Math.cos(t) - Math.sqrt(100 ** 2 - (27 * Math.sin(t)) ** 2)
}

/** Crank angle at which the crown passes a depth, by bisection: no formula of the planner. */
const passes = (depth: number): number => {
  let [low, high] = [0, 180]
  while (high - low > 1e-10) {
    const middle = (low + high) / 2
    if (crown(middle) < depth) low = middle
    else high = middle
  }
  return low
}

describe('the break of a plated timing edge', () => {
  const text = LINER_TEXT.replace(/hardening: .*\n/, 'plating: {process: NiSiC, thickness: 0.075, chamfer: 0.3}\n')
  const plan = planOf(text)
  const found = breakOf(plan, 'exhaust')

  it('is where two lines meet that the layer has moved: derived, a chamfer and the bore in the plane of the axis', () => {
    const [b, p, t] = [0.3, 0.08, 0.05]
    // The chamfer from (b, 0) to (0, -b), depth and way into the bore, moved square to itself by p; the bore at t.
    const normal = [-Math.SQRT1_2, Math.SQRT1_2] as const
    const from = [b + p * normal[0], p * normal[1]] as const
    const along = (t - from[1]) * 1
    expect(breakPlated.value({ b, p, t })).toBeCloseTo(from[0] + along, 12)
  })

  it('is the chamfer that the plating wants, with the degrees that it opens the port sooner', () => {
    expect(found.broken).toEqual({ least: 0.3, most: 0.3 })
    const { layer, left } = plan.plating ?? { layer: undefined, left: undefined }
    expect(found.layer).toEqual({ least: layer?.least, most: layer?.most })
    expect(found.left.most).toBeCloseTo(0.3 + (left?.most ?? 0) - Math.SQRT2 * (layer?.least ?? 0), 9)
    const top = plan.ports[0]?.top ?? 0
    expect(found.sooner?.most).toBeCloseTo(passes(top) - passes(top - found.left.most), 6)
    const after = plan.operations.find(({ purpose }) => purpose === 'deburr-ports')
    expect(after?.steps.flatMap(({ remarks }) => remarks).join('\n')).toContain('left on the top edge opens it')
  })
})

describe('the break of an inlet that the skirt opens', () => {
  const inlet = '  - {name: inlet, at: 180, top: 66, bottom: 78, width: 14, corner: 2}\n'
  const plan = planOf(`${LINER_TEXT.replace('crown-below-top: 0.4', 'crown-below-top: 0.4, skirt: 60')}${inlet}`)
  const found = breakOf(plan, 'inlet')

  it('is that of its bottom edge, and is worth crank degrees at the skirt', () => {
    const { bySkirt } = plan.ports.find(({ name }) => name === 'inlet') ?? {}
    expect(bySkirt).toBeDefined()
    expect(found.of).toBe('bottom')
    // The skirt's edge is 60 below the crown's: it clears a floor at 78 as the crown passes 18 on the way up.
    expect(bySkirt?.opensBefore).toBeCloseTo(passes(18), 6)
    expect(found.sooner?.least).toBeCloseTo(passes(18 + found.left.least) - passes(18), 6)
    expect(found.sooner?.most).toBeCloseTo(passes(18 + found.left.most) - passes(18), 6)
    const bench = plan.operations.find(({ purpose }) => purpose === 'deburr-soft')
    expect(bench?.steps.flatMap(({ remarks }) => remarks).join('\n')).toContain('bottom edge of inlet: ')
  })

  it('says nothing in degrees where nobody gave the skirt', () => {
    expect(breakOf(planOf(`${LINER_TEXT}${inlet}`), 'inlet').sooner).toBeUndefined()
  })
})

describe('a crown that hardly covers the top edge at top dead centre', () => {
  // A stroke of 0.2 mm: the whole edge lies within the break above it.
  const short = LINER_TEXT.replace(/stroke: 54/, 'stroke: 0.2')

  it('shuts a broken edge never: no degrees are given for it, and all else is planned', () => {
    const plan = planOf(short)
    const { left, sooner } = breakOf(plan, 'exhaust')
    const { top = 0 } = plan.ports.find(({ name }) => name === 'exhaust') ?? {}
    expect(top - left.most).toBeLessThan(0.4)
    expect(sooner).toBeUndefined()
  })
})
