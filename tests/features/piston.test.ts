import { describe, expect, it } from 'vitest'
import {
  clipFloor,
  coldClearance,
  domeRadius,
  ovalDiameter,
  ovalOffset,
  ovalToolRadius,
  PISTON_PLACES,
} from '../../src/handbook/piston.ts'
import { fittedOf } from '../../src/part/fitted.ts'
import { readPart } from '../../src/part/read-part.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { planOf } from './planned.ts'

describe('the cold clearance that leaves an oil film when piston and liner are warm, derived: linear expansion', () => {
  const at = (aP: number, T: number): number =>
    coldClearance.value({ D: 48, aL: 11.7, TL: 90, aP, TP: T - 20, film: 0.015 }) * 1000

  it('is 197.5, 227.2 and 90.94 µm on 48 mm at 19.5/270, 22/270 and 22/140', () => {
    expect(at(19.5, 270)).toBeCloseTo(197.5, 1)
    expect(at(22, 270)).toBeCloseTo(227.2, 1)
    expect(at(22, 140)).toBeCloseTo(90.94, 2)
  })

  it('falls from the crown down', () => {
    const needed = PISTON_PLACES.map(({ aluminium }) => at(22, aluminium.temperature))
    expect(needed).toEqual(needed.toSorted((a, b) => b - a))
  })
})

describe('the shape of a piston, derived: geometry', () => {
  it('is oval by the square of the sine', () => {
    const r = (phi: number): number => ovalDiameter.value({ D: 47.93, ov: 0.12, phi }) / 2
    expect([0, 45, 90].map(r)).toEqual([23.965, 23.935, 23.905].map(value => expect.closeTo(value, 6)))
    expect(2 * r(30)).toBeCloseTo(47.9, 6)
  })

  it('is turned off centre by 0.2000 and 0.3414 for a relief of 0.1 that fades out at 60° and 45°', () => {
    expect(ovalOffset.value({ delta: 0.1, phi0: 60 })).toBeCloseTo(0.2, 4)
    expect(ovalOffset.value({ delta: 0.1, phi0: 45 })).toBeCloseTo(0.3414, 4)
    expect(ovalToolRadius.value({ R: 23.965, e: 0.2, phi0: 60 })).toBeCloseTo(24.0656, 4)
  })

  it('has a dome of radius 96.503, and a clip groove of 15.32 in a bore of 14', () => {
    expect(domeRadius.value({ D: 47.75, h: 3 })).toBeCloseTo(96.503, 3)
    expect(clipFloor.value({ b: 14, k: 0.55, d: 1.2 })).toBeCloseTo(15.32, 9)
  })
})

const PISTON = `
part: {number: OX-901-30, title: Piston, revision: A, kind: piston}
material: {grade: EN AW-2618A}
body:
  length: 52 ±0.1
  outside:
    - {to: 14, size: 47.75 ±0.03, Ra: 1.6, name: crown land, chamfer: 0.3}
    - {to: 52, size: 47.91 ±0.01, Ra: 1.6, name: skirt}
  crown: {dome: 2}
  ring-grooves:
    - {at: 5, width: 1.2 +0.05/+0.03, size: 43.2 +0/-0.1, ring: 1.2, Ra: 0.6, corner: 0.2, peg: {at: 180}}
  inside: {size: 38 H7, depth: 42 ±0.1}
  pin-bore: {size: 14 +0.006/0, height: 26 ±0.03, offset: 0.5, circlip: 1.2, Ra: 0.4}
  skirt: {ovality: 0.1, taper: 0.02}
  windows: [{at: 180, top: 36, width: 16, height: 8, corner: 3}]
`
const LINER = `
part: {number: OX-901-01, title: Liner, revision: A, kind: liner}
material: {grade: 42CrMo4, hardness: 300 HV}
body: {length: 92, outside: 55 g6, bore: 48 H6}
`

