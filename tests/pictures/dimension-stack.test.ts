import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Span, stackDimensions } from '../../src/pictures/dimension-stack.ts'
import { labelBlock } from '../../src/pictures/label.ts'
import { faultsOf } from './legibility.ts'
import { measure } from './measure.ts'

const span = (from: number, to: number, words: string): Span => ({
  from,
  to,
  startFrom: 50,
  startTo: 50,
  block: labelBlock([{ numbers: [7], lines: [words] }], measure),
})

describe('dimension lines', () => {
  it('stand the shortest nearest the part', () => {
    const { boxes, refused } = stackDimensions([span(150, 400, 'long'), span(150, 250, 'short')], 60)
    expect(refused).toEqual([])
    expect(boxes[0]?.y).toBeLessThan(boxes[1]?.y ?? 0)
    expect(boxes).toHaveLength(2)
  })

  it('refuse a length that would cross another', () => {
    expect(stackDimensions([span(150, 300, 'one'), span(200, 400, 'two')], 60).refused).toEqual([1])
  })

  it('never strike a figure, whatever lengths are asked for from one face', () => {
    const lengths = fc.array(fc.double({ min: 5, max: 240, noNaN: true }), { minLength: 1, maxLength: 7 })
    fc.assert(
      fc.property(lengths, all => {
        const { marks, bottom } = stackDimensions(
          all.map(length => span(150, 150 + length, `${length.toFixed(2)} / ${(length + 0.1).toFixed(2)}`)),
          60,
        )
        expect(faultsOf({ width: 500, height: bottom + 5, alternative: '', marks }, measure)).toEqual([])
      }),
    )
  })
})
