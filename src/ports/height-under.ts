import type { Fixture } from '../shop/shop.ts'
import { type Degree, type Millimetre, radians } from '../units.ts'

/** A body of revolution about the rotary's axis: its ends in X at zero tilt, from the pivot. */
export type RoundBody = {
  readonly name: string
  readonly from: Millimetre
  readonly to: Millimetre
  readonly radius: Millimetre
}

/** The rectangle of machine X and Y that holds every place of a tool's axis. */
export type Swept = {
  readonly x: readonly [Millimetre, Millimetre]
  readonly y: readonly [Millimetre, Millimetre]
}

/** Strips across, each a chord of the body: the highest place is missed by about 0.01 mm. */
const STRIPS = 40

/**
 * Machine Z of the highest place of a body that lies under a tool of a radius; minus infinity where none does. In each strip
 * of one Y the body is a rectangle turned by the tilt, whose highest place within a range of X is a corner or lies at an end
 * of the range. Source: derived, axes of ISO 841.
 */
export function heightUnder({
  fixture: { pivotHeight },
  tilt,
  body: { from, to, radius },
  swept: {
    x: [left, right],
    y: [near, far],
  },
  tool,
}: {
  readonly fixture: Pick<Fixture, 'pivotHeight'>
  readonly tilt: Degree
  readonly body: RoundBody
  readonly swept: Swept
  readonly tool: Millimetre
}): Millimetre {
  const [cos, sin] = [Math.cos(radians(tilt)), Math.sin(radians(tilt))]
  const [low, high] = [Math.max(-radius, near - tool), Math.min(radius, far + tool)]
  let highest = Number.NEGATIVE_INFINITY
  for (let strip = 0; strip <= STRIPS && low <= high; strip++) {
    const y = low + ((high - low) * strip) / STRIPS
    const beyond = Math.max(0, near - y, y - far)
    const wide = Math.sqrt(Math.max(0, tool * tool - beyond * beyond))
    const half = Math.sqrt(Math.max(0, radius * radius - y * y))
    const [upper, lower] = [pivotHeight + half, pivotHeight - half]
    for (let side = 0; side < 4; side++) {
      const [u1, w1] = [side === 0 || side === 3 ? from : to, side < 2 ? upper : lower]
      const [u2, w2] = [side < 2 ? to : from, side === 1 || side === 2 ? lower : upper]
      const [x1, z1] = [u1 * cos + w1 * sin, w1 * cos - u1 * sin]
      const [x2, z2] = [u2 * cos + w2 * sin, w2 * cos - u2 * sin]
      const top = highestOn({ x1, z1, x2, z2, left: left - wide, right: right + wide })
      if (top > highest) highest = top
    }
  }
  return highest
}

/** Of a straight edge, within a range of x. */
function highestOn({
  x1,
  z1,
  x2,
  z2,
  left,
  right,
}: {
  readonly x1: number
  readonly z1: number
  readonly x2: number
  readonly z2: number
  readonly left: number
  readonly right: number
}): number {
  if (Math.max(x1, x2) < left || Math.min(x1, x2) > right) return Number.NEGATIVE_INFINITY
  const at = (x: number): number => (x1 === x2 ? Math.max(z1, z2) : z1 + ((x - x1) / (x2 - x1)) * (z2 - z1))
  const within = (x: number): number => Math.min(right, Math.max(left, x))
  return Math.max(at(within(x1)), at(within(x2)))
}
