import { fixed } from '../figures.ts'
import type { PlannedPort, PortWindow } from '../ports/port.ts'
import type { Fixture } from '../shop/shop.ts'
import { type Degree, type Millimetre, radians } from '../units.ts'

/** A point of the set-up's elevation: machine X to the right, Z up, from the tilt pivot. */
export type MachinePoint = { readonly x: Millimetre; readonly z: Millimetre }

/** One set-up: all windows milled at one tilt. */
export type SetUp = {
  readonly tilt: Degree
  readonly windows: readonly { readonly port: PlannedPort; readonly window: PortWindow }[]
}

/** The set-ups that the ports want, in the order in which the part file names them. */
export function setUpsOf(ports: readonly PlannedPort[]): readonly SetUp[] {
  const windows = ports.flatMap(port => port.windows.map(window => ({ port, window })))
  const tilts = [...new Set(windows.map(({ window }) => tiltWritten(window.tilt)))]
  return tilts.flatMap(written => {
    const own = windows.filter(({ window }) => tiltWritten(window.tilt) === written)
    return own[0] ? [{ tilt: own[0].window.tilt, windows: own }] : []
  })
}

const tiltWritten = (tilt: Degree): Degree => Number(fixed(tilt, 3))

/** `fixture-15`, `fixture--10`, `fixture-7.5`. */
export const fixtureName = ({ tilt }: SetUp): string => `fixture-${tiltWritten(tilt)}`

/** Tilt turns about +Y, Z toward X: x' = x cos t + z sin t, z' = z cos t - x sin t. ISO 841 axes. */
export function tilted({ x, z }: MachinePoint, tilt: Degree): MachinePoint {
  const [sine, cosine] = [Math.sin(radians(tilt)), Math.cos(radians(tilt))]
  return { x: x * cosine + z * sine, z: z * cosine - x * sine }
}

/** A point of the part in the plane of the rotary's axis: `depth` below the finished top face, `up` above the centre line. */
export const inMachine = (fixture: Fixture, tilt: Degree, depth: Millimetre, up: Millimetre): MachinePoint =>
  tilted({ x: fixture.faceDistance - (fixture.headFaces === '+X' ? depth : -depth), z: fixture.pivotHeight + up }, tilt)

export type WindowPlace = MachinePoint & { readonly names: readonly string[]; readonly window: PortWindow }

/** Windows that stand at the same X and Z share a place: a mirrored pair does. */
export function placesOf({ windows }: SetUp): readonly WindowPlace[] {
  const places = new Map<string, WindowPlace>()
  for (const { port, window } of windows) {
    const key = `${fixed(window.x, 4)} ${fixed(window.z, 4)}`
    const names = places.get(key)?.names ?? []
    const all = names.includes(port.name) ? names : [...names, port.name]
    places.set(key, { names: all, x: window.x, z: window.z, window })
  }
  return [...places.values()]
}
