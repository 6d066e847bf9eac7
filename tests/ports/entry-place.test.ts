import { describe, expect, it } from 'vitest'
import { ENTRY_WALL, entryPlace } from '../../src/ports/entry-hole.ts'
import { rounded } from '../cutting/hand-made.ts'

/** A window 8 along X and 12 wide, its middle at X 50 and so far along Y. */
const windowAt = (y0: number) => rounded(12, 8, 2).map(({ x, y }) => ({ x: x + 50, y: y + y0 }))
const RADIUS = 1.65
const place = (y0: number, away: -1 | 1 = -1, side: -1 | 0 | 1 = 0) =>
  entryPlace(windowAt(y0), { x: 50, y: y0, room: 4 }, RADIUS, { side, away })

// Plane geometry: a hole of 3.3 and 0.2 of wall leave its middle 1.85 from an edge.
describe('the entry hole', () => {
  it('stands on the centre line of a window that reaches over it, by the edge that times nothing', () => {
    // To a hundredth, to the side that leaves more.
    const beside = 4 - RADIUS - ENTRY_WALL
    for (const [{ x, y, room }, away] of [
      [place(0), -1],
      [place(0, 1), 1],
      // Off the middle of the window, but where the outside is level.
      [place(3), -1],
    ] as const) {
      expect(y).toBe(0)
      expect(away * (x - 50)).toBeLessThanOrEqual(beside + 1e-9)
      expect(away * (x - 50)).toBeGreaterThan(beside - 0.011)
      expect(room).toBeGreaterThanOrEqual(1.85 - 1e-9)
    }
  })

  it.each([-1, 1] as const)(
    'keeps its wall when its place is rounded, whichever way is away from the edge: %d',
    away => {
      for (const radius of [1.503, 1.504, 1.647, 1.653, 1.6587]) {
        const at = entryPlace(windowAt(0), { x: 50, y: 0, room: 4 }, radius, { side: 0, away })
        expect(at.room).toBeGreaterThanOrEqual(radius + ENTRY_WALL - 1e-9)
        expect(at.room).toBeLessThan(radius + ENTRY_WALL + 0.011)
      }
    },
  )

  it('stands by the nearer side of a window that does not, as near to the centre line as there is room', () => {
    for (const y0 of [5, 9, -9]) {
      const { x, y, room } = place(y0)
      expect(x).toBe(50)
      expect(y).toBeCloseTo(Math.sign(y0) * (Math.abs(y0) - 6 + 1.85), 1)
      expect(room).toBeGreaterThanOrEqual(1.85 - 0.006)
    }
  })

  it('of a pair stands as in a mirror', () => {
    for (const y0 of [0, 3, 5, 9]) {
      const [right, left] = [place(y0, -1, 1), place(-y0, -1, -1)]
      expect(left.x).toBe(right.x)
      expect(left.y + right.y).toBeCloseTo(0, 12)
    }
  })

  it('stays in the middle where a window has no more room', () => {
    const small = rounded(3.6, 3.6, 1.2).map(({ x, y }) => ({ x, y: y + 10 }))
    expect(entryPlace(small, { x: 0, y: 10, room: 1.8 }, RADIUS, { side: 0, away: -1 })).toMatchObject({ x: 0, y: 10 })
  })
})
