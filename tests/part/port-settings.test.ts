import { describe, expect, it } from 'vitest'
import { PORT_LIMITS } from '../../src/handbook/port-limits.ts'
import { readShop } from '../../src/part/read-shop.ts'
import schema from '../../src/part/shop.schema.json' with { type: 'json' }
import { PORT_CHECKS } from '../../src/ports/checks/all-checks.ts'

describe('what a works sets for its ports', () => {
  it('the schema lists every threshold of every rule, and no other', () => {
    const listed = Object.entries(schema.properties['port-checks'].properties).map(([rule, { properties }]) => [
      rule,
      Object.keys(properties).toSorted(),
    ])
    const rules = Object.entries(PORT_LIMITS).map(([rule, limits]) => [rule, Object.keys(limits).toSorted()] as const)
    expect(Object.fromEntries(listed)).toEqual(Object.fromEntries(rules))
    const names = PORT_CHECKS.map(({ name }) => name)
    expect(names).toEqual(expect.arrayContaining(Object.keys(PORT_LIMITS)))
  })

  it('the schema tells of every threshold what it is, its unit and what it is when it is left out', () => {
    const units = { mm: ', mm', deg: ', degrees', ms: ', ms', '': '' } as const
    const said = (rule: string, threshold: string): unknown =>
      Object.entries(
        Object.fromEntries(Object.entries(schema.properties['port-checks'].properties))[rule]?.properties ?? {},
      ).find(([key]) => key === threshold)?.[1]
    for (const [rule, limits] of Object.entries(PORT_LIMITS)) {
      for (const [threshold, { value, unit, meaning }] of Object.entries(limits)) {
        const description = `${meaning.charAt(0).toUpperCase()}${meaning.slice(1)}${units[unit]}. Left out: ${value}.`
        expect(said(rule, threshold), `${rule}.${threshold}`).toEqual({ type: 'number', description })
      }
    }
  })

  it('reads thresholds and words of the control', () => {
    const text =
      'port-checks: {main-rise: {most: 30}}\nnc-words: {tool-change: "T{tool} M06", clamp: M10, tilt-axis: B}\n'
    const { shop, findings } = readShop(text, 'shop.yaml')
    expect(findings).toEqual([])
    expect(shop?.portChecks).toEqual({ 'main-rise.most': 30 })
    expect(shop?.ncWords).toEqual({ toolChange: 'T{tool} M06', clamp: 'M10', tiltAxis: 'B' })
  })

  it('a rule that there is not is a finding at its place', () => {
    const { findings } = readShop('port-checks: {main-rize: {most: 30}}\n', 'shop.yaml')
    expect(findings).toMatchObject([{ code: 'input/unknown-key', at: { line: 1, column: 15 } }])
  })
})
