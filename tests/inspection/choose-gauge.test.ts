import { describe, expect, it } from 'vitest'
import { acceptanceFrom, acceptanceTo } from '../../src/handbook/gauge-decision.ts'
import { type Asked, chooseGauge, placesRead, uncertaintyOf } from '../../src/shop/choose-gauge.ts'
import type { Gauge } from '../../src/shop/shop.ts'

const gauge = (name: string, uncertainty: number, more: Partial<Gauge> = {}): Gauge => ({
  name,
  kind: 'bore',
  from: 10,
  to: 100,
  resolution: 0.001,
  uncertainty,
  ...more,
})
const AIR_PLUG = gauge('air plug', 0.00134)
const TWO_POINT = gauge('two-point', 0.00296)
const MICROMETER = gauge('micrometer', 0.00631)
/** IT6 over 30 up to 50 mm is 16 µm: ISO 286-1. */
const H6: Asked = { kind: 'bore', nominal: 48, lower: 48, upper: 48.016 }

// Derived: ISO 14253-1, guard band the whole U; U from budgets after the GUM, k = 2.
describe('acceptance zone of 48 H6', () => {
  it.each([
    [AIR_PLUG, '48.0013', '48.0147'],
    [TWO_POINT, '48.0030', '48.0130'],
  ])('by $name', ({ uncertainty: g }, from, to) => {
    expect(acceptanceFrom.value({ lower: 48, g }).toFixed(4)).toBe(from)
    expect(acceptanceTo.value({ upper: 48.016, g }).toFixed(4)).toBe(to)
  })

  it('is what a two-point gauge may accept, since 2.96 µm is more than an eighth of 16 µm', () => {
    const chosen = chooseGauge([TWO_POINT], H6)
    expect(chosen?.guarded).toBe(true)
    expect(chosen?.accept.lower?.toFixed(4)).toBe('48.0030')
    expect(chosen?.accept.upper?.toFixed(4)).toBe('48.0130')
  })

  it('is left whole for the air plug, which is good enough four times over', () => {
    expect(chooseGauge([AIR_PLUG], H6)).toMatchObject({ guarded: false, accept: { lower: 48, upper: 48.016 } })
  })

  it('would be 21 % of the tolerance for a U of 6.31 µm, which is refused', () => {
    expect((1 - (2 * 0.00631) / 0.016).toFixed(2)).toBe('0.21')
    expect(chooseGauge([MICROMETER], H6)).toBeUndefined()
  })
})

// ASME B89.7.3.1-2001: tolerance at least four times the width 2U of the uncertainty interval. T and U in µm, U to 0.1.
describe('4:1 in the strict sense', () => {
  const over = (width: number): Asked => ({ ...H6, upper: 48 + width })

  it.each([
    [11, 1.4],
    [16, 2],
    [19, 2.4],
    [25, 3.1],
    [40, 5],
    [100, 12.5],
  ])('a tolerance of %d µm asks a U of %d µm', (T, U) => {
    const most = T / 8
    expect(Math.abs(most - U)).toBeLessThanOrEqual(0.05)
    expect(chooseGauge([gauge('just good enough', most / 1000)], over(T / 1000))?.guarded).toBe(false)
    expect(chooseGauge([gauge('just not', (most * 1.001) / 1000)], over(T / 1000))?.guarded).toBe(true)
  })
})

describe('choice among the gauges on hand', () => {
  it('falls on the plainest that is good enough, whatever their order', () => {
    const hands = [gauge('finer', 0.0005), gauge('good enough', 0.0019), MICROMETER]
    for (const gauges of [hands, hands.toReversed()]) expect(chooseGauge(gauges, H6)?.gauge.name).toBe('good enough')
  })

  it('falls on the finest where none is', () => {
    expect(chooseGauge([TWO_POINT, gauge('three-point', 0.0045)], H6)?.gauge.name).toBe('two-point')
  })

  it('passes over a gauge of another kind or range', () => {
    expect(chooseGauge([{ ...AIR_PLUG, kind: 'outside' }], H6)).toBeUndefined()
    expect(chooseGauge([{ ...AIR_PLUG, to: 47.9 }], H6)).toBeUndefined()
    expect(chooseGauge([{ ...AIR_PLUG, from: 48, to: 48 }], H6)).toBeDefined()
  })

  it('keeps a form zone inside its one limit', () => {
    const asked: Asked = { kind: 'form', nominal: 50, upper: 0.005 }
    const chosen = chooseGauge([gauge('lever indicator', 0.001, { kind: 'form' })], asked)
    expect(chosen?.accept.upper).toBeCloseTo(0.004, 9)
    expect(chosen?.guarded).toBe(true)
    expect(chooseGauge([gauge('dial indicator', 0.0125, { kind: 'form' })], asked)).toBeUndefined()
  })
})

// Records of two-point and three-point gauges on an n-lobed section, derived: at n = 2 a two-point gauge travels twice the
// height of the lobe in a turn, three points at thirds of the circle not at all.
describe('the difference of two diameters', () => {
  const oval: Asked = { kind: 'bore', nominal: 0, reach: 48, upper: 0.018, ovals: true }
  const threePoint = gauge('three-point bore micrometer', 0.002)

  it('is measured on no gauge that touches at three points, however good', () => {
    expect(chooseGauge([threePoint], oval)).toBeUndefined()
    expect(chooseGauge([threePoint, { ...TWO_POINT, uncertainty: 0.002 }], oval)?.gauge.name).toBe('two-point')
  })

  it('runs from nothing: its one limit is the tolerance that the gauge is held against', () => {
    expect(chooseGauge([TWO_POINT], oval)?.ratio).toBeCloseTo(18 / (2 * 2.96), 9)
    expect(chooseGauge([TWO_POINT], oval)?.accept.upper).toBeCloseTo(0.018 - 0.00296, 9)
  })
})

describe('a least hardness', () => {
  it('is proved by a reading over it by the uncertainty of the tester: 550 and 3 % of it', () => {
    const tester = gauge('Vickers tester', 0.03, { kind: 'hardness', from: 100, to: 1300 })
    const chosen = chooseGauge([tester], { kind: 'hardness', nominal: 550, lower: 550 })
    expect(chosen?.accept).toEqual({ lower: 566.5 })
  })
})

describe('what a gauge reads', () => {
  it('is uncertain by a fraction of the reading for hardness and roughness alone', () => {
    expect(uncertaintyOf(gauge('Vickers tester', 0.03, { kind: 'hardness' }), 700)).toBeCloseTo(21, 9)
    expect(uncertaintyOf(TWO_POINT, 700)).toBe(0.00296)
  })

  it.each([
    [0, 0],
    [1, 0],
    [0.01, 2],
    [0.002, 3],
    [0.001, 3],
    [0.0001, 3],
  ])('to %d is written down with %d places', (resolution, places) => {
    expect(placesRead({ ...TWO_POINT, resolution })).toBe(places)
  })
})

it('finds no gauge for limits that meet or have changed places: nothing could be accepted', () => {
  expect(chooseGauge([AIR_PLUG], { ...H6, upper: 48 })).toBeUndefined()
  expect(chooseGauge([AIR_PLUG], { ...H6, upper: 47.9 })).toBeUndefined()
})
