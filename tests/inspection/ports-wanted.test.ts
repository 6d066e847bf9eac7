import { describe, expect, it } from 'vitest'
import { CORNER_RADIUS, cornerDeviation, STREAM_ANGLE, streamDeviation } from '../../src/handbook/port-inspection.ts'
import type { Characteristic } from '../../src/inspection/characteristic.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import type { Plan } from '../../src/plan/plan.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { LINER_TEXT, partFrom } from '../route/part-text.ts'

const ISSUE = { date: '2026-11-25', fingerprint: '0123456789ab', program: 'test' }
const OBLIQUE =
  '  - {name: main transfer, at: 78, mirror: true, opens: 121, height: 10.4, width: 17, corner: 2.6, up: 15, back: 32}\n'

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

/** Of a window's own wall in hardening, in the middle of its range: the cut leaves it that much larger a side. */
const growthOf = ({ ports }: Plan): number => {
  const growth = ports[0]?.windows[0]?.walls.growth
  if (!growth) throw new Error('nothing grows')
  return (growth.least + growth.most) / 2
}

const at = (plan: Plan, purpose: string): readonly Characteristic[] => {
  const operation = plan.operations.find(one => one.purpose === purpose)?.number
  return plan.inspection.characteristics.filter(one => one.operation === operation)
}

const named = (all: readonly Characteristic[], name: string): Characteristic => {
  const found = all.find(one => one.name === name)
  if (!found) throw new Error(`${name} not in ${all.map(one => one.name).join('; ')}`)
  return found
}

describe('the general tolerances of angles and radii', () => {
  // ISO 2768-1:1989, class m, from public reprints: 1° up to 10 mm, 0°30' to 50, 0°20' to 120; radii 0.2, 0.5, 1.
  it('are the rows of the standard, without gap', () => {
    expect([5, 10, 10.1, 50, 60].map(streamDeviation)).toEqual([1, 1, 0.5, 0.5, 1 / 3])
    expect([0.5, 3, 3.1, 6, 8].map(cornerDeviation)).toEqual([0.2, 0.2, 0.5, 0.5, 1])
    for (const { rows } of [STREAM_ANGLE, CORNER_RADIUS])
      rows.slice(1).forEach(({ over }, index) => {
        expect(over).toBe(rows[index]?.upTo)
      })
  })
})

describe('an oblique port on the inspection plan', () => {
  const plan = planOf(`${LINER_TEXT}${OBLIQUE}`)
  const [milled, finished] = [at(plan, 'mill-ports'), at(plan, 'final-inspection')]

  it('has its width where a pin goes through: chord times the cosine of its turn, at the limits too', () => {
    const width = named(milled, 'main transfer width square to the stream')
    const cos = Math.cos((32 * Math.PI) / 180)
    const larger = 2 * growthOf(plan)
    expect(larger).toBeGreaterThan(0.01)
    expect(width.nominal).toBeCloseTo(17 * cos + larger, 6)
    expect(width.upper).toBeCloseTo(17.1 * cos + larger, 6)
    const grown = named(finished, 'main transfer width square to the stream, finished')
    expect(grown.nominal).toBeCloseTo(17 * cos, 6)
    expect(width.gauge).toBe('gauge pins')
    expect(width.upper).toBeLessThan(14.6)
    const size = plan.operations
      .find(({ purpose }) => purpose === 'mill-ports')
      ?.sizes.find(({ feature, measure }) => feature === 'main transfer' && measure === 'width')
    expect(size?.drawn).toBe('17.000 chord')
    expect(size?.characteristic).toBe(width.number)
  })

  it('has its height from edge to edge in the bore, which no pin along a rising stream shows', () => {
    const height = named(milled, 'main transfer height')
    expect(height.nominal).toBeCloseTo(10.4 + (2 * growthOf(plan)) / Math.cos((15 * Math.PI) / 180), 9)
    expect(height.gauge).not.toBe('gauge pins')
  })

  it('has stream and tightest corner looked at on the first piece of a setting', () => {
    expect(named(milled, 'main transfer stream, rising to the head')).toMatchObject({
      nominal: 15,
      lower: 14,
      upper: 16,
    })
    expect(named(milled, 'main transfer stream, turned back')).toMatchObject({ nominal: 32, sample: 1 })
    const corner = named(milled, 'main transfer tightest corner, by pin diameter')
    const tightest = plan.ports.find(({ name }) => name === 'main transfer')?.windows[0]?.tightestCorner ?? 0
    expect(corner.nominal).toBeCloseTo(2 * tightest, 9)
    expect(corner.lower).toBeCloseTo(2 * tightest - 0.4, 9)
  })

  it('stands round the liner where it is drawn, counted from the exhaust as the rotary counts', () => {
    for (const all of [milled, finished]) {
      const left = named(all, 'main transfer, mirrored place round the liner, from exhaust')
      expect(left).toMatchObject({ nominal: 282, unit: '°', gauge: 'rotary head' })
      expect([left.lower, left.upper]).toEqual([281.9, 282.1])
      expect(all.map(({ name }) => name)).not.toContain('exhaust place round the liner, from exhaust')
    }
  })

  it('has height and width again when it is finished, by the drawing where that gives limits', () => {
    expect(named(finished, 'main transfer height, finished').lower).toBeCloseTo(10.3, 9)
    const drawn = planOf(
      LINER_TEXT.replace('height: 16.1', 'height: 16.1 +0.1/0').replace('width: 27', 'width: 27 ±0.05'),
    )
    const height = named(at(drawn, 'final-inspection'), 'exhaust height, finished')
    expect([height.lower, height.upper]).toEqual([16.1, expect.closeTo(16.2, 9)])
    const width = named(at(drawn, 'mill-ports'), 'exhaust width')
    const larger = 2 * growthOf(drawn)
    expect(width.lower).toBeCloseTo(26.95 + larger, 6)
    expect(width.upper).toBeCloseTo(27.05 + larger, 6)
  })
})

