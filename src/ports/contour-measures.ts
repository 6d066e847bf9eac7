import type { Millimetre, SquareMillimetre } from '../units.ts'
import { type Contour, curvature, type Jet, QUADRATURE } from './contour.ts'
import { type CutFrame, heightOn, nearWall } from './cut-frame.ts'
import { greatest } from './extreme.ts'

function integral(contour: Contour, of: (point: Jet) => number): number {
  let sum = 0
  for (const piece of contour) {
    for (const [abscissa, weight] of QUADRATURE) {
      sum += (weight * (of(piece((1 - abscissa) / 2)) + of(piece((1 + abscissa) / 2)))) / 2
    }
  }
  return sum
}

/** Area seen along the stream: the section of the prism. */
export const flowArea = (contour: Contour): SquareMillimetre =>
  integral(contour, ({ l, b, dl, db }) => (l * db - b * dl) / 2)

/** Area of the window on a cylinder, developed. */
export const developedArea = (frame: CutFrame, radius: Millimetre, contour: Contour): SquareMillimetre =>
  integral(contour, point => -heightOn(frame, radius, point) * ((point.dl * radius) / nearWall(radius, point.l)))

export const girth = (contour: Contour): Millimetre => integral(contour, ({ dl, db }) => Math.hypot(dl, db))

/** Radius of the tightest inside corner: none of the pocket's corners lets a larger circle in. */
export const tightestCorner = (contour: Contour): Millimetre => 1 / greatest(contour, curvature, 0).value
