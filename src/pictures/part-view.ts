import type { PlannedFeature } from '../features/feature-plan.ts'
import type { EdgePoint, PlannedPort, PortWindow } from '../ports/port.ts'
import type { Shape } from '../shape.ts'
import { type Degree, type Millimetre, radians } from '../units.ts'
import { type DrawnDatum, datumOutline, datumUp } from './datum-marks.ts'
import { featureGaps, featureMarks, outlineWith } from './feature-marks.ts'
import { hatch } from './hatch.ts'
import { CENTRE_LINE, DASHED, line, OUTLINE, polygon, polyline, type XY } from './marks.ts'
import { type Mark, onPaper, type Point, type Stroke } from './picture.ts'
import { boreOf, type Gap, outsideOf, type ProfilePoint, radiusAt, wallPieces } from './profile.ts'
import { boreSeen, gapsAt, outsideSeen, seenRuns, type View } from './section-plane.ts'

/** Where the part stands on the picture: its axis level, its head to the left. */
export type Placement = {
  /** Of the finished top face. */
  readonly left: Point
  /** Of the centre line. */
  readonly axis: Point
  /** Paper over part. */
  readonly scale: number
}

export type PartView = {
  readonly shape: Shape
  /** Those that are in the part yet. */
  readonly ports: readonly PlannedPort[]
  readonly view: View
  /** Those that are made yet. */
  readonly features: readonly PlannedFeature[]
  /** Once it is made. */
  readonly datum?: DrawnDatum | undefined
  readonly boreOutline: (window: PortWindow) => readonly EdgePoint[]
  readonly gaps: readonly Gap[]
  /** A depth, and a distance above the centre line, on the picture. */
  readonly at: (depth: Millimetre, up: Millimetre) => XY
  /** A point of a cylinder, as it is seen from the side. */
  readonly seen: (point: EdgePoint, radius: Millimetre) => XY
}

export function partView({
  shape,
  allPorts,
  view,
  finished,
  datum,
  features = [],
  placement: { left, axis, scale },
}: {
  readonly shape: Shape
  readonly allPorts: readonly PlannedPort[]
  readonly view: View
  readonly finished: boolean
  readonly datum?: DrawnDatum | undefined
  readonly features?: readonly PlannedFeature[]
  readonly placement: Placement
}): PartView {
  const ports = shape.ported ? allPorts : []
  const boreOutline = (window: PortWindow): readonly EdgePoint[] =>
    finished ? window.outline.finished : window.outline.asCut
  const at = (depth: Millimetre, up: Millimetre): XY => ({
    x: left + onPaper(depth * scale),
    y: axis - onPaper(up * scale),
  })
  const turned = (azimuth: Degree): number => radians(azimuth - view.section)
  return {
    shape,
    ports,
    view,
    features,
    datum: shape.ported ? datum : undefined,
    boreOutline,
    gaps: [...gapsAt(ports, boreOutline, view.section), ...featureGaps(features, view.section)],
    at,
    seen: ({ azimuth, depth }, radius) => at(depth, radius * Math.cos(turned(azimuth))),
  }
}

/** Radius of the outside where a window breaks through it. */
function outsideRadius({ shape }: PartView, { outline }: PortWindow): Millimetre {
  const depths = outline.outside.map(({ depth }) => depth)
  return radiusAt(outsideOf(shape), (Math.min(...depths) + Math.max(...depths)) / 2)
}

/** The edges of the windows as they are seen: outside below the centre line, the far bore wall above it. */
export function windowRuns(view: PartView, window: PortWindow): readonly (readonly XY[])[] {
  const { shape, seen, boreOutline } = view
  const bore = boreOf(shape)[0]?.radius ?? 0
  const outside = outsideRadius(view, window)
  return [
    ...seenRuns(window.outline.outside, outsideSeen(view.view)).map(run => run.map(point => seen(point, outside))),
    ...seenRuns(boreOutline(window), boreSeen(view.view)).map(run => run.map(point => seen(point, bore))),
  ]
}

/** A flat or a notch as it is seen on the outside; a hole along the axis hidden, dashed. Nothing where it lies behind. */
export function datumRuns({ datum, seen, view }: PartView): readonly (readonly XY[])[] {
  if (!datum) return []
  const outline = datumOutline(datum)
  return seenRuns(outline, outsideSeen(view)).map(run => run.map(point => seen(point, datum.place.diameter / 2)))
}

function datumMarks(drawing: PartView): readonly Mark[] {
  const { datum, at, view } = drawing
  if (datum?.place.radius === undefined) return datumRuns(drawing).map(run => polyline(run, OUTLINE))
  const { from, to, end } = datum.place
  const { depth = 0, width = 0 } = datum
  const [start, floor] = end === 'top' ? [to, Math.max(from, to - depth)] : [to, to - depth]
  const up = datumUp(datum, view.section)
  return [
    polyline(
      [at(start, up - width / 2), at(floor, up - width / 2), at(floor, up + width / 2), at(start, up + width / 2)],
      DASHED,
    ),
  ]
}

/** The part itself: cut wall hatched above the centre line, outside below it. */
export function partMarks(view: PartView): readonly Mark[] {
  const { shape, at, ports, gaps, features } = view
  const pieces = wallPieces(shape, gaps, features).map(piece => piece.map(({ depth, radius }) => at(depth, radius)))
  const overhang = 3 / onPaperScale(at)
  return [
    ...pieces.flatMap(piece => hatch(piece)),
    ...pieces.map(piece => polygon(piece, { stroke: OUTLINE })),
    ...boreEdges(view),
    ...outsideEdges(view, OUTLINE),
    ...ports.flatMap(({ windows }) =>
      windows.flatMap(window => windowRuns(view, window).map(run => polyline(run, OUTLINE))),
    ),
    ...datumMarks(view),
    ...featureMarks(view),
    line(at(shape.top - overhang, 0), at(shape.bottom + overhang, 0), CENTRE_LINE),
  ]
}

/** Paper millimetres for one of the part. */
const onPaperScale = (at: PartView['at']): number => (at(1, 0).x - at(0, 0).x) / onPaper(1)

/** Edges of the bore behind the section: its ends, its steps and what is turned into it, seen as lines across. */
function boreEdges({ shape, at, features }: PartView): readonly Mark[] {
  if (shape.bore.length === 0 && !features.some(({ side }) => side === 'bore')) return []
  return cornersOf(outlineWith(shape, features, 'bore'), Math.max).map(({ depth, radius }) =>
    line(at(depth, 0), at(depth, radius), OUTLINE),
  )
}

function outsideEdges({ shape, at, features }: PartView, stroke: Stroke): readonly Mark[] {
  const outline = outlineWith(shape, features, 'outside')
  return [
    polyline(
      [at(shape.top, 0), ...outline.map(({ depth, radius }) => at(depth, -radius)), at(shape.bottom, 0)],
      stroke,
    ),
    ...cornersOf(outline, Math.min)
      .slice(1, -1)
      .map(({ depth, radius }) => line(at(depth, 0), at(depth, -radius), stroke)),
  ]
}

/** One corner for each depth at which an outline turns. */
function cornersOf(
  outline: readonly ProfilePoint[],
  pick: (...radii: readonly number[]) => number,
): readonly ProfilePoint[] {
  const depths = [...new Set(outline.map(({ depth }) => depth))]
  return depths.map(depth => ({
    depth,
    radius: pick(...outline.filter(point => point.depth === depth).map(({ radius }) => radius)),
  }))
}
