import type { Millimetre } from '../units.ts'
import type { Jet } from './contour.ts'
import { type CutFrame, type PlanePoint, runToNearWall } from './cut-frame.ts'

/** The last pass goes past the bore as far inward as the next loop would begin: this share of the cutter. */
const INWARD = 0.25

/**
 * Length below the shank that a cutter needs: from its tip on the lowest pass round the contour, at the bore under its rim
 * and a quarter of it inward, up to the highest place of the outside anywhere under the disc of the shank. The place that
 * may need most is looked at first, until no other can need more.
 */
export function flutesNeeded({
  frame,
  walls,
  contour,
  cutter,
  shank,
}: {
  readonly frame: CutFrame
  readonly walls: { readonly bore: Millimetre; readonly outside: Millimetre }
  readonly contour: readonly Jet[]
  readonly cutter: Millimetre
  readonly shank: Millimetre
}): Millimetre {
  const disc = Math.max(cutter, shank) / 2
  const places = contour.map(point => {
    const speed = Math.hypot(point.dl, point.db)
    const inward = (by: Millimetre): PlanePoint => ({
      l: point.l - (by * point.db) / speed,
      b: point.b + (by * point.dl) / speed,
    })
    const through = Math.max(
      runToNearWall(frame, walls.bore, point),
      runToNearWall(frame, walls.bore, inward(INWARD * cutter)),
    )
    const axis = inward(cutter / 2)
    return { through, axis, most: through - noTouchBefore(frame, walls.outside, axis, disc) }
  })
  let needed = Number.NEGATIVE_INFINITY
  for (const { through, axis, most } of places.toSorted((a, b) => b.most - a.most)) {
    if (most <= needed) break
    needed = Math.max(needed, through - firstTouch(frame, walls.outside, axis, disc))
  }
  return needed
}

/** The run to the wall at the corner of the square round the disc where it is least: the disc touches no sooner. */
const noTouchBefore = (frame: CutFrame, radius: Millimetre, { l, b }: PlanePoint, disc: Millimetre): Millimetre =>
  runToNearWall(frame, radius, { l: Math.max(0, Math.abs(l) - disc), b }) - Math.abs(frame.tan) * disc

const HALVINGS = 24

/**
 * How far along the stream a disc square to it goes before it touches the near wall of a cylinder. The run to the wall is
 * convex over the disc, so it is least on the rim, on the side that the wall leans to, where its slope across the stream
 * changes sign: found by halving, and never less than at the place that halving ends on. Source: derived, geometry.
 */
function firstTouch(frame: CutFrame, radius: Millimetre, { l, b }: PlanePoint, disc: Millimetre): Millimetre {
  const lean = frame.tan > 0 ? -1 : 1
  const steep = Math.abs(frame.tan)
  const rim = (across: Millimetre): Millimetre => Math.sqrt(Math.max(0, disc ** 2 - (across - l) ** 2))
  // Past the limb of the cylinder there is no wall.
  let [low, high] = [Math.max(l - disc, -radius), Math.min(l + disc, radius)]
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (low + high) / 2
    const slope = (steep * (middle - l)) / rim(middle) + middle / (frame.cos * Math.sqrt(radius ** 2 - middle ** 2))
    if (slope < 0) low = middle
    else high = middle
  }
  const across = (low + high) / 2
  return runToNearWall(frame, radius, { l: across, b: b + lean * rim(across) })
}
