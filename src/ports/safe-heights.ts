import type { Fixture } from '../shop/shop.ts'
import { type Degree, degrees, type Millimetre, radians } from '../units.ts'
import { type Body, heightUnder } from './height-under.ts'

/** Of a tip on its way across, over the highest of all that tilts. Common practice, no source. */
const CLEARANCE: Millimetre = 5
const EVERYWHERE = { x: [-1e6, 1e6], y: [0, 0] } as const

/** Machine Z of a tip above everything of part and fixture at a tilt, whatever the rotary stands at. */
export function safeHeight(fixture: Fixture, bodies: readonly Body[], tilt: Degree): Millimetre {
  const heights = bodies.map(body => heightUnder({ fixture, tilt, body, swept: EVERYWHERE, tool: 0 }))
  return Math.max(...heights) + CLEARANCE
}

/** What rises highest while the plate goes through all tilts of a job, 0 among them. */
export type Tilting = {
  /** Machine Z that it reaches; and of the tip, with a clearance over that, before any tilt. */
  readonly reaches: Millimetre
  readonly tip: Millimetre
  readonly by: string
  /** How high the tip of the longest tool stands with the spindle fully up; absent where the works does not say. */
  readonly fullyUp?: Millimetre
}

/** Nothing where nothing is tilted. */
export function tiltingOf({
  fixture: { pivotHeight, holder, head },
  bodies,
  tilts,
  stickOut,
}: {
  readonly fixture: Fixture
  readonly bodies: readonly Body[]
  readonly tilts: readonly Degree[]
  /** Of the longest tool of the job. */
  readonly stickOut: Millimetre
}): Tilting | undefined {
  if (tilts.every(tilt => tilt === 0)) return undefined
  const [least, most] = [Math.min(0, ...tilts), Math.max(0, ...tilts)]
  const risen = bodies
    .map(body => ({ by: body.name, reaches: highestOnTheWay(body, pivotHeight, least, most) }))
    .reduce((high, one) => (one.reaches > high.reaches ? one : high))
  const up = head?.fullyUp
  return {
    ...risen,
    tip: risen.reaches + CLEARANCE,
    ...(up === undefined ? {} : { fullyUp: up - holder.length - stickOut }),
  }
}

/** A corner goes on a circle about the pivot: its highest place is straight over it, where the tilts take it there. */
function highestOnTheWay(body: Body, pivotHeight: Millimetre, least: Degree, most: Degree): Millimetre {
  const up = body.of === 'plate' ? body.top : pivotHeight + body.radius
  return Math.max(
    ...[body.from, body.to].map(along => {
      const overPivot = degrees(Math.atan2(-along, up))
      const tilt = Math.min(most, Math.max(least, overPivot))
      return up * Math.cos(radians(tilt)) - along * Math.sin(radians(tilt))
    }),
  )
}
