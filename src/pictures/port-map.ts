import { clockPosition } from '../clock-position.ts'
import { angle, length, type Units } from '../figures.ts'
import type { Plan } from '../plan/plan.ts'
import type { PlannedPort, PortWindow } from '../ports/port.ts'
import type { Millimetre } from '../units.ts'
import { captionBlock } from './caption.ts'
import {
  blankAzimuth,
  boreRadius,
  finishedShape,
  milledShape,
  outsideRadiusAt,
  portBelt,
  sides,
} from './finished-part.ts'
import { type Labelled, labelMarks } from './label-marks.ts'
import { listedLabels } from './listed-labels.ts'
import { barLength, type MapKind, mapCaptions } from './map-captions.ts'
import { degreeScale, depthScale, scaleBar, TAB, tabMarks } from './map-scales.ts'
import { circle, DASHED, line, OUTLINE, THIN, type XY } from './marks.ts'
import { type Mark, type Measure, onPaper, type Picture, type Point, type Stroke } from './picture.ts'
import { scalesThatFit, scaleWritten } from './scale.ts'
import { onPanel, outlineOnPanel, panelWidth, type Unrolled } from './unrolled.ts'
import { windowAsCut } from './windows-cut.ts'

/** Left of a panel for the depth scale, right of it for the last figure of the degree scale. */
const MARGIN: { readonly left: Point; readonly right: Point } = { left: onPaper(9), right: onPaper(5) }
const TOP: Point = onPaper(5)
/** Below a panel for the degree scale. */
const FOOT: Point = onPaper(8)

/**
 * The port belt unrolled, from the finished top face down. The bore is seen from inside, so that azimuth runs to the
 * left: finished edges in outline, edges as cut dashed. The outside is seen from outside, as a paper wrapped round it below
 * the flange.
 */
export function drawPortMap({
  plan,
  kind,
  width,
  measure,
  units = 'mm',
}: {
  readonly plan: Plan
  readonly kind: MapKind
  readonly width: Point
  readonly measure: Measure
  readonly units?: Units | undefined
}): Picture {
  const panels = panelsOf(plan, kind, width)
  const deepest = deepestEdge(plan.ports) + 4
  const drawn = panels.flatMap((panel, index) => [
    ...panelMarks(plan, panel, deepest, units),
    ...(hasTab(kind, index, panels.length) ? tabMarks(panel, onPanel(panel, { azimuth: 0, depth: deepest }).y) : []),
  ])
  const bottom = lowest(panels, deepest)
  const scale = panels[0]?.scale ?? 1
  const bar = scaleBar({
    y: { x: MARGIN.left, y: bottom + FOOT + 6 },
    millimetre: barLength(kind),
    scale,
    measure,
    units,
  })
  const frame = { x: MARGIN.left, y: 0, width: width - MARGIN.left, height: bottom }
  const labels = panels.flatMap(panel => plan.ports.flatMap(port => portLabel(port, panel, units)))
  const { marks, missing } = labelMarks(labels, drawn, frame, measure)
  const listed = listedLabels(missing, [...drawn, ...marks], frame, measure)
  const caption = captionBlock(
    [...mapCaptions({ kind, scale, strips: panels.length, wrap: plan.fixture?.wrap, units }), ...listed.captions],
    width,
    measure,
  )
  const height = bottom + FOOT + 22 + caption.height
  return {
    width,
    height,
    alternative: `${kind === 'outside at true size' ? 'Outside' : 'Bore'} of ${plan.part.number} unrolled at ${scaleWritten(scale)}: ${plan.ports.map(({ name, at }) => `${name} at ${angle(at, 0)}°`).join(', ')}.`,
    marks: [...drawn, ...marks, ...listed.marks, ...bar, ...caption.marksAt(height)],
  }
}

/** Round the outside the last strip meets the first; in the bore only strips are joined. */
const hasTab = (kind: MapKind, index: number, count: number): boolean =>
  kind === 'outside at true size' || (kind === 'bore at true size' && index + 1 < count)

const deepestEdge = (ports: readonly PlannedPort[]): Millimetre =>
  Math.max(
    ...ports.flatMap(({ windows }) => windows.flatMap(({ outline }) => outline.outside.map(({ depth }) => depth))),
    ...ports.map(({ bottom }) => bottom),
  )

const lowest = (panels: readonly Unrolled[], deepest: Millimetre): Point =>
  Math.max(...panels.map(panel => onPanel(panel, { azimuth: panel.left, depth: deepest }).y))

