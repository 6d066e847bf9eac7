import type { Plan } from '../plan/plan.ts'
import type { PlannedPort, PortWindow } from '../ports/port.ts'
import type { Shape } from '../shape.ts'
import { type Degree, type Millimetre, wrapped } from '../units.ts'
import { boreOf, outsideOf, radiusAt } from './profile.ts'

/** The part as the last operation leaves it. */
export const finishedShape = ({ operations }: Plan): Shape | undefined => operations.at(-1)?.shape

/** The part as the ports are milled into it. */
export const milledShape = ({ operations }: Plan): Shape | undefined =>
  operations.find(({ shape }) => shape.ported)?.shape

/** The depth at which the ports lie, in the middle of them all. */
export const portBelt = (ports: readonly PlannedPort[]): Millimetre =>
  (Math.min(...ports.map(({ top }) => top)) + Math.max(...ports.map(({ bottom }) => bottom))) / 2

export const boreRadius = (shape: Shape, depth: Millimetre): Millimetre => radiusAt(boreOf(shape), depth)
export const outsideRadiusAt = (shape: Shape, depth: Millimetre): Millimetre => radiusAt(outsideOf(shape), depth)

/** Azimuths of a window's side edges on one of its outlines: it reaches counter-clockwise from the first to the second. */
export function sides(
  window: PortWindow,
  outline: keyof PortWindow['outline'] & ('finished' | 'asCut' | 'outside'),
): readonly [Degree, Degree] {
  const azimuths = window.outline[outline].map(({ azimuth }) => window.at + wrapped(azimuth - window.at))
  return [Math.min(...azimuths), Math.max(...azimuths)]
}

/** The middle of the widest stretch of bore wall without a window, to the nearest 10°: where a map is best cut open. */
export function blankAzimuth(ports: readonly PlannedPort[], outline: 'finished' | 'outside' = 'finished'): Degree {
  const windows = ports
    .flatMap(({ windows }) => windows.map(window => sides(window, outline)))
    .map(([from, to]): readonly [Degree, Degree] => [wrapped(from), wrapped(from) + to - from])
    .toSorted((a, b) => a[0] - b[0])
  const gaps = windows.map(([, end], index) => {
    const next = windows[index + 1]?.[0] ?? (windows[0]?.[0] ?? 0) + 360
    return { from: end, width: next - end }
  })
  const [widest] = gaps.toSorted((a, b) => b.width - a.width || a.from - b.from)
  return widest ? wrapped(Math.round((widest.from + widest.width / 2) / 10) * 10) : 180
}

/** Which way a stream points in plan, from outside into the bore: turned away from azimuth 0 by `back`. */
export function streamAzimuth({ at, back }: PlannedPort): Degree {
  const heading = wrapped(at) === 180 ? 0 : Math.sign(wrapped(at)) * back
  return wrapped(at + 180 - heading)
}
