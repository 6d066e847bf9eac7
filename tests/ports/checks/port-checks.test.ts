import { describe, expect, it } from 'vitest'
import { PORT_CHECKS } from '../../../src/ports/checks/all-checks.ts'
import { planPorts } from '../../../src/ports/plan-ports.ts'
import { linerOf, milledAt, shopWith } from '../liner.ts'
import { type Case, PAIRS, SOUND } from './pairs.ts'

const ENGINE = { stroke: 54, rod: 100, pinOffset: 0, crownBelowTop: 0.4, speed: 4200 }

function findingsOf({ ports, engine = {}, outside = 55, fixture = {} }: Case, changes = {}, portChecks = {}) {
  const drawn = (nominal: number) => ({ nominal, lower: nominal, upper: nominal, written: String(nominal) })
  const band = (name: string, from: number, to: number, diameter: number) => ({
    name,
    size: drawn(diameter),
    from,
    to: drawn(to),
    path: '/body/outside',
  })
  const bands = [band('flange', 0, 4, 62), band('seat', 4, 92, outside)]
  const part = linerOf(ports, { engine: { ...ENGINE, ...engine }, outside: bands, ...changes })
  return planPorts(part, shopWith(fixture, { portChecks }), milledAt(47.8, outside + 0.2)).findings
}
const codesOf = (design: Case) => findingsOf(design).map(({ code }) => code as string)

it('has a pair of designs for every rule', () => {
  expect(Object.keys(PAIRS).toSorted()).toEqual(PORT_CHECKS.map(({ name }) => name).toSorted())
})

it.each(PORT_CHECKS.map(check => [check.name, check] as const))('%s says where it comes from and why', (_, check) => {
  expect(check.source).toMatch(/^(derived: |common practice, no source|memory: |principle: |Jennings)/)
  expect(check.because.length).toBeGreaterThan(20)
  expect(check.code).toBe(`ports/${check.name}`)
  // A threshold of habit or memory warns; only geometry, and what cannot be made, stops the plan.
  if (check.source.startsWith('memory')) expect(check.severity).not.toBe('error')
})

describe.each(Object.entries(PAIRS))('%s', (name, { trips, passes }) => {
  it('speaks up', () => {
    expect(codesOf(trips)).toContain(`ports/${name}`)
  })
  it('keeps quiet at a near miss', () => {
    expect(codesOf(passes)).not.toContain(`ports/${name}`)
  })
})

it('has nothing to say about a sound design', () => {
  expect(findingsOf(SOUND)).toEqual([])
})

describe('thresholds and waivers', () => {
  const design = PAIRS['boost-rise']?.trips ?? SOUND
  it('takes the threshold of the works', () => {
    const findings = findingsOf(design, {}, { 'boost-rise.least': 20 })
    expect(findings.map(({ code }) => code)).not.toContain('ports/boost-rise')
  })
  it('keeps a waived rule as a note with its reason', () => {
    const waive = [{ rule: 'boost-rise', because: 'tried on the engine', path: '/waive/0' }]
    const found = findingsOf(design, { waive }).find(({ code }) => code === 'ports/boost-rise')
    expect(found?.severity).toBe('note')
    expect(found?.message).toContain('waived: tried on the engine')
  })
})
