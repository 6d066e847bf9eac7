import { type Millimetre, radians } from '../../units.ts'
import type { PortWindow } from '../port.ts'

/** Machine Z at which the cutter, standing over a machine X and Y, meets a cylinder of the part. */
export type WindowWalls = {
  readonly outside: (x: Millimetre, y: Millimetre) => Millimetre
  /** As milled. */
  readonly bore: (x: Millimetre, y: Millimetre) => Millimetre
  readonly farWall: (x: Millimetre, y: Millimetre) => Millimetre
}

/**
 * The cylinders under a window's setting. Along X the wall falls with the tilt's tangent; along Y it is round:
 *
 *     Z = z − tan(tilt)·(x − x₀) + (√(q² − y²) − √(r² − y₀²)) / cos(tilt)
 *
 * with q the radius of the cylinder and r that of the finished bore, on which x₀, y₀, z stand. Source: derived, geometry.
 */
export function windowWalls(window: PortWindow): WindowWalls {
  const { walls, tilt, x: x0, crossOffset: y0, z } = window
  const [tan, cos] = [Math.tan(radians(tilt)), Math.cos(radians(tilt))]
  const reference = Math.sqrt(walls.finished ** 2 - y0 ** 2)
  const on =
    (radius: Millimetre, side: 1 | -1) =>
    (x: Millimetre, y: Millimetre): Millimetre =>
      z - tan * (x - x0) + (side * Math.sqrt(Math.max(0, radius ** 2 - y ** 2)) - reference) / cos
  return { outside: on(walls.outside, 1), bore: on(walls.bore, 1), farWall: on(walls.bore, -1) }
}
