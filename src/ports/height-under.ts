import type { Fixture } from '../shop/shop.ts'
import { type Degree, type Millimetre, radians } from '../units.ts'

/** What tilts with the part: its ends in X at zero tilt, from the pivot. */
type Along = { readonly name: string; readonly from: Millimetre; readonly to: Millimetre }

/** A body of revolution about the rotary's axis. */
export type RoundBody = Along & { readonly of: 'part' | 'chuck' | 'rotary'; readonly radius: Millimetre }

/** A flat one under it: half its width in Y, Z of its faces at zero tilt, from the pivot. */
export type FlatBody = Along & {
  readonly of: 'plate'
  readonly half: Millimetre
  readonly top: Millimetre
  readonly under: Millimetre
}

export type Body = RoundBody | FlatBody

/** The rectangle of machine X and Y that holds every place of a tool's axis. */
export type Swept = {
  readonly x: readonly [Millimetre, Millimetre]
  readonly y: readonly [Millimetre, Millimetre]
}

/** Strips across all of a body under the tool, each a chord of the body: the highest place is missed by about 0.01 mm. */
const STRIPS = 40

/**
 * Machine Z of the highest place of a body that lies under a tool of a radius; minus infinity where none does. In each strip
 * of one Y the body is a rectangle turned by the tilt: it rises along one end to its highest corner and falls from there along
 * its back. Source: derived, axes of ISO 841.
 */
export function heightUnder({
  fixture: { pivotHeight },
  tilt,
  body,
  swept: {
    x: [left, right],
    y: [near, far],
  },
  tool,
}: {
  readonly fixture: Pick<Fixture, 'pivotHeight'>
  readonly tilt: Degree
  readonly body: Body
  readonly swept: Swept
  readonly tool: Millimetre
}): Millimetre {
  const [cos, sin] = [Math.cos(radians(tilt)), Math.sin(radians(tilt))]
  const { from, to } = body
  const across = body.of === 'plate' ? body.half : body.radius
  const [low, high] = [Math.max(-across, near - tool), Math.min(across, far + tool)]
  const end = sin < 0 ? to : from
  if (low > high) return Number.NEGATIVE_INFINITY
  // The body is highest where it is thickest, the tool reaches farthest where its axis is: farther off than both is neither.
  const reached = within(within(0, near, far), low, high)
  const thickest = body.of === 'plate' ? reached : within(0, low, high)
  const strips = Math.ceil((STRIPS * Math.abs(thickest - reached)) / (high - low || 1))
  let highest = Number.NEGATIVE_INFINITY
  for (let strip = 0; strip <= strips; strip++) {
    const y = strip === 0 ? reached : reached + ((thickest - reached) * strip) / strips
    const beyond = Math.max(0, near - y, y - far)
    const wide = Math.sqrt(Math.max(0, tool * tool - beyond * beyond))
    // Z of both sides at zero tilt.
    const half = body.of === 'plate' ? 0 : Math.sqrt(Math.max(0, body.radius * body.radius - y * y))
    const upper = body.of === 'plate' ? body.top : pivotHeight + half
    const lower = body.of === 'plate' ? body.under : pivotHeight - half
    const leftmost = from * cos + (sin < 0 ? upper : lower) * sin
    const rightmost = to * cos + (sin < 0 ? lower : upper) * sin
    if (rightmost < left - wide || leftmost > right + wide) continue
    const cornerX = end * cos + upper * sin
    const cornerZ = upper * cos - end * sin
    // The place in reach that is nearest to the corner, and whether it lies on the end or on the back.
    const x = Math.min(right + wide, Math.max(left - wide, cornerX))
    const onEnd = sin < 0 ? x > cornerX : x < cornerX
    const top = x === cornerX ? cornerZ : cornerZ + (x - cornerX) * (onEnd ? cos / sin : -sin / cos)
    if (top > highest) highest = top
  }
  return highest
}

const within = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value))
