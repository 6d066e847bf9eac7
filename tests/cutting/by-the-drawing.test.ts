import { describe, expect, it } from 'vitest'
import type { Plan } from '../../src/plan/plan.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { planOf as planned } from '../features/planned.ts'
import { demo, OXMERE, planOf } from '../orders/planned-orders.ts'
import { cut, partOf, stateOf, step, tube } from './hand-made.ts'

const stepsOf = ({ operations }: Plan) => operations.flatMap(({ steps }) => steps)
const heldOf = ({ operations }: Plan): readonly string[] =>
  operations.flatMap(({ chuckings = [] }) =>
    chuckings.map(({ end, heldWith = 'jaws', grip }) => `${end} out of ${heldWith} on ${grip.surface}`),
  )

// Common practice, no source: a hollow pin runs between the chamfers of its bore, a solid one between centres drilled for it.
describe('a pin', () => {
  const text = (bore: string): string => `part: {number: OX-098-95, title: Test pin, revision: A, kind: pin}
material: {grade: 16MnCr5, hardness: 180 HV}
body:
  length: 42 +0/-0.2
  outside: {size: 16 h5, Ra: 0.1, roundness: 0.002}
${bore}
hardening: {process: carburising, hardness: min 650 HV, depth: min 0.4}
`

  it.each([
    ['  bore: 10 ±0.1', 'the 60° chamfers of the bore'],
    ['', 'its centre holes'],
  ])('"%s" is turned end to end between %s', (bore, between) => {
    const centred = heldOf(planned(text(bore))).filter(held => held.includes('centres'))
    expect(centred.length).toBeGreaterThan(1)
    expect(new Set(centred)).toEqual(new Set([`bottom out of centres on ${between}`]))
  })
})

describe('a piston', () => {
  it('is drilled and bored as deep as its drawing says: 44 mm', () => {
    const steps = stepsOf(planOf(demo('OX-098-31')))
    expect(step(steps, 'drill inside').remarks.join()).toContain("above the crown's 44")
    const { time, passes, tableFeed } = step(steps, 'bore inside')
    // Two millimetres before it and two past it, and three hundredths of a minute back, each pass: common practice, no source.
    expect(time).toBeCloseTo(passes * ((44 + 4) / tableFeed + 0.03), 6)
  })
})

describe('features of a liner', () => {
  const liner = (more: string, holes: string) => `part: {number: OX-098-96, title: Test liner, revision: A, kind: liner}
material: {grade: 42CrMo4, hardness: 300 HV, temper: 620}
body:
  length: 92 ±0.05
  outside:
    - {to: 4, size: 62 h9, name: flange}
    - {to: 92, size: 55 g6, Ra: 0.8, name: seat${more}}
  bore: {size: 48 H6, Ra: 0.3, cylindricity: 0.006}
  holes: [{name: oil, at: 90, depth: 60, size: ${holes}}]
`

  it('a lead of 1.5 at 15° is cut along its slope, 1.55 mm, with 2 mm before and after', () => {
    const { time, tableFeed } = step(stepsOf(planned(liner(', lead: 1.5 x 15°', '3 H12'))), 'turn lead')
    // As cut it may be a little longer than drawn, for what comes off its surfaces.
    const run = (time - 0.03) * tableFeed - 4
    expect(run).toBeGreaterThan(1.5 / Math.cos(Math.PI / 12) - 0.01)
    expect(run).toBeLessThan(2 * 1.5)
  })

  // Common practice, no source: a drill leaves a hole within 0.05 mm, a reamer a closer one.
  it.each([
    ['3.7 ±0.1', 'drill'],
    ['3 H7', 'ream'],
  ])('a hole of %s ends with a %s', (size, ends) => {
    const made = stepsOf(planned(liner('', size))).filter(
      ({ feature, action }) => feature === 'oil' || / oil$/.test(action),
    )
    expect(made.at(-1)?.action).toBe(`${ends} oil`)
  })
})

it('a plain bearing of soft steel is ground outside with half of the infeed that the handbook gives, read as on diameter', () => {
  // Machinery's Handbook, 31st ed., p. 1318: plain carbon and alloy steel, 0.002 in or 0.05 mm a pass, roughing.
  const machines = BUILT_IN_SHOP.machines.map(machine => ({ ...machine, power: 100 }))
  const state = stateOf('grind-outside', tube(60, 48), tube(59.9, 48))
  const { steps } = cut(partOf(), state, { ...BUILT_IN_SHOP, machines })
  expect(step(steps, 'rough grind').feed).toBeLessThanOrEqual(0.025 + 1e-9)
  expect(step(steps, 'rough grind').feed).toBeGreaterThan(0.01)
})

it('in the tightest corners the centre of the cutter goes slower by its own radius in the corner’s: derived, two circles', () => {
  const plan = planOf(demo('OX-098-21'), OXMERE)
  const { tightestCorner = 0 } = plan.ports.find(({ name }) => name === 'exhaust')?.windows[0] ?? {}
  const finish = stepsOf(plan).filter(({ action, feature }) => /^finish /.test(action) && feature === 'exhaust')
  const said = finish.flatMap(({ remarks, tool, tableFeed }) => {
    const slow = /(\d+) mm\/min in the tightest corners/.exec(remarks.join())?.[1]
    const diameter = BUILT_IN_SHOP.tools.concat(OXMERE.tools).find(({ name }) => name === tool)
    return slow && diameter && 'diameter' in diameter ? [{ slow: Number(slow), tableFeed, D: diameter.diameter }] : []
  })
  expect(said.length).toBeGreaterThan(0)
  for (const { slow, tableFeed, D } of said)
    expect(Math.abs(slow - (tableFeed * (tightestCorner - D / 2)) / tightestCorner)).toBeLessThanOrEqual(0.5001)
})
