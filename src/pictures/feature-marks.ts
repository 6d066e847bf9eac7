import type { PlannedFeature } from '../features/feature-plan.ts'
import type { EdgePoint } from '../ports/port.ts'
import type { Shape } from '../shape.ts'
import { type Degree, degrees, type Millimetre, radians, wrapped } from '../units.ts'
import { cutBy, linesOn, reachOf } from './feature-lines.ts'
import { DASHED, line, OUTLINE, polyline, type XY } from './marks.ts'
import type { PartView } from './part-view.ts'
import type { Mark, Stroke } from './picture.ts'
import { boreOf, type Gap, outsideOf, type ProfilePoint, pointsAlong, radiusAt } from './profile.ts'
import { boreSeen, outsideSeen, seenRuns } from './section-plane.ts'

type Side = 'outside' | 'bore'

const baseOf = (shape: Shape, side: Side): readonly ProfilePoint[] =>
  pointsAlong(side === 'outside' ? outsideOf(shape) : boreOf(shape), shape.top, shape.bottom)

/** One side of the wall with all that is turned into it. */
export const outlineWith = (shape: Shape, features: readonly PlannedFeature[], side: Side): readonly ProfilePoint[] =>
  cutBy(baseOf(shape, side), linesOn(features, side), side)

/** What a turned feature leaves of the outline of its side. */
function cutOf({ shape, features }: PartView, feature: PlannedFeature): readonly ProfilePoint[] {
  const { side, line: run } = feature
  if (!side || !run) return []
  const reach = reachOf(baseOf(shape, side), run, side)
  if (!reach) return []
  return outlineWith(shape, features, side).filter(({ depth }) => depth >= reach[0] - 1e-6 && depth <= reach[1] + 1e-6)
}

/** Depths that turned features take of one side: a band is not drawn through them. */
export const turnedGaps = ({ shape, features }: PartView, side: Side): readonly (readonly [Millimetre, Millimetre])[] =>
  features.flatMap(({ side: on, line: run }) => {
    const reach = on === side && run ? reachOf(baseOf(shape, side), run, side) : undefined
    return reach ? [reach] : []
  })

/** A hole through the wall, or a cut-out, in one of its places: its outline on a cylinder. */
function outlineOn({ kind, middle, across }: PlannedFeature, at: Degree, radius: Millimetre): readonly EdgePoint[] {
  if (!middle || !across) return []
  const around = (x: Millimetre): Degree => degrees(Math.asin(Math.max(-1, Math.min(1, x / radius))))
  const [w, h] = [across.width / 2, across.height / 2]
  if (kind === 'cut-out')
    return [
      [-w, h],
      [-w, -h],
      [0, -h],
      [w, -h],
      [w, h],
    ].map(([x = 0, y = 0]) => ({ azimuth: at + around(x), depth: middle.depth + y }))
  return Array.from({ length: 24 }, (_, turn) => {
    const angle = (turn * Math.PI) / 12
    return { azimuth: at + around(w * Math.cos(angle)), depth: middle.depth + h * Math.sin(angle) }
  })
}

/** Holes through the wall and cut-outs that the section cuts through their middle. */
export const featureGaps = (features: readonly PlannedFeature[], section: Degree): readonly Gap[] =>
  features.flatMap(({ name, at = [], middle, across, through }) => {
    const cut = through !== 'flange' && at.some(azimuth => Math.abs(wrapped(azimuth - section)) < 1)
    if (!cut || !middle || !across) return []
    const ends = [middle.depth - across.height / 2, middle.depth + across.height / 2] as const
    return [{ port: name, inner: ends, outer: ends }]
  })

/** Where a hole or a cut-out is seen: on the outside below the centre line, on the far wall of the bore above it. */
function featureRuns({ shape, seen, view }: PartView, feature: PlannedFeature): readonly (readonly XY[])[] {
  const { at = [], middle, through } = feature
  if (!middle || through === 'flange') return []
  const outside = radiusAt(outsideOf(shape), middle.depth)
  const bore = radiusAt(boreOf(shape), middle.depth)
  const runs = (radius: Millimetre, from: Degree): readonly (readonly XY[])[] =>
    radius <= 0
      ? []
      : (feature.kind === 'pin bore' ? at.flatMap(azimuth => [azimuth, azimuth + 180]) : at).flatMap(azimuth =>
          seenRuns(outlineOn(feature, azimuth, radius), from).map(run => run.map(point => seen(point, radius))),
        )
  return [...runs(outside, outsideSeen(view)), ...runs(bore, boreSeen(view))]
}

