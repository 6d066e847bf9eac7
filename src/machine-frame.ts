import { type Degree, type Millimetre, radians } from './units.ts'

/** The one way from part to machine and back, after ISO 841: see DEVELOPERS.md, axes and signs. */
export type Vector = readonly [number, number, number]

/** What places the part in the machine. */
export type Placed = {
  readonly headFaces: '+X' | '-X'
  readonly faceDistance: Millimetre
  readonly pivotHeight: Millimetre
}

/** How the fixture stands for one window: the tilt, and the rotary in the sense "Y to Z". */
export type Stand = { readonly tilt: Degree; readonly rotary: Degree }

/** +1 where the head end faces +X, -1 where it faces -X. */
export const headSense = ({ headFaces }: Pick<Placed, 'headFaces'>): 1 | -1 => (headFaces === '+X' ? 1 : -1)

/** What a tilt axis of the machine is sent to, and shows, for a tilt of ours. */
export const tiltShown = (
  { positiveTilt }: { readonly positiveTilt: 'Z to X' | 'X to Z' },
  tilt: Degree,
  // Adding zero turns a negative zero into a plain one.
): Degree => (positiveTilt === 'Z to X' ? tilt : 0 - tilt) + 0

/** About the rotary axis: positive turns Y toward Z. */
const turned = ([x, y, z]: Vector, angle: Degree): Vector => {
  const [cos, sin] = [Math.cos(radians(angle)), Math.sin(radians(angle))]
  return [x, y * cos - z * sin, y * sin + z * cos]
}

/** About +Y through the pivot: positive turns Z toward X. */
export const tilted = ([x, y, z]: Vector, angle: Degree): Vector => {
  const [cos, sin] = [Math.cos(radians(angle)), Math.sin(radians(angle))]
  return [x * cos + z * sin, y, z * cos - x * sin]
}

/**
 * A point of the part (x toward azimuth 0, z out of the head, origin in the middle of the top face as it stands) in the
 * machine frame, whose origin is the pivot.
 */
export function toMachine(fixture: Placed, stand: Stand, point: Vector): Vector {
  const s = headSense(fixture)
  const [x, y, z] = turned([s * point[2], -s * point[1], point[0]], stand.rotary)
  return tilted([x + fixture.faceDistance, y, z + fixture.pivotHeight], stand.tilt)
}

/** The direction in which the cutter points, -Z, as the part sees it. */
export function cutterInPart(fixture: Placed, stand: Stand): Vector {
  const s = headSense(fixture)
  const [x, y, z] = turned(tilted([0, 0, -1], -stand.tilt), -stand.rotary)
  return [z, -s * y, s * x]
}
