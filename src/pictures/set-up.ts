import { fixed } from '../figures.ts'
import { tilted, toMachine } from '../machine-frame.ts'
import type { Plan } from '../plan/plan.ts'
import type { PlannedPort, PortWindow } from '../ports/port.ts'
import type { Shape } from '../shape.ts'
import type { Fixture } from '../shop/shop.ts'
import type { Degree, Millimetre } from '../units.ts'
import { type DrawnDatum, drawnDatum } from './datum-marks.ts'

/** A point of the set-up's elevation: machine X to the right, Z up, from the tilt pivot. */
export type MachinePoint = { readonly x: Millimetre; readonly z: Millimetre }

/** One set-up: all windows milled at one tilt. */
export type SetUp = {
  readonly tilt: Degree
  /** Milled before the windows, at tilt 0. */
  readonly datum?: DrawnDatum
  readonly windows: readonly { readonly port: PlannedPort; readonly window: PortWindow; readonly rougher?: Rougher }[]
}

/** A larger cutter that goes before the one that finishes. */
export type Rougher = { readonly diameter: Millimetre; readonly stickOut: Millimetre }

function rougherOf(
  setUps: Plan['setUps'],
  { port, at, window }: { port: string; at: Degree; window: number },
): Rougher | undefined {
  const own = setUps.find(
    ({ work, windows }) =>
      work === 'rough windows' && windows.some(one => one.port === port && one.at === at && one.window === window),
  )
  return own?.stickOut === undefined ? undefined : { diameter: own.diameter, stickOut: own.stickOut }
}

/** Tilt by tilt, in the order of setting that the plan has decided. */
export function setUpsOf({
  ports,
  fixture,
  setUps,
  clocking,
}: Pick<Plan, 'ports' | 'fixture' | 'setUps' | 'clocking'>): readonly SetUp[] {
  const datum = drawnDatum(clocking?.datum)
  return (fixture?.tilts ?? []).map(({ tilt }) => ({
    tilt,
    ...(tilt === 0 && datum?.clamping === 'with the ports' ? { datum } : {}),
    windows: (fixture?.order ?? []).flatMap(step => {
      const port = ports.find(({ name, at }) => step.tilt === tilt && name === step.port && at === step.at)
      const window = port?.windows[step.window - 1]
      const rougher = rougherOf(setUps, step)
      return port && window ? [{ port, window, ...(rougher && { rougher }) }] : []
    }),
  }))
}

const tiltWritten = (tilt: Degree): Degree => Number(fixed(tilt, 3))

/** `fixture-15`, `fixture--10`, `fixture-7.5`. */
export const fixtureName = ({ tilt }: SetUp): string => `fixture-${tiltWritten(tilt)}`

/** A place over the rotary's axis at zero tilt, tilted. */
export function tiltedPlace({ x, z }: MachinePoint, tilt: Degree): MachinePoint {
  const [tx, , tz] = tilted([x, 0, z], tilt)
  return { x: tx, z: tz }
}

/** How the part stands: the fixture, its tilt, and the shape that is milled, whose top face as it stands is at `face-distance`. */
export type Standing = { readonly fixture: Fixture; readonly tilt: Degree; readonly shape: Pick<Shape, 'top'> }

/** A point of the part in the plane of the rotary's axis: `depth` below the finished top face, `up` above the centre line. */
export function inMachine({ fixture, tilt, shape }: Standing, depth: Millimetre, up: Millimetre): MachinePoint {
  const [x, , z] = toMachine(fixture, { tilt, rotary: 0 }, [up, 0, shape.top - depth])
  return { x, z }
}

export type WindowPlace = MachinePoint & {
  readonly names: readonly string[]
  readonly window: PortWindow
  readonly rougher?: Rougher
}

/** Windows that stand at the same X and Z share a place: a mirrored pair does. */
export function placesOf({ windows }: SetUp): readonly WindowPlace[] {
  const places = new Map<string, WindowPlace>()
  for (const { port, window, rougher } of windows) {
    const key = `${fixed(window.x, 4)} ${fixed(window.z, 4)}`
    const names = places.get(key)?.names ?? []
    const all = names.includes(port.name) ? names : [...names, port.name]
    places.set(key, { names: all, x: window.x, z: window.z, window, ...(rougher && { rougher }) })
  }
  return [...places.values()]
}
