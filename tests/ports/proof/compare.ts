import { expect } from 'vitest'
import type { PlannedPort, PortWindow } from '../../../src/ports/port.ts'
import { radians, wrapped } from '../../../src/units.ts'
import type { Proof } from './prove.ts'

type Flat = readonly [number, number]

/** The measured windows against the planned ones, mm on the developed finished bore. */
export function expectProved(
  proof: Proof,
  ports: readonly PlannedPort[],
  radius: number,
  shiftOf: (top: number) => number,
): void {
  expect(proof.rapidVolume).toBeLessThan(1e-6)
  expect(proof.strayVolume).toBeLessThan(1e-3)
  expect(proof.struckVolume).toBeLessThan(1e-3)
  expect(proof.over).toBeGreaterThan(1)
  const windows = ports.flatMap(port => port.windows)
  const own = new Map<PortWindow, Flat[]>(windows.map(window => [window, []]))
  for (const { azimuth, depth } of proof.edges) {
    const window = windows.find(
      ({ at, outline }) =>
        outline.finished.some(
          point => Math.abs(wrapped(azimuth - at)) <= Math.abs(wrapped(point.azimuth - at)) + 0.5,
        ) &&
        outline.finished.some(point => point.depth <= depth + 0.5) &&
        outline.finished.some(point => point.depth >= depth - 0.5),
    )
    if (!window) throw new Error(`an edge at ${azimuth}°, ${depth} mm belongs to no window`)
    own.get(window)?.push([radius * radians(wrapped(azimuth - window.at)), depth])
  }
  for (const { top, windows } of ports)
    for (const window of windows) {
      const found = (own.get(window) ?? []).map(([x, depth]): Flat => [x, depth + shiftOf(top)])
      expectWindow(window, found, radius)
    }
}

function expectWindow(window: PortWindow, found: readonly Flat[], radius: number): void {
  const wanted = (window.outline.unhardened ?? window.outline.finished).map(
    ({ azimuth, depth }): Flat => [radius * radians(wrapped(azimuth - window.at)), depth],
  )
  expect(found.length).toBeGreaterThan(40)
  for (const axis of [0, 1] as const) {
    const [a, b] = [found.map(point => point[axis]), wanted.map(point => point[axis])]
    expect(Math.abs(Math.min(...a) - Math.min(...b))).toBeLessThan(0.01)
    expect(Math.abs(Math.max(...a) - Math.max(...b))).toBeLessThan(0.01)
  }
  const off = Math.max(...found.map(point => distanceTo(point, wanted)))
  expect(off).toBeLessThan(0.01)
  const girth = wanted.reduce(
    (sum, p, i) => sum + Math.hypot(p[0] - (wanted.at(i - 1)?.[0] ?? 0), p[1] - (wanted.at(i - 1)?.[1] ?? 0)),
    0,
  )
  // Before its wall has grown a window is larger than drawn.
  const area = window.outline.unhardened ? areaOf(wanted) : window.area.window
  expect(Math.abs(areaOf(found) - area)).toBeLessThan(0.01 * girth)
}

function distanceTo(point: Flat, outline: readonly Flat[]): number {
  return Math.min(
    ...outline.map((from, i) => {
      const to = outline[(i + 1) % outline.length] ?? from
      const [dx, dy] = [to[0] - from[0], to[1] - from[1]]
      const along = ((point[0] - from[0]) * dx + (point[1] - from[1]) * dy) / (dx * dx + dy * dy || 1)
      const t = Math.min(1, Math.max(0, along))
      return Math.hypot(point[0] - from[0] - t * dx, point[1] - from[1] - t * dy)
    }),
  )
}

/** The edge's points in order round their middle, which sees them all. */
function areaOf(points: readonly Flat[]): number {
  const middle = points.reduce((sum, p): Flat => [sum[0] + p[0] / points.length, sum[1] + p[1] / points.length], [
    0, 0,
  ] as Flat)
  const angle = (p: Flat): number => Math.atan2(p[1] - middle[1], p[0] - middle[0])
  const round = points.toSorted((a, b) => angle(a) - angle(b))
  return Math.abs(
    round.reduce((sum, p, i) => {
      const q = round[(i + 1) % round.length] ?? p
      return sum + (p[0] * q[1] - q[0] * p[1]) / 2
    }, 0),
  )
}
