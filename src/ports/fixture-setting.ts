import { cutterInPart, type Placed, type Stand, type Vector } from '../machine-frame.ts'
import { type Degree, radians } from '../units.ts'

/** Unit vector from plan azimuth and rise. */
export function direction(azimuth: Degree, up: Degree): Vector {
  const [phi, beta] = [radians(azimuth), radians(up)]
  return [Math.cos(beta) * Math.cos(phi), Math.cos(beta) * Math.sin(phi), Math.sin(beta)]
}

/** A wrong sense or sign would cut a wrong port in every piece, so the setting is taken back into the part each time. */
export function proveDirection(fixture: Placed, stand: Stand, wanted: Vector): void {
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
