import { describe, expect, it } from 'vitest'
import type { Characteristic } from '../../src/inspection/characteristic.ts'
import { withLadderPlaces, withPlaces } from '../../src/inspection/size-places.ts'
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

describe('the places of a size', () => {
  it('are those that its gauge reads, never more', () => {
    const [seat] = withPlaces(NAMES, { number: 60 }, [size('seat', 55, 55.02)], [judge(60, 'seat', 55, 55.02, 2)])
    expect(seat?.places).toBe(2)
  })
  it('are those of the next check where it is not judged at once', () => {
    const later = [judge(120, 'seat', 55, 55.2, 1), judge(90, 'seat', 55, 55.2, 3), judge(30, 'seat', 55, 55.2, 0)]
    expect(withPlaces(NAMES, { number: 60 }, [size('seat', 55, 55.2)], later)[0]?.places).toBe(3)
  })
  it('are not those of another size of the same surface, nor of another surface', () => {
    const others = [judge(60, 'seat', 55.1, 55.3, 0), judge(60, 'flange', 55, 55.2, 0)]
    expect(withPlaces(NAMES, { number: 60 }, [size('seat', 55, 55.2)], others)[0]?.places).toBe(2)
  })
  it('show about a tenth of the tolerance where nothing judges it', () => {
    const places = [1, 0.9, 0.1, 0.09, 0.05].map(
      T => withPlaces(NAMES, { number: 10 }, [size('seat', 48, 48 + T)], [])[0]?.places,
    )
    expect(places).toEqual([1, 1, 2, 2, 3])
  })
  it('of a face are those of the length that it is judged by', () => {
    const state = { nominal: 92, lower: 91.95, upper: 92.05, operation: 80, name: 'Grind top' }
    const ladder = { surface: 'top', kind: 'face', states: [state] } as const
    const [top] = withLadderPlaces([ladder], [judge(90, 'length', 91.95, 92.05, 3)])
    expect(top?.states[0]?.places).toBe(3)
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