/** Holes through a flange lie along the axis: hidden, dashed, wherever they stand. */
function flangeHoles(
  { at: place, view }: PartView,
  { at = [], middle, across, through }: PlannedFeature,
): readonly Mark[] {
  if (through !== 'flange' || !middle || !across) return []
  return at.flatMap(azimuth => {
    const up = middle.radius * Math.cos(radians(azimuth - view.section))
    const ends = [middle.depth - across.height / 2, middle.depth + across.height / 2]
    return [-1, 1]
      .map(way => {
        const [from, to] = ends.map(depth => place(depth, up + (way * across.width) / 2))
        return from && to ? line(from, to, DASHED) : undefined
      })
      .filter(mark => mark !== undefined)
  })
}

export const featureMarks = (view: PartView): readonly Mark[] =>
  view.features.flatMap(feature => [
    ...featureRuns(view, feature).map(run => polyline(run, OUTLINE)),
    ...flangeHoles(view, feature),
  ])

/** A feature in the stroke of what is cut here. */
export function featureCut(view: PartView, name: string, stroke: Stroke): readonly Mark[] {
  const feature = view.features.find(one => one.name === name)
  if (!feature) return []
  const points = cutOf(view, feature)
  const above = points.map(({ depth, radius }) => view.at(depth, radius))
  const below = feature.side === 'outside' ? points.map(({ depth, radius }) => view.at(depth, -radius)) : []
  return [
    ...[above, below].filter(run => run.length > 1).map(run => polyline(run, stroke)),
    ...(feature.kind === 'underside' ? undersideCut(view, feature, stroke) : []),
    ...featureRuns(view, feature).map(run => polyline(run, stroke)),
  ]
}

function undersideCut({ shape, at }: PartView, { band }: PlannedFeature, stroke: Stroke): readonly Mark[] {
  const stretches = outsideOf(shape)
  const index = stretches.findIndex(({ name }) => name === band)
  const [over, below] = [stretches[index], stretches[index + 1]]
  if (!over || !below) return []
  return [1, -1].map(way => line(at(over.to, way * over.radius), at(over.to, way * below.radius), stroke))
}

/** Where a leader touches a feature: on its cut in the section, or where it is seen. */
export function featureAnchor(view: PartView, name: string): { readonly anchor: XY; readonly up: boolean } | undefined {
  const feature = view.features.find(one => one.name === name)
  if (!feature) return undefined
  const cut = cutOf(view, feature)
  if (cut.length > 0) {
    const floor = cut.toSorted((a, b) => (feature.side === 'bore' ? b.radius - a.radius : a.radius - b.radius))
    const lowest = feature.kind === 'groove' ? floor.slice(0, 2) : cut
    const mean = (of: (point: ProfilePoint) => number): number =>
      lowest.reduce((sum, point) => sum + of(point), 0) / lowest.length
    return {
      anchor: view.at(
        mean(point => point.depth),
        mean(point => point.radius),
      ),
      up: feature.side !== 'bore',
    }
  }
  if (feature.kind === 'underside') {
    const index = outsideOf(view.shape).findIndex(({ name: band }) => band === feature.band)
    const [over, below] = [outsideOf(view.shape)[index], outsideOf(view.shape)[index + 1]]
    return over && below && { anchor: view.at(over.to, (over.radius + below.radius) / 2), up: true }
  }
  const seen = featureRuns(view, feature)[0]
  if (seen && seen.length > 0) {
    const [x, y] = [(point: XY) => point.x, (point: XY) => point.y].map(
      of => seen.reduce((sum, point) => sum + of(point), 0) / seen.length,
    )
    return { anchor: { x: x ?? 0, y: y ?? 0 }, up: (y ?? 0) < view.at(0, 0).y }
  }
  const { middle, at: azimuths = [] } = feature
  if (!middle) return undefined
  const up = middle.radius * Math.cos(radians((azimuths[0] ?? 0) - view.view.section))
  return { anchor: view.at(middle.depth, up), up: up > 0 }
}