describe('a piston in aluminium', () => {
  const plan = planOf(PISTON)

  it('has its inside and pin bore made before lands and skirt, and windows and pegs after', () => {
    const order = plan.operations.map(({ purpose }) => purpose as string)
    const made = ['rough-turn', 'turn-inside', 'bore-pin', 'finish-turn', 'mill-features', 'deburr-soft']
    expect(order.filter(purpose => made.includes(purpose))).toEqual(made)
  })

  it('has its ring grooves cut after their land is finished, and the skirt relieved after it is round', () => {
    const steps =
      plan.operations.find(({ purpose }) => purpose === 'finish-turn')?.steps.map(({ action }) => action) ?? []
    const at = (action: string): number => steps.indexOf(action)
    expect(at('relieve shape of skirt, both sides')).toBeGreaterThan(at('finish skirt'))
    expect(at('groove ring groove 1')).toBeGreaterThan(at('finish crown land'))
  })

  it('is checked for all of it at the end', () => {
    const last = plan.operations.at(-1)?.number
    const checked = new Set(
      plan.inspection.characteristics.filter(one => one.operation === last).map(one => one.feature),
    )
    const sized = plan.features.filter(({ kind }) => kind !== 'dome').map(({ name }) => name)
    expect(sized.filter(name => !checked.has(name))).toEqual([])
  })

  it('has its clearance reckoned in the liner that is given with it', () => {
    const liner = readPart(LINER, 'liner.yaml').part
    const { part } = readPart(PISTON, 'piston.yaml')
    const fitted = liner && fittedOf(liner)
    if (!part || !fitted) throw new Error('not read')
    const made = makePlan({
      part: { ...part, fitted },
      shop: BUILT_IN_SHOP,
      batch: { number: '1', quantity: 4 },
      issue: { date: '2026-11-30', fingerprint: '', program: '' },
    })
    const skirt = made.plan?.fit?.rows.find(({ place }) => place === 'skirt')
    // 48.000 to 48.016 (ISO 286-2, 48 H6) less 47.90 to 47.92.
    expect(skirt?.cold.least).toBeCloseTo(0.08, 9)
    expect(skirt?.cold.most).toBeCloseTo(0.116, 9)
    expect(skirt?.needed).toBeCloseTo(0.09094, 4)
    expect(made.findings.filter(({ code }) => code === 'feature/clearance').length).toBeGreaterThan(0)
  })

  it.each([
    ['a crown too thin', 'depth: 42 ±0.1', 'depth: 50 ±0.1', 'leaves a crown of 2 mm; 3.343 mm is the least'],
    [
      'a ring that hammers',
      'width: 1.2 +0.05/+0.03',
      'width: 1.4 +0.05/+0.03',
      'mm of clearance; 0.02 to 0.08 mm is usual',
    ],
    ['an inside through the part', 'depth: 42 ±0.1', 'depth: 60 ±0.1', 'inside is 60 mm deep, and the part 52 mm long'],
  ])('is refused with its place: %s', (_, from, to, message) => {
    const said = readPart(PISTON.replace(from, to), 'piston.yaml').findings.map(one => one.message)
    expect(said.join('\n')).toContain(message)
  })
})

const PIN = `
part: {number: OX-901-34, title: Gudgeon pin, revision: A, kind: pin}
material: {grade: 16MnCr5, hardness: 180 HV}
body:
  length: 42 +0/-0.2
  outside: {size: 16 h5, Ra: 0.1, roundness: 0.002}
  bore: 10 ±0.15
  ends: {chamfer: 0.5 x 45°, taper-bore: {size: 14 ±0.1, depth: 10 ±0.2}}
hardening: {process: carburising, hardness: min 650 HV, depth: min 0.4}
`

describe('a pin with tapered ends', () => {
  const plan = planOf(PIN)

  it('has a half angle of 11.310° from 14 to 10 over 10', () => {
    const taper = plan.features.find(({ name }) => name === 'taper bore, upper end')
    expect(taper?.angle).toBeCloseTo(11.31, 3)
    expect(taper?.end?.finished).toBeCloseTo(14, 2)
  })

  it('has its chamfers cut for what the wheel and the lap take off', () => {
    const turned = plan.operations.find(({ purpose }) => purpose === 'turn' || purpose === 'finish-turn')
    const off = plan.stock
      .filter(({ surface }) => surface === 'outside')
      .reduce((sum, { onDiameter }) => sum + onDiameter.most / 2, 0)
    const chamfer = turned?.sizes.find(({ feature }) => feature === 'chamfer, lower end')
    expect((chamfer?.lower ?? 0) - off).toBeCloseTo(0.3, 6)
  })
})