describe('the bars of a bridged port', () => {
  it('are gauged from outside, square to the stream, one by one where there are two', () => {
    const plan = planOf(LINER_TEXT)
    const one = named(at(plan, 'mill-ports'), 'exhaust bridge')
    expect(one.written).toBe('shaft')
    expect(one.nominal).toBeCloseTo(2.6 - 2 * growthOf(plan), 9)
    expect((one.upper ?? 0) - (one.lower ?? 0)).toBeCloseTo(0.2, 9)
    expect(one.gauge).toMatch(/micrometer|caliper/)
    const two = at(planOf(LINER_TEXT.replace('bridge: 2.6', 'bridge: [2.4, 2.8]')), 'mill-ports')
    const thinner = 2 * growthOf(plan)
    expect(named(two, 'exhaust bridge 1').nominal).toBeCloseTo(2.4 - thinner, 9)
    expect(named(two, 'exhaust bridge 2').nominal).toBeCloseTo(2.8 - thinner, 9)
  })
})

describe('a datum of the drawing on the inspection plan', () => {
  const withDatum = (datum: string): Plan =>
    planOf(`${LINER_TEXT.replace('  top: {Ra', `  datum: ${datum}\n  top: {Ra`)}${OBLIQUE}`)

  it('is measured over to the far side where it is a flat, and every port is placed from it', () => {
    const milled = at(withDatum('{kind: flat, on: flange, at: 30, depth: 0.5}'), 'mill-ports')
    const over = named(milled, 'flat on flange, over it to the far side')
    const flange = milled.length > 0 ? (over.nominal ?? 0) + 0.5 : 0
    expect(flange).toBeGreaterThan(61.8)
    expect(flange).toBeLessThan(62.1)
    expect(named(milled, 'exhaust place round the liner, from the flat on flange').nominal).toBe(330)
  })

  it('has its limit gauge where it is a notch or a hole', () => {
    const notch = at(withDatum('{kind: notch, on: flange, at: 0, depth: 2}'), 'mill-ports')
    expect(named(notch, 'notch on flange, 3 H9: the key of the fixture goes in and does not shake').remark).toContain(
      '3 H9',
    )
    expect(named(notch, 'notch on flange, depth').nominal).toBe(2)
    const hole = at(withDatum('{kind: dowel hole, on: flange, at: 0, depth: 4}'), 'mill-ports')
    expect(
      named(hole, 'dowel hole in flange, Ø3 H7: the pin of the fixture goes in and does not shake').sample,
    ).toBeGreaterThan(1)
  })
})
