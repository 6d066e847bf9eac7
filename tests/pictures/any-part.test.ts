import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { withPlaces } from '../../src/inspection/size-places.ts'
import type { OperationSize } from '../../src/operation-size.ts'
import { drawLifeStrip } from '../../src/pictures/life-strip.ts'
import { drawOperation } from '../../src/pictures/operation-drawing.ts'
import type { Plan, PlannedOperation } from '../../src/plan/plan.ts'
import type { Shape } from '../../src/shape.ts'
import { faultsOf, showsLimits } from './legibility.ts'
import { measure } from './measure.ts'
import { SAMPLE_PLAN } from './sample-plan.ts'

/** In hundredths, so that a counterexample is found small and soon. */
const millimetre = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.round(min * 100), max: Math.round(max * 100) }).map(hundredths => hundredths / 100)

/** Any turned part: one to four bands outside, none to three in the bore, from a pin of 8 mm to a liner of 250 mm. */
const turnedPart: fc.Arbitrary<Shape> = fc
  .record({
    largest: millimetre(8, 250),
    slenderness: millimetre(0.15, 6),
    outside: fc.array(fc.record({ part: millimetre(0.6, 1), share: millimetre(0.05, 1) }), {
      minLength: 1,
      maxLength: 4,
    }),
    bore: fc.array(fc.record({ part: millimetre(0.2, 0.55), share: millimetre(0.05, 1) }), { maxLength: 3 }),
    stock: millimetre(0, 0.02),
  })
  .map(({ largest, slenderness, outside, bore, stock }) => {
    const length = largest * slenderness
    const [top, bottom] = [-stock * length, length * (1 + stock)]
    const bands = (parts: readonly { part: number; share: number }[], name: string): Shape['outside'] => {
      const whole = parts.reduce((sum, { share }) => sum + share, 0)
      let depth = top
      return parts.map(({ part, share }, index) => {
        const from = depth
        depth = index === parts.length - 1 ? bottom : from + ((bottom - top) * share) / whole
        return { name: `${name} ${index + 1}`, from, to: depth, diameter: largest * part }
      })
    }
    return { top, bottom, outside: bands(outside, 'seat'), bore: bands(bore, 'bore'), ported: false }
  })

const sizesOf = ({ outside, bore, bottom, top }: Shape): readonly OperationSize[] => [
  ...[...outside, ...bore].map(
    ({ name, diameter }): OperationSize => ({
      feature: name,
      measure: 'diameter',
      nominal: diameter,
      lower: diameter - 0.02,
      upper: diameter,
      drawn: '55 g6',
    }),
  ),
  ...outside.slice(0, -1).map(
    ({ name, to }): OperationSize => ({
      feature: name,
      measure: 'depth',
      nominal: to - top,
      lower: to - top - 0.05,
      upper: to - top + 0.05,
    }),
  ),
  {
    feature: 'length',
    measure: 'length',
    nominal: bottom - top,
    lower: bottom - top - 0.05,
    upper: bottom - top + 0.05,
  },
]

const turnedPlan = (shape: Shape): { readonly plan: Plan; readonly operation: PlannedOperation } => {
  const [first] = SAMPLE_PLAN.operations
  if (!first) throw new Error('the sample has operations')
  const surfaces = [...shape.outside, ...shape.bore].map(({ name }) => name)
  const operation = {
    ...first,
    purpose: 'finish-turn' as const,
    shape,
    surfaces,
    sizes: withPlaces({
      part: { ...shape, ports: [] },
      operation: first,
      sizes: sizesOf(shape),
      checked: { operations: [], characteristics: [] },
    }),
  }
  return {
    operation,
    plan: { ...SAMPLE_PLAN, operations: [operation], ports: [], inspection: { characteristics: [] } },
  }
}

describe('any turned part', () => {
  const room = { width: 510, height: 326 }

  it('is drawn so that every figure can be read, within the room given', () => {
    fc.assert(
      fc.property(turnedPart, shape => {
        const { plan, operation } = turnedPlan(shape)
        const picture = drawOperation({ plan, operation, room, measure })
        expect(faultsOf(picture, measure)).toEqual([])
        expect(picture.height).toBeLessThanOrEqual(room.height + 1e-6)
      }),
    )
  })

  it('shows every size or says in its caption which it leaves to the table', () => {
    fc.assert(
      fc.property(turnedPart, shape => {
        const { plan, operation } = turnedPlan(shape)
        const { marks } = drawOperation({ plan, operation, room, measure })
        const words = marks.flatMap(mark => (mark.kind === 'text' ? [mark.text] : []))
        for (const { lower, upper, feature } of operation.sizes) {
          const shown = words.some(text => showsLimits(text, lower, upper))
          expect(shown || words.some(text => text.includes(feature))).toBe(true)
        }
      }),
    )
  })

  it('has a sign in the strip', () => {
    fc.assert(
      fc.property(turnedPart, shape => {
        const { plan, operation } = turnedPlan(shape)
        expect(faultsOf(drawLifeStrip(plan, operation, 510), measure)).toEqual([])
      }),
    )
  })
})
