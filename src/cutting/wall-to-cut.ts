import { nearestBandAt } from '../band.ts'
import { BREAK_THROUGH } from '../ports/plan-window.ts'
import type { EdgePoint, PortWindow } from '../ports/port.ts'
import type { Shape } from '../shape.ts'
import { type Millimetre, radians } from '../units.ts'

/**
 * The longest way through the wall along the cutter's axis, round the window, and the break-through: how deep a cut goes
 * whose levels follow the curved wall. Points of the outlines on the outside and on the bore as cut lie in pairs on lines
 * along the cutter.
 */
export function wallToCut({ outline, plunge }: PortWindow, after: Shape, depth: Millimetre): Millimetre {
  const outside = nearestBandAt(after.outside, depth)
  const bore = nearestBandAt(after.bore, depth)
  if (outline.asCut.length === 0 || !outside || !bore) {
    return plunge.zTop - plunge.zThrough + BREAK_THROUGH
  }
  const walls = outline.asCut.flatMap((point, index) => {
    const beyond = outline.outside[index]
    return beyond ? [distance(point, bore.diameter / 2, beyond, outside.diameter / 2)] : []
  })
  return Math.max(...walls) + BREAK_THROUGH
}

function distance(a: EdgePoint, atRadius: Millimetre, b: EdgePoint, toRadius: Millimetre): Millimetre {
  const [from, to] = [radians(a.azimuth), radians(b.azimuth)]
  return Math.hypot(
    toRadius * Math.cos(to) - atRadius * Math.cos(from),
    toRadius * Math.sin(to) - atRadius * Math.sin(from),
    b.depth - a.depth,
  )
}
