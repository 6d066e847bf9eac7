import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { Characteristic } from '../../src/inspection/characteristic.ts'
import { withChartPlaces, withLadderPlaces, withPlaces, withPlatingPlaces } from '../../src/inspection/size-places.ts'
import type { Plan } from '../../src/plan/plan.ts'
import { demoPlan } from '../sheets/demo-packet.ts'

const size = (feature: string, lower: number, upper: number) =>
  ({ feature, measure: 'diameter', nominal: lower, lower, upper }) as const

const NAMES = { bore: [{ name: 'bore' }], ports: [{ name: 'exhaust' }] }

const judge = (operation: number, feature: string, lower: number, upper: number, places: number): Characteristic => ({
  number: 1,
  name: feature,
  lower,
  upper,
  unit: 'mm',
  gauge: 'a gauge',
  uncertainty: 0.001,
  accept: {},
  places,
  operation,
  stage: 'in-process',
  feature,
  critical: false,
  sample: 1,
  plan: '',
})

const placed = (number: number, one: ReturnType<typeof size>, characteristics: readonly Characteristic[]) =>
  withPlaces({
    part: NAMES,
    operation: { number },
    sizes: [one],
    checked: { operations: [], characteristics },
  })

describe('the places of a size', () => {
  it('are those that its gauge reads, never more', () => {
    const [seat] = placed(60, size('seat', 55, 55.02), [judge(60, 'seat', 55, 55.02, 2)])
    expect(seat?.places).toBe(2)
  })
  it('are those of the next check where it is not judged at once', () => {
    const later = [judge(120, 'seat', 55, 55.2, 1), judge(90, 'seat', 55, 55.2, 3), judge(30, 'seat', 55, 55.2, 0)]
    expect(placed(60, size('seat', 55, 55.2), later)[0]?.places).toBe(3)
  })
  it('are not those of another size of the same surface, nor of another surface', () => {
    const others = [judge(60, 'seat', 55.1, 55.3, 0), judge(60, 'flange', 55, 55.2, 0)]
    expect(placed(60, size('seat', 55, 55.2), others)[0]?.places).toBe(2)
  })
  it('show about a tenth of the tolerance where nothing judges it', () => {
    const places = [1, 0.9, 0.1, 0.09, 0.05].map(T => placed(10, size('seat', 48, 48 + T), [])[0]?.places)
    expect(places).toEqual([1, 1, 2, 2, 3])
  })
  it('of a face are those of the length that it is judged by', () => {
    const state = { nominal: 92, lower: 91.95, upper: 92.05, operation: 80, name: 'Grind top' }
    const ladder = { surface: 'top', kind: 'face', states: [state] } as const
    const [top] = withLadderPlaces([ladder], {
      operations: [],
      characteristics: [judge(90, 'length', 91.95, 92.05, 3)],
    })
    expect(top?.states[0]?.places).toBe(3)
  })
})

describe('the places of limits elsewhere in the plan', () => {
  const bore = { nominal: 60.1, lower: 60, upper: 60.2 }
  it('of a plated bore are those of the gauge that measures it, else a tenth of the tolerance', () => {
    const plan = demoPlan('OX-105-02')
    if (!plan.plating) throw new Error('the sleeve is plated')
    const plating = { ...plan.plating, before: bore, plated: { ...bore, upper: 60.3 } }
    const checked = { operations: [], characteristics: [judge(70, 'bore', 60, 60.2, 3)] }
    expect(withPlatingPlaces(plating, checked)).toMatchObject({ before: { places: 3 }, plated: { places: 2 } })
  })
  it('of a length of the chart are those of what measures the drawing at last', () => {
    const row = { name: 'depth of flange', expression: 'W1', nominal: 4, worstCase: 0.1, rootSumSquare: 0.1 }
    const drawn = { feature: 'flange', nominal: 4, lower: 3.9, upper: 4.1 }
    const chart = { dimensions: [], resultants: [{ ...row, drawn }, row] }
    const checked = { operations: [], characteristics: [judge(150, 'flange', 3.9, 4.1, 3)] }
    expect(withChartPlaces(chart, checked).resultants).toEqual([{ ...row, drawn: { ...drawn, places: 3 } }, row])
  })
  it('are decided in one file of src', () => {
    const files = readdirSync('src', { recursive: true }).map(String)
    const deciding = files.filter(
      file => file.endsWith('.ts') && readFileSync(`src/${file}`, 'utf8').includes("placesFor } from '"),
    )
    expect(deciding).toEqual(['inspection/size-places.ts'])
  })
})

