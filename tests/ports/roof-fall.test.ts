import { expect, it } from 'vitest'
import { planPorts } from '../../src/ports/plan-ports.ts'
import { linerOf, milledAt, shopWith } from './liner.ts'

const CORNER = 3

/**
 * Geometry, without the code's frames: straight rulings at `up` to the level meet a bore of R. Over the width of the cut the
 * roof is level across, and a corner is an arc. From the highest of the edge to the lowest of the roof between the corners.
 */
function fall(R: number, up: number, width: number): number {
  const tilt = (up * Math.PI) / 180
  const flat = width / 2 - CORNER
  const height = (l: number): number => {
    const past = Math.max(0, Math.abs(l) - flat)
    const roof = (Math.sqrt(CORNER ** 2 - past ** 2) - CORNER) / Math.cos(tilt)
    return roof - Math.tan(tilt) * Math.sqrt(R ** 2 - l ** 2)
  }
  const across = (half: number) => Array.from({ length: 4001 }, (_, i) => height(half * (i / 2000 - 1)))
  return Math.max(...across(width / 2)) - Math.min(...across(flat))
}

it.each([
  [15, 16],
  [30, 16],
  [30, 20],
  [-15, 16],
  [-30, 10],
])('a straight roof that rises at %d° over a width of %d mm falls as far as its rulings do', (up, width) => {
  const corner = { on: 'cutter', radius: CORNER } as const
  const port = { at: 0, up, top: 40, height: 12, width, cut: 'straight', corner } as const
  const { ports } = planPorts(linerOf([port]), shopWith(), milledAt(48, 55))
  expect(ports[0]?.windows[0]?.roofFall).toBeCloseTo(fall(24, up, width), 5)
})