/** One panel round, or at true size as many as the paper's width asks for, one below the other. */
function panelsOf(plan: Plan, kind: MapKind, width: Point): readonly Unrolled[] {
  const belt = portBelt(plan.ports)
  const shape = kind === 'outside at true size' ? milledShape(plan) : finishedShape(plan)
  const outside = kind === 'outside at true size'
  const radius = shape ? (outside ? outsideRadiusAt(shape, belt) : boreRadius(shape, belt)) : 0
  const round = 2 * Math.PI * radius
  const right = kind === 'bore' ? MARGIN.right : onPaper(TAB + 1)
  const room = { width: width - MARGIN.left - right, height: Number.POSITIVE_INFINITY }
  const { from, below } = (outside && plan.fixture?.wrap) || { from: 0, below: 0 }
  const scale = kind === 'bore' ? (scalesThatFit({ width: round, height: 1 }, room, 2)[0] ?? 1) : 1
  const count = Math.ceil(onPaper(round * scale) / room.width - 1e-9)
  const blank = blankAzimuth(plan.ports, outside ? 'outside' : 'finished')
  const sense = outside ? 1 : -1
  const pitch = onPaper((deepestEdge(plan.ports) + 4 - from) * scale) + FOOT + TOP
  return Array.from({ length: count }, (_, index) => ({
    radius,
    seenFrom: outside ? ('outside' as const) : ('inside' as const),
    left: blank + (sense * index * 360) / count,
    span: 360 / count,
    origin: { x: MARGIN.left, y: TOP + index * pitch },
    from,
    zero: from - below,
    scale,
  }))
}

function panelMarks(plan: Plan, panel: Unrolled, deepest: Millimetre, units: Units): readonly Mark[] {
  const { ports } = plan
  const { x, y } = panel.origin
  const [right, bottom] = [x + panelWidth(panel), onPanel(panel, { azimuth: panel.left, depth: deepest }).y]
  const edges = (window: PortWindow): readonly (readonly [PortWindow['outline']['finished'], Stroke])[] =>
    panel.seenFrom === 'outside'
      ? [[window.outline.outside, OUTLINE]]
      : [
          [window.outline.asCut, DASHED],
          [window.outline.finished, OUTLINE],
        ]
  return [
    line({ x, y }, { x: right, y }, OUTLINE),
    ...[x, right].map(side => line({ x: side, y }, { x: side, y: bottom }, THIN)),
    line({ x, y: bottom }, { x: right, y: bottom }, THIN),
    ...degreeScale(panel, bottom),
    ...depthScale(panel, deepest, units),
    ...ports.flatMap(({ name, at, windows }) =>
      windows.flatMap((window, i) =>
        windowAsCut(plan, { port: name, at, window: i + 1 })?.hole === false ? [] : holeMarks(panel, window),
      ),
    ),
    ...ports.flatMap(({ windows }) =>
      windows.flatMap(window =>
        edges(window).flatMap(([outline, stroke]) =>
          outlineOnPanel(panel, outline).map(({ from, to }) => line(from, to, stroke)),
        ),
      ),
    ),
  ]
}

/** The entry hole where it is punched outside, or where it comes through in the bore. */
function holeMarks(panel: Unrolled, { entryHole }: PortWindow): readonly Mark[] {
  const place = panel.seenFrom === 'outside' ? entryHole.outside : entryHole.bore
  if (!place) return []
  const middle = onPanel(panel, place)
  const [radius, arm] = [onPaper((entryHole.diameter / 2) * panel.scale), onPaper(1)]
  if (middle.x - radius < panel.origin.x || middle.x + radius > panel.origin.x + panelWidth(panel)) return []
  return [
    circle(middle, radius, { stroke: DASHED }),
    line({ x: middle.x - arm, y: middle.y }, { x: middle.x + arm, y: middle.y }),
    line({ x: middle.x, y: middle.y - arm }, { x: middle.x, y: middle.y + arm }),
  ]
}

function portLabel(port: PlannedPort, panel: Unrolled, units: Units): readonly Labelled[] {
  const outside = panel.seenFrom === 'outside'
  const [window] = port.windows
  if (!window) return []
  const outline = outside ? window.outline.outside : window.outline.finished
  const [from, to] = sides(window, outside ? 'outside' : 'finished')
  const highest = outline.reduce((best, point) => (point.depth < best.depth ? point : best))
  const anchor: XY = onPanel(panel, { azimuth: (from + to) / 2, depth: highest.depth })
  if (anchor.x < panel.origin.x || anchor.x > panel.origin.x + panelWidth(panel)) return []
  const { finished, asCut } = window.edges
  return [
    {
      rows: [
        { lines: [port.name], bold: true },
        {
          lines: outside
            ? [`at ${clockPosition(port.at)} in the bore`]
            : [
                ...(port.opens === undefined ? [] : [`opens ${angle(port.opens, 1)}°`]),
                `finished ${length(finished.highest, units, 2)} to ${length(finished.lowest, units, 2)}`,
                `as cut ${length(asCut.highest, units, 2)} to ${length(asCut.lowest, units, 2)}`,
              ],
        },
      ],
      anchor,
      toward: -90,
      spread: 180,
    },
  ]
}
