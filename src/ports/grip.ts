import { type Chucking, endInRotary } from '../chucking.ts'
import { headSense } from '../machine-frame.ts'
import type { Shop } from '../shop/shop.ts'
import type { AsMilled } from '../stock/stock.ts'
import type { Millimetre } from '../units.ts'
import type { PlannedPort } from './port.ts'

/** What the rotary's jaws hold the part by while its ports are milled. Depths are below the finished top face. */
export type Grip = {
  /** The band in the jaws, and what it measures then. */
  readonly surface: string
  readonly diameter: Millimetre
  readonly end: 'top' | 'bottom'
  readonly length: Millimetre
  /** Of the whole band: jaws bored to one size hold no more. */
  readonly most: Millimetre
  /** That the works does not go below. */
  readonly least: Millimetre
  /** How far out the jaws' front face stands from the held end, as a depth. */
  readonly front: Millimetre
  /** The front face in X at zero tilt, from the pivot. */
  readonly chuckFace: Millimetre
}

/**
 * The least grip that the works allows: what holds longer takes room from holder and spindle. A face that the works measured
 * stays where it is.
 */
export function gripOf({ fixture, habits }: Pick<Shop, 'fixture' | 'habits'>, { shape, topStock }: AsMilled): Grip {
  const s = headSense(fixture)
  const end = endInRotary(fixture.headFaces)
  const band = end === 'bottom' ? shape.outside.at(-1) : shape.outside[0]
  if (!band) throw new Error('a part without an outside has no ports')
  const held = end === 'bottom' ? band.to : band.from
  const xOf = (depth: Millimetre): Millimetre => fixture.faceDistance - s * (depth + topStock)
  const covered =
    fixture.chuck.faceDistance === undefined
      ? Math.min(habits.leastGrip, band.to - band.from)
      : fixture.chuck.faceDistance - xOf(held)
  // Jaws bored to one size hold one band, however far they stand over the next.
  const length = Math.min(covered, band.to - band.from)
  const front = held - s * covered
  return {
    surface: band.name,
    diameter: band.diameter,
    end,
    length,
    most: band.to - band.from,
    least: habits.leastGrip,
    front,
    chuckFace: xOf(front),
  }
}

/** From the jaws' front to the nearest edge of a port on the outside; negative by how far they cover it. */
export const gripToPort = ({ front, end }: Grip, ports: readonly PlannedPort[]): Millimetre => {
  const depths = ports.flatMap(({ windows }) => windows.flatMap(({ outline }) => outline.outside.map(p => p.depth)))
  return end === 'bottom' ? front - Math.max(...depths) : Math.min(...depths) - front
}

/** Every window is milled with the part held so. */
export const chuckingIn = ({ surface, length, end }: Grip): Chucking => ({
  number: 1,
  end: end === 'bottom' ? 'top' : 'bottom',
  grip: { surface, length },
  stop: `the shoulder bored in the jaws, with the ${end} face`,
})
