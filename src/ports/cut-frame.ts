import { type Degree, degrees, type Millimetre, radians, wrapped } from '../units.ts'

/**
 * The plane of the cutter, in the part's own frame. The cutter points along the stream, so every straight cut is a prism
 * over this plane.
 *
 *     l   across the stream, horizontal, toward growing azimuth; 0 on the liner's axis      mm
 *     b   square to both, toward the head; 0 at the middle of the finished top face         mm
 *     t   along the stream, into the bore; 0 at the middle of the finished top face         mm
 *
 * A point at azimuth φ and height z (up, from the finished top face) on a cylinder of radius q stands at
 *
 *     l = q·sin α    b = sin β·q·cos α + cos β·z    t = sin β·z − cos β·q·cos α    with α = φ − toCutter
 */
export type CutFrame = {
  /** Plan azimuth from which the cutter comes. */
  readonly toCutter: Degree
  readonly sin: number
  readonly cos: number
  readonly tan: number
}

/** The cutter of a port comes from the plan azimuth at − heading, falling by `up` on its way out. */
export function cutFrame(at: Degree, heading: Degree, up: Degree): CutFrame {
  const beta = radians(up)
  return { toCutter: at - heading, sin: Math.sin(beta), cos: Math.cos(beta), tan: Math.tan(beta) }
}

/** A point of the cutter's plane. */
export type PlanePoint = { readonly l: Millimetre; readonly b: Millimetre }

/** Distance of the near wall of a cylinder from the axis, square to l, in plan. */
export const nearWall = (radius: Millimetre, l: Millimetre): Millimetre => Math.sqrt(radius ** 2 - l ** 2)

/** Height on a cylinder, where the cutter meets it first after passing the outside. */
export const heightOn = (frame: CutFrame, radius: Millimetre, { l, b }: PlanePoint): Millimetre =>
  (b - frame.sin * nearWall(radius, l)) / frame.cos

export const azimuthOn = (frame: CutFrame, radius: Millimetre, l: Millimetre): Degree =>
  wrapped(frame.toCutter + degrees(Math.asin(l / radius)))

/** Distance along the stream at which a point of the plane meets the near wall of a cylinder. */
export const runToNearWall = (frame: CutFrame, radius: Millimetre, { l, b }: PlanePoint): Millimetre =>
  frame.tan * b - nearWall(radius, l) / frame.cos

/** The same for the far wall. */
export const runToFarWall = (frame: CutFrame, radius: Millimetre, { l, b }: PlanePoint): Millimetre =>
  frame.tan * b + nearWall(radius, l) / frame.cos
