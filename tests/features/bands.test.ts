import { describe, expect, it } from 'vitest'
import { planOf } from './planned.ts'

/** Common practice, no source: narrow bands are cut once, after the lands; only what is run in is honed. */
const LINER = `
part: {number: OX-901-02, title: Cylinder liner, revision: A, kind: liner}
material: {grade: EN-GJL-250}
body:
  length: 110 ±0.1
  outside:
    - {to: 8, size: 72 h8, name: flange}
    - {to: 50, size: 60 h7, name: upper seat}
    - {to: 53, size: 56 ±0.1, name: water groove}
    - {to: 110, size: 60 h7, name: lower seat}
  bore:
    - {to: 2, size: 51 +0.1/0, name: flame-ring recess}
    - {to: 95, size: 48 H7, Ra: 0.4, name: running bore}
    - {to: 110, size: 50 +0.2/0, name: skirt relief}
`

describe('a liner whose bore and outside are in bands', () => {
  const plan = planOf(LINER)
  const at = (purpose: string) => plan.operations.find(operation => operation.purpose === purpose)
  const steps = (purpose: string) => at(purpose)?.steps.map(({ tool, action }) => `${tool}: ${action}`) ?? []

  it('is honed where the piston runs, and nowhere else', () => {
    expect(at('hone-bore')?.surfaces).toEqual(['running bore'])
  })

  it('is not roughed in its narrow bands', () => {
    expect(steps('turn').some(step => /: rough lower seat$/.test(step))).toBe(true)
    expect(steps('turn').filter(step => /: rough .*(recess|groove)/.test(step))).toEqual([])
  })

  it('has a groove between two bands plunged after them, and a recess at the mouth bored', () => {
    const turned = steps('turn')
    const groove = turned.findIndex(step => /^grooving tool .*: groove water groove$/.test(step))
    expect(groove).toBeGreaterThan(turned.findIndex(step => step.includes('finish lower seat')))
    expect(turned.some(step => /^boring bar .*: finish flame-ring recess$/.test(step))).toBe(true)
    expect(turned.some(step => /(?:semi-)?finish water groove/.test(step))).toBe(false)
  })

  it('has no band of a negative length at any operation', () => {
    const lengths = plan.operations.flatMap(({ shape }) =>
      [...shape.outside, ...shape.bore].map(({ from, to }) => to - from),
    )
    expect(Math.min(...lengths)).toBeGreaterThan(0)
  })
})
