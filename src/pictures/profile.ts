import { nearestBandAt } from '../band.ts'
import type { PlannedFeature } from '../features/feature-plan.ts'
import type { Shape } from '../shape.ts'
import type { Millimetre } from '../units.ts'
import { cutBy, linesOn } from './feature-lines.ts'

/** A point of the half-section: depth below the finished top face, distance from the axis. */
export type ProfilePoint = { readonly depth: Millimetre; readonly radius: Millimetre }

/** A stretch of one radius. */
export type Stretch = {
  readonly name: string
  readonly from: Millimetre
  readonly to: Millimetre
  readonly radius: Millimetre
}

/** The bands as stretches that meet and reach from the top face to the bottom one, wherever the faces stand. */
function stretches(bands: Shape['outside'], { top, bottom }: Shape): readonly Stretch[] {
  const inside = bands.filter(({ to, from }, index) => (to > top || index === bands.length - 1) && from < bottom)
  return inside.map(({ name, diameter, from, to }, index) => ({
    name,
    from: index === 0 ? top : from,
    to: index === inside.length - 1 ? bottom : to,
    radius: diameter / 2,
  }))
}

export const outsideOf = (shape: Shape): readonly Stretch[] => stretches(shape.outside, shape)
/** A part without a bore is solid to its axis. */
export const boreOf = (shape: Shape): readonly Stretch[] =>
  shape.bore.length === 0 ? [{ name: '', from: shape.top, to: shape.bottom, radius: 0 }] : stretches(shape.bore, shape)

export const largestRadius = (shape: Shape): Millimetre => Math.max(...outsideOf(shape).map(({ radius }) => radius))

/** Radius of a profile at a depth; beyond its ends that of the nearest stretch. */
export function radiusAt(profile: readonly Stretch[], depth: Millimetre): Millimetre {
  return nearestBandAt(profile, depth)?.radius ?? 0
}

/** A window in the plane of the section: where it opens in the bore and where it breaks through the outside. */
export type Gap = {
  readonly port: string
  readonly inner: readonly [Millimetre, Millimetre]
  readonly outer: readonly [Millimetre, Millimetre]
}

/** The cut wall in one piece for each stretch between two gaps, each a closed outline: along the outside, back along the bore. */
export function wallPieces(
  shape: Shape,
  gaps: readonly Gap[],
  features: readonly PlannedFeature[] = [],
): readonly (readonly ProfilePoint[])[] {
  const sorted = gaps.toSorted((a, b) => a.inner[0] - b.inner[0])
  const starts = [
    { inner: shape.top, outer: shape.top },
    ...sorted.map(({ inner, outer }) => ({ inner: inner[1], outer: outer[1] })),
  ]
  const ends = [
    ...sorted.map(({ inner, outer }) => ({ inner: inner[0], outer: outer[0] })),
    { inner: shape.bottom, outer: shape.bottom },
  ]
  const [outside, bore] = [outsideOf(shape), boreOf(shape)]
  return starts.flatMap((start, index) => {
    const end = ends[index]
    if (!end) return []
    const back = cutBy(pointsAlong(bore, start.inner, end.inner), linesOn(features, 'bore'), 'bore').toReversed()
    const along = cutBy(pointsAlong(outside, start.outer, end.outer), linesOn(features, 'outside'), 'outside')
    // A cut-out that reaches the end leaves no wall below it.
    return along.length + back.length === 0 ? [] : [[...along, ...back]]
  })
}

/** The corners of a profile between two depths. */
export function pointsAlong(profile: readonly Stretch[], from: Millimetre, to: Millimetre): readonly ProfilePoint[] {
  return profile
    .filter(stretch => stretch.to > from && stretch.from < to)
    .flatMap(({ from: start, to: end, radius }) => [
      { depth: Math.max(start, from), radius },
      { depth: Math.min(end, to), radius },
    ])
}
