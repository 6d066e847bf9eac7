import { area, EndType, inflatePathsD, JoinType } from 'clipper2-ts'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { distanceTo, type Flat } from '../../src/ports/path/closed-line.ts'
import { inwardLine } from '../../src/ports/path/inward-line.ts'
import { hasInside, inside } from '../../src/ports/path/offset-loops.ts'

/** A rectangle with round corners, its long sides bowed in or out: what windows look like from the cutter. */
function windowLike(width: number, height: number, corner: number, bow: number): readonly Flat[] {
  const quarter = (cx: number, cy: number, from: number): readonly Flat[] =>
    Array.from({ length: 13 }, (_, i) => {
      const turn = ((from + (90 * i) / 12) * Math.PI) / 180
      return { x: cx + corner * Math.cos(turn), y: cy + corner * Math.sin(turn) }
    })
  const [a, b] = [width / 2 - corner, height / 2 - corner]
  const corners = [...quarter(a, b, 0), ...quarter(-a, b, 90), ...quarter(-a, -b, 180), ...quarter(a, -b, 270)]
  return corners.map(({ x, y }) => ({ x, y: y + bow * (1 - (x / (width / 2)) ** 2) }))
}

const girth = (loop: readonly Flat[]): number =>
  loop.reduce((sum, at, i) => {
    const to = loop[(i + 1) % loop.length] ?? at
    return sum + Math.hypot(to.x - at.x, to.y - at.y)
  }, 0)

const anyWindow = fc.record({
  width: fc.double({ min: 5, max: 30, noNaN: true }),
  height: fc.double({ min: 5, max: 20, noNaN: true }),
  corner: fc.double({ min: 1, max: 2.4, noNaN: true }),
  bow: fc.double({ min: -2, max: 2, noNaN: true }),
  distance: fc.double({ min: 0.2, max: 4, noNaN: true }),
})

describe('the lines inside an outline, against a polygon library (clipper2)', () => {
  it('hold the same area, to the thousandth that arcs are drawn to', () => {
    fc.assert(
      fc.property(anyWindow, ({ width, height, corner, bow, distance }) => {
        const outline = windowLike(width, height, corner, bow)
        const theirs = inflatePathsD(
          [outline.map(at => ({ ...at }))],
          -distance,
          JoinType.Round,
          EndType.Polygon,
          2,
          6,
          0.001,
        )
        const ours = inside(outline, distance)
        const areaOf = (loops: readonly (readonly Flat[])[]): number =>
          loops.reduce((sum, loop) => sum + Math.abs(area(loop.map(({ x, y }) => ({ x, y })))), 0)
        expect(Math.abs(areaOf(ours) - areaOf(theirs))).toBeLessThan(0.002 * girth(outline))
      }),
    )
  })

  it('are there when the library has any, whether width, middle or they themselves tell', () => {
    fc.assert(
      fc.property(anyWindow, ({ width, height, corner, bow, distance }) => {
        const outline = windowLike(width, height, corner, bow)
        const there = (by: number): boolean => {
          const path = [outline.map(at => ({ ...at }))]
          return inflatePathsD(path, -by, JoinType.Round, EndType.Polygon, 2, 6, 0.001).length > 0
        }
        // Within the arcs' own tolerance of the last line that fits either answer is right.
        fc.pre(there(distance - 0.002) === there(distance + 0.002))
        expect(hasInside(outline, distance)).toBe(there(distance))
      }),
    )
  })

  it('are not there in a narrow arch, whose middle has room but lies outside it', () => {
    const arcAt = (radius: number, degrees: readonly number[]): readonly Flat[] =>
      degrees.map(at => ({ x: radius * Math.cos((at * Math.PI) / 180), y: radius * Math.sin((at * Math.PI) / 180) }))
    const along = Array.from({ length: 61 }, (_, i) => 30 + 2 * i)
    const arch = [...arcAt(20, along), ...arcAt(18, along.toReversed())]
    expect(hasInside(arch, 1.1)).toBe(false)
    expect(hasInside(arch, 0.9)).toBe(true)
  })

  it('round a hollow corner as the library does, and leave out what a straight side uses up', () => {
    const box = [
      { x: -10, y: -5 },
      { x: 10, y: -5 },
      { x: 10, y: 5 },
      { x: 0, y: 2 },
      { x: -10, y: 5 },
    ]
    const cut = [
      { x: -10, y: 4 },
      { x: -10, y: -4 },
      { x: -9, y: -5 },
      { x: 10, y: -5 },
      { x: 10, y: 5 },
      { x: -9, y: 5 },
    ]
    for (const outline of [box, cut]) {
      const theirs = inflatePathsD([outline.map(at => ({ ...at }))], -2.5, JoinType.Round, EndType.Polygon, 2, 6, 0.001)
      const [ours = []] = inwardLine(outline, 2.5) ?? []
      const sizeOf = (loop: readonly Flat[]): number => Math.abs(area(loop.map(({ x, y }) => ({ x, y }))))
      expect(sizeOf(ours)).toBeCloseTo(sizeOf(theirs[0] ?? []), 2)
    }
    expect(inwardLine(cut, 2.5)?.[0]).toHaveLength(4)
  })

  it('lie at the distance and no nearer', () => {
    fc.assert(
      fc.property(anyWindow, ({ width, height, corner, bow, distance }) => {
        const outline = windowLike(width, height, corner, bow)
        for (const loop of inside(outline, distance)) {
          for (const at of loop) expect(distanceTo(outline, at)).toBeGreaterThan(distance - 0.0011)
        }
      }),
    )
  })

  it('are none where the outline is too narrow', () => {
    expect(inside(windowLike(10, 6, 1, 0), 3.001)).toEqual([])
  })
})
