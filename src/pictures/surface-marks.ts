import type { Millimetre } from '../units.ts'
import { featureCut, turnedGaps } from './feature-marks.ts'
import { line, polyline, type XY } from './marks.ts'
import { type PartView, windowRuns } from './part-view.ts'
import type { Mark, Stroke } from './picture.ts'
import { boreOf, outsideOf, radiusAt, type Stretch } from './profile.ts'

/** The lines of a surface on the half-section, drawn in the stroke given: how the surfaces being cut stand out. */
export function surfaceMarks(view: PartView, surface: string, stroke: Stroke, off: Millimetre = 0): readonly Mark[] {
  const { shape, ports, at } = view
  if (surface === 'top') return faceMarks(view, shape.top, -off, stroke)
  if (surface === 'bottom') return faceMarks(view, shape.bottom, off, stroke)
  const outside = outsideOf(shape).filter(({ name }) => name === surface)
  const bore = boreOf(shape).filter(({ name, radius }) => name === surface && radius > 0)
  const port = ports.find(({ name }) => name === surface)
  return [
    ...outside.flatMap(stretch => [
      ...unbroken(view, stretch, 'outer').map(([from, to]) =>
        line(at(from, stretch.radius + off), at(to, stretch.radius + off), stroke),
      ),
      ...less([[stretch.from, stretch.to]], turnedGaps(view, 'outside')).map(([from, to]) =>
        line(at(from, -stretch.radius - off), at(to, -stretch.radius - off), stroke),
      ),
    ]),
    ...bore.flatMap(stretch =>
      unbroken(view, stretch, 'inner').map(([from, to]) =>
        line(at(from, stretch.radius - off), at(to, stretch.radius - off), stroke),
      ),
    ),
    ...featureCut(view, surface, stroke),
    ...(port
      ? portMarks(
          view,
          surface,
          port.windows.flatMap(window => windowRuns(view, window)),
          stroke,
        )
      : []),
  ]
}

/** The face from the bore out in the section, and across the outside view. */
function faceMarks({ shape, at }: PartView, depth: Millimetre, off: Millimetre, stroke: Stroke): readonly Mark[] {
  const outside = radiusAt(outsideOf(shape), depth)
  const bore = radiusAt(boreOf(shape), depth)
  return [
    line(at(depth + off, bore), at(depth + off, outside), stroke),
    line(at(depth + off, 0), at(depth + off, -outside), stroke),
  ]
}

function portMarks(view: PartView, name: string, runs: readonly (readonly XY[])[], stroke: Stroke): readonly Mark[] {
  const sides = view.gaps
    .filter(({ port }) => port === name)
    .flatMap(({ inner, outer }) =>
      [0, 1].map(end => {
        const [bore, outside] = [inner[end] ?? 0, outer[end] ?? 0]
        const { at, shape } = view
        return line(at(bore, radiusAt(boreOf(shape), bore)), at(outside, radiusAt(outsideOf(shape), outside)), stroke)
      }),
    )
  return [...sides, ...runs.map(run => polyline(run, stroke))]
}

type Run = readonly [Millimetre, Millimetre]

/** A stretch of the section less the windows in it, and less what is turned into it. */
function unbroken(view: PartView, { from, to }: Stretch, edge: 'inner' | 'outer'): readonly Run[] {
  const turned = turnedGaps(view, edge === 'outer' ? 'outside' : 'bore')
  return less([[from, to]], [...view.gaps.map(({ [edge]: gap }) => gap), ...turned])
}

function less(runs: readonly Run[], gaps: readonly Run[]): readonly Run[] {
  let pieces = runs
  for (const gap of gaps) {
    pieces = pieces.flatMap(([start, end]): readonly Run[] => {
      if (gap[1] <= start || gap[0] >= end) return [[start, end]]
      return [...(gap[0] > start ? [[start, gap[0]] as const] : []), ...(gap[1] < end ? [[gap[1], end] as const] : [])]
    })
  }
  return pieces
}
