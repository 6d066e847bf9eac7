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
  const outside = radiusAt(after.outside, depth)
  const bore = radiusAt(after.bore, depth)
  if (outline.asCut.length === 0 || outside === undefined || bore === undefined) {
    return plunge.zTop - plunge.zThrough + BREAK_THROUGH
  }
  const walls = outline.asCut.flatMap((point, index) => {
    const beyond = outline.outside[index]
    return beyond ? [distance(point, bore, beyond, outside)] : []
  })
  return Math.max(...walls) + BREAK_THROUGH
}

/** Radius of the band at a depth, or of the last one. */
function radiusAt(bands: Shape['outside'], depth: Millimetre): Millimetre | undefined {
  const band = bands.find(({ from, to }) => depth >= from && depth < to) ?? bands.at(-1)
  return band && band.diameter / 2
}

function distance(a: EdgePoint, atRadius: Millimetre, b: EdgePoint, toRadius: Millimetre): Millimetre {
  const [from, to] = [radians(a.azimuth), radians(b.azimuth)]
  return Math.hypot(
    toRadius * Math.cos(to) - atRadius * Math.cos(from),
    toRadius * Math.sin(to) - atRadius * Math.sin(from),
    b.depth - a.depth,
  )
}
