import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { hatchSegments } from '../../src/pictures/hatch.ts'

const point = fc.record({
  x: fc.double({ min: 0, max: 200, noNaN: true }),
  y: fc.double({ min: 0, max: 200, noNaN: true }),
})
type XY = { readonly x: number; readonly y: number }

/** Even-odd by a ray to the right. */
const isInside = ({ x, y }: XY, outline: readonly XY[]): boolean =>
  outline.filter((a, index) => {
    const b = outline[(index + 1) % outline.length] ?? a
    return a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)
  }).length %
    2 ===
  1

describe('hatching', () => {
  const outline = fc.array(point, { minLength: 3, maxLength: 8 })

  it('lies inside its outline, at 45° rising to the right', () => {
    fc.assert(
      fc.property(outline, points => {
        for (const { from, to } of hatchSegments(points)) {
          expect(to.x - from.x).toBeCloseTo(from.y - to.y, 6)
          for (const part of [0.03, 0.5, 0.97]) {
            const at = { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) }
            expect(isInside(at, points)).toBe(true)
          }
        }
      }),
    )
  })

  it('fills a square as densely as its pitch says: area over length', () => {
    const square = [
      { x: 0, y: 0 },
      { x: 300, y: 0 },
      { x: 300, y: 300 },
      { x: 0, y: 300 },
    ]
    const length = hatchSegments(square, 4).reduce(
      (sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y),
      0,
    )
    expect((300 * 300) / length).toBeCloseTo(4, 1)
  })
})
