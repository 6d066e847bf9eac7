import { describe, expect, it } from 'vitest'
import type { Engine } from '../../../src/part/part.ts'
import { PORT_CHECKS } from '../../../src/ports/checks/all-checks.ts'
import { planPorts } from '../../../src/ports/plan-ports.ts'
import { type Asked, linerOf, milledAt, shopWith } from '../liner.ts'
import { type Case, PAIRS, SOUND } from './pairs.ts'

const ENGINE = { stroke: 54, rod: 100, pinOffset: 0, crownBelowTop: 0.4, speed: 4200 }

function findingsOf(
  { ports, engine = {}, outside = 55, fixture = {}, bands: drawnBands }: Case,
  changes = {},
  portChecks = {},
) {
  const drawn = (nominal: number) => ({ nominal, lower: nominal, upper: nominal, written: String(nominal) })
  const band = (name: string, from: number, to: number, diameter: number) => ({
    name,
    size: drawn(diameter),
    from,
    to: drawn(to),
    path: '/body/outside',
  })
  const asked = drawnBands ?? [
    ['flange', 4, 62],
    ['seat', 92, outside],
  ]
  const bands = asked.map(([name, to, diameter], i) => band(name, asked[i - 1]?.[1] ?? 0, to, diameter))
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

it('has nothing to say about a sound design but that this fixture does not say what stands about the work', () => {
  expect(codesOf(SOUND)).toEqual(['ports/clearance-not-checked'])
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

describe('a piston that is told of', () => {
  const said = (rings: NonNullable<Engine['rings']> | 'unsaid'): Partial<Engine> =>
    rings === 'unsaid' ? {} : { rings }
  const bar = { at: 0, top: 40, height: 8, width: 16 }
  const land = (bridge: number, rings: NonNullable<Engine['rings']> | 'unsaid') =>
    codesOf({ ports: [{ ...bar, bridge }], engine: said(rings) }).includes('ports/thin-land')
  it('wants bars of a tenth of the bore where it has rings', () => {
    expect([land(4.7, { pegs: [] }), land(4.9, { pegs: [] })]).toEqual([true, false])
    expect([land(2.1, 'none'), land(1.9, 'none')]).toEqual([false, true])
  })
  it('is stopped by an exhaust over 70 % of the bore with rings, warned of it unasked, and left alone without any', () => {
    const wide = (rings: NonNullable<Engine['rings']> | 'unsaid') =>
      findingsOf({
        ports: [{ name: 'exhaust', role: 'exhaust', at: 0, opens: 106, bottom: 54.4, width: 34 }],
        engine: said(rings),
      })
        .filter(({ code }) => code === 'ports/exhaust-width')
        .map(({ severity }) => severity)
    expect([wide({ pegs: [] }), wide('unsaid'), wide('none')]).toEqual([['error'], ['warning'], []])
  })
  it('has pegs that only count where their rings pass', () => {
    const low = { role: 'inlet', at: 0, top: 70, height: 8, width: 12 } as const
    const peg = (from: number) =>
      codesOf({ ports: [low], engine: { rings: { from, to: from + 5, pegs: [0] } } }).includes('ports/ring-peg')
    expect([peg(9), peg(12)]).toEqual([false, true])
  })
})

// Published engine data of a 48 cc bicycle engine: stroke 38, rod 85, crown 0.8 below the top face, skirt 44.8; 112 degrees
// with the inlet's floor at 55.5 mm, 60 degrees before top dead centre with it at 56.7 mm.
it.each([
  [55.5, 56.17, 112.34],
  [56.7, 59.98, 119.95],
])('an inlet with its floor at %d mm opens %d degrees before top dead centre', (floor, before, duration) => {
  const engine = { stroke: 38, rod: 85, pinOffset: 0, crownBelowTop: 0.8, skirt: 44.8 }
  const inlet: Asked = { role: 'inlet', at: 180, top: 47, bottom: floor, width: 16 }
  const [port] = planPorts(linerOf([inlet], { engine, boreSize: 40 }), shopWith(), milledAt(39.8, 48)).ports
  expect(port?.bySkirt?.opensBefore).toBeCloseTo(before, 1)
  expect(port?.bySkirt?.duration).toBeCloseTo(duration, 1)
})
