import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Placed, placeLabels, type Surroundings, type Wanted } from '../../src/pictures/place-labels.ts'

const FRAME = { x: 0, y: 0, width: 500, height: 300 }
const place = fc.record({
  x: fc.integer({ min: 100, max: 400 }),
  y: fc.integer({ min: 80, max: 220 }),
})
const label: fc.Arbitrary<Wanted> = fc.record({
  anchor: place,
  width: fc.integer({ min: 10, max: 90 }),
  height: fc.integer({ min: 8, max: 40 }),
  toward: fc.integer({ min: -180, max: 180 }),
})
/** Convex and other outlines alike: any closed way through a few points. */
const shape = fc
  .array(place, { minLength: 3, maxLength: 7 })
  .map(points => points.map((from, index) => ({ from, to: points[(index + 1) % points.length] ?? from })))
const scene = fc.record({ labels: fc.array(label, { maxLength: 12 }), outline: shape })
const around = (lines: Surroundings['lines']): Surroundings => ({ frame: FRAME, lines, boxes: [] })

type XY = { readonly x: number; readonly y: number }
/** By the signs of three-point turns, written for the test. */
function crosses(a: XY, b: XY, c: XY, d: XY): boolean {
  const turn = (p: XY, q: XY, r: XY): number => Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x))
  return turn(a, b, c) !== turn(a, b, d) && turn(c, d, a) !== turn(c, d, b)
}
const inside = ({ x, y }: XY, { box }: Placed): boolean =>
  x > box.x && x < box.x + box.width && y > box.y && y < box.y + box.height
const along = (from: XY, to: XY): readonly XY[] =>
  Array.from({ length: 400 }, (_, index) => ({
    x: from.x + ((to.x - from.x) * index) / 399,
    y: from.y + ((to.y - from.y) * index) / 399,
  }))
const pairs = <T>(list: readonly T[]): readonly (readonly [T, T])[] =>
  list.flatMap((a, index) => list.slice(index + 1).map(b => [a, b] as const))
const found = (labels: readonly Wanted[], lines: Surroundings['lines']): readonly Placed[] =>
  placeLabels(labels, around(lines)).filter(placed => placed !== undefined)

describe('labels placed about any shape', () => {
  it('never overlap', () => {
    fc.assert(
      fc.property(scene, ({ labels, outline }) => {
        for (const [{ box: a }, { box: b }] of pairs(found(labels, outline))) {
          const apart = a.x + a.width <= b.x || b.x + b.width <= a.x || a.y + a.height <= b.y || b.y + b.height <= a.y
          expect(apart).toBe(true)
        }
      }),
    )
  })

  it('stay in the frame', () => {
    fc.assert(
      fc.property(scene, ({ labels, outline }) => {
        for (const { box } of found(labels, outline)) {
          expect(box.x).toBeGreaterThanOrEqual(0)
          expect(box.y).toBeGreaterThanOrEqual(0)
          expect(box.x + box.width).toBeLessThanOrEqual(FRAME.width)
          expect(box.y + box.height).toBeLessThanOrEqual(FRAME.height)
        }
      }),
    )
  })

  it('keep off every line', () => {
    fc.assert(
      fc.property(scene, ({ labels, outline }) => {
        for (const placed of found(labels, outline)) {
          for (const { from, to } of outline) expect(along(from, to).some(point => inside(point, placed))).toBe(false)
        }
      }),
    )
  })

  it('have leaders that cross no other leader and no label', () => {
    fc.assert(
      fc.property(scene, ({ labels, outline }) => {
        const all = found(labels, outline)
        for (const [a, b] of pairs(all)) {
          expect(crosses(a.leader.from, a.leader.to, b.leader.from, b.leader.to)).toBe(false)
          expect(along(a.leader.from, a.leader.to).some(point => inside(point, b))).toBe(false)
          expect(along(b.leader.from, b.leader.to).some(point => inside(point, a))).toBe(false)
        }
      }),
    )
  })

  it('find room for a few labels about a shape with wide margins', () => {
    fc.assert(
      fc.property(fc.array(label, { maxLength: 3 }), shape, (labels, outline) => {
        const apart = pairs(labels).every(([a, b]) => Math.hypot(a.anchor.x - b.anchor.x, a.anchor.y - b.anchor.y) > 20)
        fc.pre(apart)
        expect(found(labels, outline)).toHaveLength(labels.length)
      }),
    )
  })
})

describe('a label', () => {
  it('goes the way wanted first, at the shortest reach', () => {
    const [placed] = found([{ anchor: { x: 250, y: 150 }, width: 40, height: 10, toward: 0 }], [])
    expect(placed?.leader.to).toEqual({ x: 262, y: 150 })
    expect(placed?.box).toEqual({ x: 264, y: 145, width: 40, height: 10 })
  })

  it('is not placed rather than placed badly', () => {
    const wide = { anchor: { x: 250, y: 150 }, width: 600, height: 10, toward: 0 }
    expect(placeLabels([wide], around([]))).toEqual([undefined])
  })

  it('rather turns than lets its leader cross a line', () => {
    const wall = { from: { x: 258, y: 0 }, to: { x: 258, y: 300 } }
    const [placed] = found([{ anchor: { x: 250, y: 150 }, width: 40, height: 10, toward: 0 }], [wall])
    expect(placed?.leader.to.x).toBeLessThan(258)
  })
})
