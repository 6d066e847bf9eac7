import type { Degree, SquareMillimetre } from '../units.ts'
import type { Uncovering } from './gas-exchange.ts'
import type { PlannedPort } from './port.ts'
import type { PortDesign } from './port-design.ts'
import type { Crank } from './timing.ts'
import { uncoveredArea } from './uncovered-area.ts'

/** A planned port that the crown opens, with its uncovered flow area by crank angle. */
export type TimedPort = {
  readonly planned: PlannedPort & { readonly opens: Degree; readonly closes: Degree }
  readonly area: (angle: Degree) => SquareMillimetre
}

/** Nothing for a port that the crown does not time. */
export function timedPort(planned: PlannedPort, design: PortDesign, crank: Crank): TimedPort | undefined {
  const { opens, closes } = planned
  if (opens === undefined || closes === undefined) return undefined
  const contours = design.windows.map(({ contour }) => contour)
  const above = uncoveredArea(design.frame, design.radius, contours)
  return { planned: { ...planned, opens, closes }, area: angle => above(-crank.crownDepth(angle)) }
}

/** Spacing of the points that curves are drawn from. */
const STEP: Degree = 2

/** Uncovered area of ports together, from the first opening to the last closing: at even degrees and wherever one opens or closes. */
export function curveOf(ports: readonly TimedPort[]): readonly Uncovering[] {
  const ends = ports.flatMap(({ planned: { opens, closes } }) => [opens, closes])
  const [first, last] = [Math.min(...ends), Math.max(...ends)]
  const start = Math.floor(first / STEP) + 1
  const even = Array.from({ length: Math.ceil(last / STEP) - start }, (_, i) => (start + i) * STEP)
  const angles = [...new Set([...ends, ...even])].toSorted((a, b) => a - b)
  return angles.map(angle => ({
    angle,
    area: ports.reduce((total, { area }) => total + Math.max(0, area(angle)), 0),
  }))
}
