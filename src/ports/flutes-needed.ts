import type { Millimetre } from '../units.ts'
import type { Jet } from './contour.ts'
import { type CutFrame, runToNearWall } from './cut-frame.ts'

/**
 * Length below the shank that a cutter needs when its depth follows the wall: from the bore up to the outside at each point
 * of the contour (and a quarter of the cutter inward, where the next pass begins), and up to the outside beside it, as far
 * as a thicker shank overhangs.
 */
export function flutesNeeded(
  frame: CutFrame,
  walls: { readonly bore: Millimetre; readonly outside: Millimetre },
  contour: readonly Jet[],
  cutter: Millimetre,
  shank: Millimetre,
): Millimetre {
  const overhang = Math.max(0, (shank - cutter) / 2)
  return Math.max(
    ...contour.map(point => {
      const speed = Math.hypot(point.dl, point.db)
      const beside = { l: point.l + (overhang * point.db) / speed, b: point.b - (overhang * point.dl) / speed }
      const inward = {
        l: point.l - (0.25 * cutter * point.db) / speed,
        b: point.b + (0.25 * cutter * point.dl) / speed,
      }
      const through = Math.max(runToNearWall(frame, walls.bore, point), runToNearWall(frame, walls.bore, inward))
      const here = runToNearWall(frame, walls.outside, point)
      const there = Math.abs(beside.l) < walls.outside ? runToNearWall(frame, walls.outside, beside) : here
      return through - Math.min(here, there)
    }),
  )
}
