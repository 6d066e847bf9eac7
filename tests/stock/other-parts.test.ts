import { describe, expect, it } from 'vitest'
import { planRoute } from '../../src/route/plan-route.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { partFrom } from '../route/part-text.ts'
import { expectConsistent, planned } from './planned.ts'

/** Invented. */
const PIN = `part: {number: OX-098-92, title: Test pin, revision: A, kind: pin}
material: {grade: 16MnCr5}
body:
  length: 40 +0/-0.2
  outside: {size: 14 h5, Ra: 0.1, roundness: 0.002, name: pin}
  bore: {size: 8 H11}
hardening: {process: carburising, hardness: min 650 HV, depth: min 0.4}
`
const PISTON = `part: {number: OX-098-93, title: Test piston, revision: A, kind: piston}
material: {grade: EN AW-2618A}
body:
  length: 44 ±0.1
  outside:
    - {to: 12, size: 47.75 ±0.03, name: ring land}
    - {to: 44, size: 47.93 ±0.025, name: skirt}
`

describe('a case-hardened pin, ground and lapped', () => {
  const plan = planned(partFrom(PIN))

  it('is carburised soft, then ground between its own centres, then lapped, tested for cracks', () => {
    const purposes = plan.operations.map(({ purpose }) => purpose)
    expect(purposes.slice(purposes.indexOf('case-harden'))).toEqual([
      'case-harden',
      'grind-outside',
      'lap-outside',
      'crack-test',
      'final-inspection',
    ])
    expect(purposes).not.toContain('stress-relieve')
    expect(plan.operations.find(({ purpose }) => purpose === 'grind-outside')?.locatedBy).toEqual([])
  })

  it('follows the definitions, and grows by a share of its diameter: 0 to 0.14 % (common practice/estimate)', () => {
    expectConsistent(plan)
    expect(plan.case?.growth.outside.least).toBe(0)
    expect(plan.case?.growth.outside.most).toBeCloseTo(0.0098, 9)
    // Ground it is ok; what the lap has to spare is less than a comparator tells.
    expect(plan.entries.map(({ verdict }) => verdict)).toEqual(['ok', 'marginal'])
    expect(plan.entries.every(({ margin }) => margin.cleanUp >= 0)).toBe(true)
    expect(plan.findings.filter(({ severity }) => severity === 'error')).toEqual([])
  })

  it('may be solid', () => {
    const solid = planned(partFrom(PIN.replace(/ {2}bore:.*\n/, '')))
    expectConsistent(solid)
    expect(solid.shapes.size).toBeGreaterThan(0)
    expect(solid.entries).toHaveLength(2)
  })

  it('is not lapped when grinding leaves what is asked', () => {
    const ground = planned(partFrom(PIN.replace('Ra: 0.1, roundness: 0.002', 'Ra: 0.4')))
    expect(ground.operations.map(({ purpose }) => purpose)).not.toContain('lap-outside')
    expect(ground.entries).toHaveLength(1)
  })
})

describe('a piston, as a turned part', () => {
  const plan = planned(partFrom(PISTON))

  it('is sawn, turned, marked and deburred in one visit to the bench, inspected', () => {
    expect(plan.operations.map(({ purpose }) => purpose)).toEqual([
      'saw-blanks',
      'turn',
      'deburr-soft',
      'final-inspection',
    ])
    expect(plan.entries).toEqual([])
    expect(plan.findings).toEqual([])
  })

  it('is turned to the drawing', () => {
    const turned = plan.sizes.get(20)?.find(({ feature, measure }) => feature === 'skirt' && measure === 'diameter')
    expect([turned?.lower, turned?.upper]).toEqual([47.905, 47.955])
  })

  it('is refused where it asks for more than turning holds', () => {
    const { findings } = planRoute(partFrom(PISTON.replace('±0.025', 'h6')), BUILT_IN_SHOP)
    expect(findings.map(({ code, at }) => [code, at.line])).toEqual([['route/not-planned', 7]])
  })
})
