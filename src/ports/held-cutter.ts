import { headSense } from '../machine-frame.ts'
import type { Fixture } from '../shop/shop.ts'
import type { AsMilled } from '../stock/stock.ts'
import type { Degree, Millimetre } from '../units.ts'
import { heightUnder, type RoundBody, type Swept } from './height-under.ts'

/** A cutter in its holder at the lowest that it goes, against all that turns with the rotary. */
export type HeldCutter = {
  readonly stickOut: Millimetre
  /** That clears everything by the works' margin. */
  readonly stickOutNeeded: Millimetre
  readonly shank: Millimetre
  /** Below the shank; absent where the works does not say. */
  readonly flutes?: Millimetre
  /** Clear below and beside, at the closest place; negative by how far it would strike. */
  readonly room: Millimetre
  readonly by: 'shank' | 'holder' | 'spindle'
  /** The band of the part, or the chuck. */
  readonly to: string
}

/** The blank's bands and the chuck, as they stand on the rotary. */
export function roundBodies(fixture: Fixture, { shape, topStock }: AsMilled): readonly RoundBody[] {
  const s = headSense(fixture)
  const ends = (from: Millimetre, to: Millimetre): Pick<RoundBody, 'from' | 'to'> => {
    const [a, b] = [from, to].map(depth => fixture.faceDistance - s * (depth + topStock))
    return { from: Math.min(a ?? 0, b ?? 0), to: Math.max(a ?? 0, b ?? 0) }
  }
  const bands = shape.outside.map(({ name, from, to, diameter }) => ({ name, ...ends(from, to), radius: diameter / 2 }))
  const { diameter, length } = fixture.chuck
  // The chuck faces +X whichever end it holds.
  const face = fixture.chuck.faceDistance ?? Math.min(...bands.map(({ from }) => from))
  return [...bands, { name: 'chuck', from: face - length, to: face, radius: diameter / 2 }]
}

export type Setting = {
  readonly fixture: Fixture
  readonly tilt: Degree
  readonly bodies: readonly RoundBody[]
  /** Extent of the window in machine X and Y. */
  readonly window: Swept
  /** Machine Z of the tip at its lowest. */
  readonly tip: Millimetre
}

type Standing = { readonly diameter: Millimetre; readonly shank: Millimetre; readonly flutes?: Millimetre }

/** Stick-out with which holder and spindle clear every body by a margin, below and beside. */
export function stickOutNeeded(setting: Setting, cutter: Millimetre, margin: Millimetre): Millimetre {
  const { fixture, tilt, bodies, tip } = setting
  const swept = axisOf(setting.window, cutter)
  return Math.max(
    ...stepsAbove(fixture.holder).flatMap(({ radius, above }) =>
      bodies.map(body => {
        const beside = heightUnder({ fixture, tilt, body, swept, tool: radius + margin })
        if (beside === Number.NEGATIVE_INFINITY) return beside
        return Math.max(beside, heightUnder({ fixture, tilt, body, swept, tool: radius }) + margin) - tip - above
      }),
    ),
  )
}

export function heldCutter(
  setting: Setting,
  { diameter, shank, flutes }: Standing,
  stickOut: Millimetre,
  margin: Millimetre,
): HeldCutter {
  const { fixture, tilt, bodies, tip } = setting
  const swept = axisOf(setting.window, diameter)
  const chuck = bodies.filter(({ name }) => name === 'chuck')
  const steps = [
    // What the shank does to the part itself is told by its flutes and by the room to the shoulder.
    ...(flutes === undefined
      ? []
      : [{ by: 'shank' as const, radius: shank / 2, above: flutes - stickOut, among: chuck }]),
    ...stepsAbove(fixture.holder).map(step => ({ ...step, among: bodies })),
  ]
  let closest: Pick<HeldCutter, 'by' | 'to' | 'room'> = { by: 'holder', to: 'chuck', room: FAR }
  for (const { by, radius, above, among } of steps) {
    for (const body of among) {
      const height = (tool: Millimetre): Millimetre => heightUnder({ fixture, tilt, body, swept, tool })
      const room = roomAt(height, tip + stickOut + above, radius, closest.room)
      if (room < closest.room) closest = { by, to: body.name, room }
    }
  }
  return {
    stickOut,
    stickOutNeeded: stickOutNeeded(setting, diameter, margin),
    shank,
    ...(flutes === undefined ? {} : { flutes }),
    ...closest,
  }
}

type Step = { readonly by: 'holder' | 'spindle'; readonly radius: Millimetre; readonly above: Millimetre }

/** What stands over the cutter: radius, and how far its lower face is above the holder's. */
const stepsAbove = ({ diameter, length, spindleDiameter }: Fixture['holder']): readonly Step[] => [
  { by: 'holder', radius: diameter / 2, above: 0 },
  { by: 'spindle', radius: spindleDiameter / 2, above: length },
]

/** The cutter stays within the window. */
const axisOf = ({ x, y }: Swept, cutter: Millimetre): Swept => ({ x: inset(x, cutter / 2), y: inset(y, cutter / 2) })

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