describe('what judges a size', () => {
  const back = { number: 90, checks: [{ kind: 'receipt', of: [60], text: '', because: '' }] } as const
  const measured = [60, 70, 90].map(operation => ({
    ...judge(operation, 'seat', 55, 55.02, operation === 90 ? 3 : 2),
    number: operation / 10,
  }))
  const seat = (operation: number, characteristics: readonly Characteristic[]) =>
    withPlaces({
      part: NAMES,
      operation: { number: operation },
      sizes: [size('seat', 55, 55.02)],
      checked: { operations: [{ number: 60 }, back], characteristics },
    })[0]

  it('is the check that takes the work back, whose gauge gives the places, though the operation has its own', () => {
    expect(seat(60, measured)).toMatchObject({ characteristic: 6, judge: 9, places: 3 })
  })
  it('is its own measurement where no check takes it back', () => {
    expect(seat(70, measured)).toMatchObject({ characteristic: 7, judge: 7, places: 2 })
  })
  it('is the next that measures it where the operation has none, and nothing where none does', () => {
    expect(seat(50, measured)).toMatchObject({ judge: 6, places: 2 })
    expect(seat(50, measured)).not.toHaveProperty('characteristic')
    expect(seat(50, [])).not.toHaveProperty('judge')
  })
  it('is searched for by its limits in one file of src', () => {
    const near = /Math\.abs\(a - b\) < 1e-6/
    const files = readdirSync('src', { recursive: true })
      .map(String)
      .filter(file => file.endsWith('.ts'))
      .map(file => ({ file, text: readFileSync(`src/${file}`, 'utf8') }))
    const searching = files.filter(({ text }) => /\/characteristic\.ts'/.test(text) && near.test(text))
    expect(searching.map(({ file }) => file)).toEqual(['inspection/size-places.ts'])
  })
})

describe('in the plan of the demo liner', () => {
  const plan: Plan = demoPlan('OX-098-21')

  it('a size has the same places wherever it stands', () => {
    let held = 0
    for (const { number, sizes } of plan.operations) {
      for (const { feature, measure, lower, places } of sizes) {
        if (measure !== 'diameter') continue
        const state = plan.ladders
          .filter(({ surface }) => surface === feature)
          .flatMap(({ states }) => states)
          .find(({ operation }) => operation === number)
        if (!state || Math.abs(state.lower - lower) > 1e-6) continue
        expect(state.places, `${number} ${feature}`).toBe(places)
        held++
      }
    }
    expect(held).toBeGreaterThan(5)
  })

  it('an order names the gauge, and has the places, of what judges the size', () => {
    const asked = plan.orders.flatMap(({ finish }) => finish).filter(({ written }) => written !== 'range')
    expect(asked.length).toBeGreaterThan(2)
    const sizes = plan.operations.flatMap(({ number, sizes }) => sizes.map(size => ({ number, ...size })))
    for (const { operation, limits, gauge, characteristic, places } of asked) {
      const size = sizes.find(
        ({ number, lower, upper }) => number === operation && lower === limits.least && upper === limits.most,
      )
      const judging = plan.inspection.characteristics.find(({ number }) => number === size?.judge)
      expect([gauge, characteristic, places]).toEqual([judging?.gauge, size?.characteristic, size?.places])
    }
  })

  it('no size has more places than the gauge reads that judges it', () => {
    for (const { number, sizes } of plan.operations) {
      for (const { feature, lower, upper, places } of sizes) {
        const judging = plan.inspection.characteristics.find(
          one => one.operation === number && one.feature === feature && one.lower === lower && one.upper === upper,
        )
        if (judging) expect(places, `${number} ${feature}`).toBeLessThanOrEqual(judging.places)
      }
    }
  })
})
