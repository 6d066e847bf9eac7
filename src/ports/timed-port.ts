import type { Degree, SquareMillimetre } from '../units.ts'
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

/** Uncovered area from opening to closing, at even degrees and at both ends. */
export function curveOf({ planned: { opens, closes }, area }: TimedPort): NonNullable<PlannedPort['uncovered']> {
  const first = Math.floor(opens / STEP) + 1
  const between = Array.from({ length: Math.ceil(closes / STEP) - first }, (_, i) => (first + i) * STEP)
  return [opens, ...between, closes].map(angle => ({ angle, area: Math.max(0, area(angle)) }))
}
