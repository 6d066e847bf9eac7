import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boxed, landBetween } from '../../../src/ports/checks/land-between.ts'
import type { EdgePoint } from '../../../src/ports/port.ts'

/** On this radius a degree is a millimetre. */
const RADIUS = 180 / Math.PI
type Corner = readonly [across: number, depth: number]

/** Straight edges with a point every tenth of a millimetre, turned about the bore. */
function outline(corners: readonly Corner[], about = 0): readonly EdgePoint[] {
  return corners.flatMap(([x, y], i) => {
    const [toX, toY] = corners[(i + 1) % corners.length] ?? [x, y]
    const count = Math.max(1, Math.round(Math.hypot(toX - x, toY - y) * 10))
    return Array.from({ length: count }, (_, step) => ({
      azimuth: about + x + ((toX - x) * step) / count,
      depth: y + ((toY - y) * step) / count,
    }))
  })
}
const land = (a: readonly EdgePoint[], b: readonly EdgePoint[]) => landBetween(boxed(a), boxed(b), RADIUS)
const square = (left: number, top: number, side: number): readonly Corner[] => [
  [left, top],
  [left + side, top],
  [left + side, top + side],
  [left, top + side],
]

/** Derived: plane geometry on the developed bore. */
describe('the land between two windows', () => {
  const angle: readonly Corner[] = [
    [0, 0],
    [20, 0],
    [20, 4],
    [4, 4],
    [4, 20],
    [0, 20],
  ]
  it.each([
    ['side by side', square(0, 0, 10), square(14, 3, 10), 4],
    ['one under the other', square(0, 0, 10), square(3, 16, 10), 6],
    ['corner to corner', square(0, 0, 10), square(13, 14, 10), 5],
    ['one in the crook of the other', angle, square(7, 9, 5), 3],
    ['one inside the other', square(0, 0, 20), square(8, 8, 4), 0],
    ['one over a corner of the other', square(0, 0, 10), square(9, 9, 10), 0],
  ] as const)('%s', (_, a, b, expected) => {
    for (const about of [0, 100, 175, -178]) {
      const [one, other] = [outline(a, about), outline(b, about)]
      expect(land(one, other)).toBeCloseTo(expected, 6)
      expect(land(other, one)).toBeCloseTo(expected, 6)
    }
  })

  it('is the same wherever about the bore the two stand', () => {
    const turn = fc.integer({ min: -360, max: 360 })
    fc.assert(
      fc.property(turn, fc.integer({ min: -30, max: 30 }), (about, down) => {
        const at = (turned: number) => land(outline(angle, turned), outline(square(7, down, 5), turned))
        expect(at(about)).toBeCloseTo(at(0), 6)
      }),
      { numRuns: 50 },
    )
  })
})
