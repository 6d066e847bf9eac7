import type { Fixture } from '../shop/shop.ts'
import type { Degree, Millimetre } from '../units.ts'
import { type Body, heightUnder, type Swept } from './height-under.ts'

export type HeldBy = 'cutter' | 'shank' | 'holder' | 'spindle' | 'head'

export type Setting = {
  readonly fixture: Fixture
  readonly tilt: Degree
  readonly bodies: readonly Body[]
  /** Extent of the window in machine X and Y. */
  readonly window: Swept
  /** Machine Z of the tip at its lowest. */
  readonly tip: Millimetre
}

export type Standing = { readonly diameter: Millimetre; readonly shank: Millimetre; readonly flutes?: Millimetre }

export type Closest = {
  readonly by: HeldBy
  /** The band of the part, or what of the fixture. */
  readonly to: string
  /** Clear below and beside, at the closest place; negative by how far it would strike. */
  readonly room: Millimetre
}

/** Where cutter, shank, holder or spindle comes closest to what they must not touch. */
export function closestPlace(setting: Setting, { diameter, shank, flutes }: Standing, stickOut: Millimetre): Closest {
  const { fixture, tilt, bodies, tip } = setting
  const swept = axisOf(setting.window, diameter)
  const holding = bodies.filter(({ of }) => of !== 'part')
  const steps = [
    // Cutting the part is its work: what holds it is not.
    { by: 'cutter' as const, radius: diameter / 2, above: -stickOut, among: holding },
    // What the shank does to the part itself is told by its flutes and by the room to the shoulder.
    ...(flutes === undefined
      ? []
      : [{ by: 'shank' as const, radius: shank / 2, above: flutes - stickOut, among: holding }]),
    ...stepsAbove(fixture).map(step => ({ ...step, among: bodies })),
  ]
  let closest: Closest = { by: 'holder', to: 'chuck', room: FAR }
  for (const { by, radius, above, among } of steps) {
    for (const body of among) {
      const height = (tool: Millimetre): Millimetre => heightUnder({ fixture, tilt, body, swept, tool })
      const room = roomAt(height, tip + stickOut + above, radius, closest.room)
      if (room < closest.room) closest = { by, to: body.name, room }
    }
  }
  return closest
}

type Step = { readonly by: 'holder' | 'spindle' | 'head'; readonly radius: Millimetre; readonly above: Millimetre }

/** What stands over the cutter: radius, and how far its lower face is above the holder's. */
export const stepsAbove = ({ holder, head }: Pick<Fixture, 'holder' | 'head'>): readonly Step[] => [
  { by: 'holder', radius: holder.diameter / 2, above: 0 },
  { by: 'spindle', radius: holder.spindleDiameter / 2, above: holder.length },
  ...(head ? [{ by: 'head' as const, radius: head.diameter / 2, above: holder.length + head.spindleLength }] : []),
]

/** The cutter stays within the window. */
export const axisOf = ({ x, y }: Swept, cutter: Millimetre): Swept => ({
  x: inset(x, cutter / 2),
  y: inset(y, cutter / 2),
})

const inset = ([from, to]: readonly [number, number], by: number): readonly [number, number] =>
  to - from > 2 * by ? [from + by, to - by] : [(from + to) / 2, (from + to) / 2]

/** Farther off is far enough. */
const FAR: Millimetre = 100
const HALVINGS = 24

/**
 * How far a round tool, its lower face at `z`, is clear of a body below and beside; negative by how far the body stands above
 * that face; no more than `atMost`. `height` gives the body's highest place under a radius.
 */
export function roomAt(
  height: (radius: Millimetre) => Millimetre,
  z: Millimetre,
  radius: Millimetre,
  atMost: Millimetre = FAR,
): Millimetre {
  const below = Math.min(atMost, z - height(radius))
  if (below <= 0 || height(radius + below) <= z) return below
  let [clear, strikes] = [0, below]
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (clear + strikes) / 2
    if (height(radius + middle) <= z) clear = middle
    else strikes = middle
  }
  return clear
}
