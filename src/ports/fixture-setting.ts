import type { Shop } from '../shop/shop.ts'
import { type Degree, radians } from '../units.ts'

type Fixture = Shop['fixture']
export type Vector = readonly [number, number, number]

/** How the fixture stands for one window: the tilt, and the rotary in the sense "Y to Z". */
export type Stand = { readonly tilt: Degree; readonly rotary: Degree }

/** +1 where the head end faces +X, -1 where it faces -X. */
export const headSense = ({ headFaces }: Pick<Fixture, 'headFaces'>): 1 | -1 => (headFaces === '+X' ? 1 : -1)

/** About the rotary axis: positive turns Y toward Z. */
const turned = ([x, y, z]: Vector, angle: Degree): Vector => {
  const [cos, sin] = [Math.cos(radians(angle)), Math.sin(radians(angle))]
  return [x, y * cos - z * sin, y * sin + z * cos]
}

/** About +Y through the pivot: positive turns Z toward X. */
const tilted = ([x, y, z]: Vector, angle: Degree): Vector => {
  const [cos, sin] = [Math.cos(radians(angle)), Math.sin(radians(angle))]
  return [x * cos + z * sin, y, z * cos - x * sin]
}

/**
 * A point of the part (x toward azimuth 0, z out of the head, origin in the middle of the top face as it stands) in the
 * machine frame, whose origin is the pivot.
 */
export function toMachine(fixture: Fixture, stand: Stand, point: Vector): Vector {
  const s = headSense(fixture)
  const [x, y, z] = turned([s * point[2], -s * point[1], point[0]], stand.rotary)
  return tilted([x + fixture.faceDistance, y, z + fixture.pivotHeight], stand.tilt)
}

/** The direction in which the cutter points, -Z, as the part sees it. */
export function cutterInPart(fixture: Fixture, stand: Stand): Vector {
  const s = headSense(fixture)
  const [x, y, z] = turned(tilted([0, 0, -1], -stand.tilt), -stand.rotary)
  return [z, -s * y, s * x]
}

/** Unit vector from plan azimuth and rise. */
export function direction(azimuth: Degree, up: Degree): Vector {
  const [phi, beta] = [radians(azimuth), radians(up)]
  return [Math.cos(beta) * Math.cos(phi), Math.cos(beta) * Math.sin(phi), Math.sin(beta)]
}

/** A wrong sense or sign would cut a wrong port in every piece, so the setting is taken back into the part each time. */
export function proveDirection(fixture: Fixture, stand: Stand, wanted: Vector): void {
  const found = cutterInPart(fixture, stand)
  const off = Math.hypot(found[0] - wanted[0], found[1] - wanted[1], found[2] - wanted[2])
  if (!(off < 1e-9)) throw new Error(`the cutter stands off the stream by ${off}: wanted ${wanted}, got ${found}`)
}

/** The same for a place. */
export function provePlace(found: Vector, wanted: Vector): void {
  const off = Math.hypot(found[0] - wanted[0], found[1] - wanted[1], found[2] - wanted[2])
  if (!(off < 1e-7)) throw new Error(`the window's centre stands off by ${off} mm: wanted ${wanted}, got ${found}`)
}

/** The rotary nearest to zero that the head reaches, or nothing. */
export function withinLimits(rotary: Degree, [least, most]: readonly [Degree, Degree]): Degree | undefined {
  return [rotary, rotary - 360, rotary + 360]
    .toSorted((a, b) => Math.abs(a) - Math.abs(b))
    .find(angle => angle >= least && angle <= most)
}
