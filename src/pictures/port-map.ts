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
import { barWords, degreeScale, depthScale, scaleBar } from './map-scales.ts'
import { DASHED, line, OUTLINE, THIN, type XY } from './marks.ts'
import { type Mark, type Measure, onPaper, type Picture, type Point, type Stroke } from './picture.ts'
import { scalesThatFit, scaleWritten } from './scale.ts'
import { onPanel, outlineOnPanel, panelWidth, type Unrolled } from './unrolled.ts'

/** Left of a panel for the depth scale, right of it for the last figure of the degree scale. */
const MARGIN: { readonly left: Point; readonly right: Point } = { left: onPaper(9), right: onPaper(5) }
const TOP: Point = onPaper(5)
/** Below a panel for the degree scale. */
const FOOT: Point = onPaper(8)

export type MapKind = 'bore' | 'bore at true size' | 'outside at true size'

/**
 * The port belt unrolled, from the finished top face down. The bore is seen from inside, so that azimuth runs to the
 * left: finished edges in outline, edges as cut dashed. The outside is seen from outside, as a paper wrapped round it.
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
  const drawn = panels.flatMap(panel => panelMarks(plan.ports, panel, deepest, units))
  const bottom = lowest(panels, deepest)
  const scale = panels[0]?.scale ?? 1
  const bar = scaleBar({
    y: { x: MARGIN.left, y: bottom + FOOT + 6 },
    millimetre: barLength(kind),
    scale,
    measure,
    units,
  })
  const caption = captionBlock(captionsOf(kind, scale, panels, units), width, measure)
  const height = bottom + FOOT + 22 + caption.height
  const frame = { x: MARGIN.left, y: 0, width: width - MARGIN.left, height: bottom }
  const labels = panels.flatMap(panel => plan.ports.flatMap(port => portLabel(port, panel, units)))
  const { marks } = labelMarks(labels, drawn, frame, measure)
  return {
    width,
    height,
    alternative: `${kind === 'outside at true size' ? 'Outside' : 'Bore'} of ${plan.part.number} unrolled at ${scaleWritten(scale)}: ${plan.ports.map(({ name, at }) => `${name} at ${angle(at, 0)}°`).join(', ')}.`,
    marks: [...drawn, ...marks, ...bar, ...caption.marksAt(height)],
  }
}

const deepestEdge = (ports: readonly PlannedPort[]): Millimetre =>
  Math.max(
    ...ports.flatMap(({ windows }) => windows.flatMap(({ outline }) => outline.outside.map(({ depth }) => depth))),
    ...ports.map(({ bottom }) => bottom),
  )

const lowest = (panels: readonly Unrolled[], deepest: Millimetre): Point =>
  Math.max(...panels.map(panel => panel.origin.y + onPaper(deepest * panel.scale)))

/** One panel round, or at true size as many as the paper's width asks for, one below the other. */
function panelsOf(plan: Plan, kind: MapKind, width: Point): readonly Unrolled[] {
  const belt = portBelt(plan.ports)
  const shape = kind === 'outside at true size' ? milledShape(plan) : finishedShape(plan)
  const outside = kind === 'outside at true size'
  const radius = shape ? (outside ? outsideRadiusAt(shape, belt) : boreRadius(shape, belt)) : 0
  const round = 2 * Math.PI * radius
  const room = { width: width - MARGIN.left - MARGIN.right, height: Number.POSITIVE_INFINITY }
  const scale = kind === 'bore' ? (scalesThatFit({ width: round, height: 1 }, room, 2)[0] ?? 1) : 1
  const count = Math.ceil(onPaper(round * scale) / room.width - 1e-9)
  const blank = blankAzimuth(plan.ports, outside ? 'outside' : 'finished')
  const sense = outside ? 1 : -1
  const pitch = onPaper((deepestEdge(plan.ports) + 4) * scale) + FOOT + TOP
  return Array.from({ length: count }, (_, index) => ({
    radius,
    seenFrom: outside ? ('outside' as const) : ('inside' as const),
    left: blank + (sense * index * 360) / count,
    span: 360 / count,
    origin: { x: MARGIN.left, y: TOP + index * pitch },
    scale,
  }))
}

function panelMarks(
  ports: readonly PlannedPort[],
  panel: Unrolled,
  deepest: Millimetre,
  units: Units,
): readonly Mark[] {
  const { x, y } = panel.origin
  const [right, bottom] = [x + panelWidth(panel), y + onPaper(deepest * panel.scale)]
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
    ...ports.flatMap(({ windows }) =>
      windows.flatMap(window =>
        edges(window).flatMap(([outline, stroke]) =>
          outlineOnPanel(panel, outline).map(({ from, to }) => line(from, to, stroke)),
        ),
      ),
    ),
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
            ? [`at ${angle(port.at, 0)}° in the bore`]
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

/** Of the bar by which a print is checked, in millimetres whatever the units: a rule lies on round figures. */
const barLength = (kind: MapKind): Millimetre => (kind === 'bore' ? 10 : 50)

function captionsOf(kind: MapKind, scale: number, panels: readonly Unrolled[], units: Units): readonly string[] {
  const strips = panels.length > 1 ? ` ${panels.length} strips: cut, and join in this order.` : ''
  const bar = barWords(barLength(kind), units)
  const depths = units === 'inch' ? ' Depths in inches.' : ''
  switch (kind) {
    case 'bore':
      return [
        `Bore seen from inside, head up: azimuth runs to the left. Scale ${scaleWritten(scale)}. Full line: finished edge. Dashed: edge as cut.`,
        `Depths in ${units === 'mm' ? 'mm' : 'inches'}: finished from the finished top face, as cut from the top face as it then stands.`,
      ]
    case 'bore at true size':
      return [
        `Scale 1:1, print without fitting to the page: the bar is ${bar}.${depths}${strips}`,
        'Finished bore seen from inside. Roll into the bore, print toward the axis, heavy edge level with the top face.',
      ]
    case 'outside at true size':
      return [
        `Scale 1:1, print without fitting to the page: the bar is ${bar}.${depths}${strips}`,
        'Outside as the ports are milled. Wrap round the part, print outward, heavy edge level with the finished top face.',
      ]
  }
}
