import type { EdgePoint } from '../ports/port.ts'
import { type Degree, type Millimetre, radians, wrapped } from '../units.ts'
import type { Segment } from './box.ts'
import type { XY } from './marks.ts'
import { onPaper, type Point } from './picture.ts'

/**
 * A cylinder laid flat: length round it is radius times azimuth, depth runs down. Seen from inside azimuth runs to the
 * left, seen from outside to the right, head up both times.
 */
export type Unrolled = {
  readonly radius: Millimetre
  readonly seenFrom: 'inside' | 'outside'
  /** Azimuth of the left edge of the panel, and how much of the turn it shows. */
  readonly left: Degree
  readonly span: Degree
  readonly origin: XY
  /** Depth at the upper edge of the panel, below the finished top face; and the depth that its scale counts from. Left out: 0. */
  readonly from?: Millimetre
  readonly zero?: Millimetre
  /** Paper over part. */
  readonly scale: number
}

const across = ({ radius, scale }: Unrolled, turn: Degree): Point => onPaper(radius * radians(turn) * scale)

export const panelWidth = (panel: Unrolled): Point => across(panel, panel.span)

/** A point of the cylinder on the panel. The turn is taken within half a turn of the panel's middle. */
export function onPanel(panel: Unrolled, { azimuth, depth }: EdgePoint): XY {
  const sense = panel.seenFrom === 'inside' ? -1 : 1
  const middle = panel.left + (sense * panel.span) / 2
  const turn = sense * wrapped(azimuth - middle) + panel.span / 2
  return {
    x: panel.origin.x + across(panel, turn),
    y: panel.origin.y + onPaper((depth - (panel.from ?? 0)) * panel.scale),
  }
}

/** The azimuth that stands so far along the panel, in (-180, 180]. */
export const azimuthAt = ({ seenFrom, left }: Unrolled, turn: Degree): Degree =>
  wrapped(seenFrom === 'inside' ? left - turn : left + turn)

/** The outline of a window on the panel, as far as it lies within its sides. */
export function outlineOnPanel(panel: Unrolled, outline: readonly EdgePoint[]): readonly Segment[] {
  const [low, high] = [panel.origin.x, panel.origin.x + panelWidth(panel)]
  const points = outline.map(point => onPanel(panel, point))
  return points.flatMap((from, index) => {
    const to = points[(index + 1) % points.length] ?? from
    // The half turn away from the middle: an edge that runs off one side must not come back across the panel.
    if (Math.abs(to.x - from.x) > across(panel, 180)) return []
    const run = to.x - from.x
    const ends = run === 0 ? [0, 1] : [(low - from.x) / run, (high - from.x) / run].toSorted((a, b) => a - b)
    const [start, end] = run === 0 ? [0, 1] : [Math.max(0, ends[0] ?? 0), Math.min(1, ends[1] ?? 1)]
    if (start > end || (run === 0 && (from.x < low || from.x > high))) return []
    const at = (part: number): XY => ({ x: from.x + part * run, y: from.y + part * (to.y - from.y) })
    return [{ from: at(start), to: at(end) }]
  })
}
