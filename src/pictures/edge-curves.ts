import { placesShowing } from '../decimal-places.ts'
import { angle, fixed, length, ofDrawing, type Units, unitOf } from '../figures.ts'
import type { Plan } from '../plan/plan.ts'
import type { EdgePoint, PlannedPort, PortWindow } from '../ports/port.ts'
import { type Degree, degrees, type Millimetre, wrapped } from '../units.ts'
import { captionBlock } from './caption.ts'
import { boreRadius, finishedShape } from './finished-part.ts'
import { type InColumn, labelColumn } from './label-column.ts'
import { DASHED, line, OUTLINE, polyline, SMALL, text, type XY } from './marks.ts'
import { type Mark, type Measure, onPaper, type Picture, type Point } from './picture.ts'
import { scaleWritten } from './scale.ts'

const ENLARGED: readonly number[] = [200, 100, 50, 20, 10, 5, 2, 1]
const PANEL = { height: onPaper(34), curve: onPaper(14), side: onPaper(12), head: 26 }
const ACROSS = 2

/** The roof of a window between its corners: depth below the finished top face against azimuth from the middle. */
export function roofOf(
  window: PortWindow,
  outline: readonly EdgePoint[],
  corner: Millimetre,
  radius: Millimetre,
): readonly EdgePoint[] {
  const turned = outline.map(({ azimuth, depth }) => ({ azimuth: wrapped(azimuth - window.at), depth }))
  const depths = turned.map(({ depth }) => depth)
  const middle = (Math.min(...depths) + Math.max(...depths)) / 2
  const azimuths = turned.map(({ azimuth }) => azimuth)
  const inward: Degree = degrees(corner / radius) * 1.02
  const [from, to] = [Math.min(...azimuths) + inward, Math.max(...azimuths) - inward]
  return turned
    .filter(({ azimuth, depth }) => depth < middle && azimuth >= from && azimuth <= to)
    .toSorted((a, b) => a.azimuth - b.azimuth)
}

/** The timing edges enlarged: what the bore's last cut moves them by, and how a straight cut falls away from level. */
export function drawEdges(plan: Plan, width: Point, measure: Measure, units: Units = 'mm'): Picture {
  const shape = finishedShape(plan)
  const ports = unlike(plan.ports)
  const roofs = ports.flatMap(port => {
    const [window] = port.windows
    if (!shape || !window) return []
    const radius = boreRadius(shape, port.top)
    const { finished, asCut } = window.outline
    return [
      {
        port,
        window,
        finished: roofOf(window, finished, port.corner, radius),
        asCut: roofOf(window, asCut, port.corner, radius),
      },
    ]
  })
  const shown = roofs.filter(({ finished, asCut }) => finished.length > 1 && asCut.length > 1)
  const panelWidth = width / ACROSS
  const marks = shown.flatMap((roof, index) => {
    const corner = { x: (index % ACROSS) * panelWidth, y: Math.floor(index / ACROSS) * PANEL.height }
    return panelMarks({ roof, corner, width: panelWidth, measure, units })
  })
  const caption = captionBlock(
    [
      `Top edges between their corners, seen from inside; across, each window fills its panel. Full line: finished. Dashed: before the bore is ground, from the same finished top face.${units === 'inch' ? ' Depths in inches.' : ''}${
        shown.some(isStraight)
          ? ' Thin: level with the highest point of a straight cut, where a level cut would run.'
          : ''
      }`,
    ],
    width,
    measure,
  )
  const height = Math.ceil(shown.length / ACROSS) * PANEL.height + caption.height
  return {
    width,
    height,
    alternative: `Top edges of ${plan.part.number} enlarged: ${shown.map(({ port, window }) => `${port.name} finished ${length(window.edges.finished.highest, units, 2)}`).join(', ')}.`,
    marks: [...marks, ...caption.marksAt(height)],
  }
}

/** One of every mirrored pair: ports whose edges and cut are the same. */
function unlike(ports: readonly PlannedPort[]): readonly PlannedPort[] {
  const key = ({ top, up, back, width }: PlannedPort): string =>
    [top, up, back, width].map(value => fixed(value, 4)).join()
  return ports.filter((port, index) => ports.findIndex(other => key(other) === key(port)) === index)
}

type Roof = {
  readonly port: PlannedPort
  readonly window: PortWindow
  readonly finished: readonly EdgePoint[]
  readonly asCut: readonly EdgePoint[]
}

function panelMarks({
  roof: { port, window, finished, asCut },
  corner,
  width,
  measure,
  units,
}: {
  readonly roof: Roof
  readonly corner: XY
  readonly width: Point
  readonly measure: Measure
  readonly units: Units
}): readonly Mark[] {
  const straight = isStraight({ port })
  const level = window.edges.finished.highest
  const depths = [...[...finished, ...asCut].map(({ depth }) => depth), ...(straight ? [level] : [])]
  const highest = Math.min(...depths)
  const span = Math.max(1e-6, Math.max(...depths) - highest)
  const scale = ENLARGED.find(enlarged => onPaper(span * enlarged) <= PANEL.curve) ?? 1
  const all = [...finished, ...asCut].map(({ azimuth }) => azimuth)
  const [least, most] = [Math.min(...all), Math.max(...all)]
  const left = corner.x + PANEL.side
  const run = width - PANEL.side - onPaper(34)
  const top = corner.y + PANEL.head
  // Seen from inside: azimuth runs to the left.
  const at = ({ azimuth, depth }: EdgePoint): XY => ({
    x: left + ((most - azimuth) / (most - least)) * run,
    y: top + onPaper((depth - highest) * scale),
  })
  const curves = [
    polyline(finished.map(at), OUTLINE),
    polyline(asCut.map(at), DASHED),
    ...(straight ? [line(at({ azimuth: most, depth: level }), at({ azimuth: least, depth: level }))] : []),
  ]
  const crank = port.dAnglePerTenth === undefined ? '' : `, 0.1 mm is ${angle(port.dAnglePerTenth, 2)}° of crank`
  const title = text({ x: corner.x, y: corner.y + 12 }, port.name, { size: SMALL, bold: true })
  const after = measure(port.name, SMALL, true) + 6
  const heading = [
    title,
    text({ x: corner.x + after, y: corner.y + 12 }, `up ${angle(port.up, 0)}°${crank}, depth ${scaleWritten(scale)}`),
  ]
  const bar = barMarks({ x: corner.x + onPaper(5.5), y: top }, scale, units)
  const labels = straight
    ? straightLabels({ finished, asCut, window, at, units })
    : [
        { words: 'finished', roof: finished },
        { words: 'before grinding', roof: asCut },
      ].flatMap(({ words, roof }) => {
        const [first] = roof
        const edge = Math.min(...roof.map(({ depth }) => depth))
        return first ? [{ rows: [{ lines: [`${words} ${length(edge, units)}`] }], anchor: at(first) }] : []
      })
  const column = {
    x: left + run + onPaper(4),
    side: 'right' as const,
    top: corner.y + 16,
    bottom: corner.y + PANEL.height,
  }
  return [...curves, ...heading, ...bar, ...labelColumn(labels, column, measure)]
}

const isStraight = ({ port }: Pick<Roof, 'port'>): boolean => port.cut === 'straight'

/** Where a level cut would run, and how far the straight one falls away from it. */
function straightLabels({
  finished,
  asCut,
  window: { edges, roofFall = 0 },
  at,
  units,
}: {
  readonly finished: readonly EdgePoint[]
  readonly asCut: readonly EdgePoint[]
  readonly window: PortWindow
  readonly at: (point: EdgePoint) => XY
  readonly units: Units
}): readonly InColumn[] {
  const lowest = finished.reduce((low, point) => (point.depth > low.depth ? point : low))
  const [right] = finished
  const [rightAsCut] = asCut
  if (!right || !rightAsCut) return []
  const label = (words: string, anchor: XY): InColumn => ({ rows: [{ lines: [words] }], anchor })
  return [
    label(`level at ${length(edges.finished.highest, units)}`, at({ ...right, depth: edges.finished.highest })),
    label('before grinding', at(rightAsCut)),
    label(`finished: falls ${length(roofFall, units)} ${unitOf(units)}`, at(lowest)),
  ]
}

/** Bars of a round length, by the least enlargement at which each is long enough to see. */
const BARS: Readonly<Record<Units, readonly { readonly from: number; readonly bar: number }[]>> = {
  mm: [
    { from: 20, bar: 0.1 },
    { from: 5, bar: 0.5 },
    { from: 0, bar: 2 },
  ],
  inch: [
    { from: 100, bar: 0.002 },
    { from: 20, bar: 0.005 },
    { from: 5, bar: 0.02 },
    { from: 0, bar: 0.1 },
  ],
}

/** How much 0.1 mm is, or a few thousandths of an inch. */
function barMarks({ x, y }: XY, scale: number, units: Units): readonly Mark[] {
  const bar = BARS[units].find(({ from }) => scale >= from)?.bar ?? 1
  const bottom = y + onPaper(bar * scale * (units === 'mm' ? 1 : 25.4))
  return [
    line({ x, y }, { x, y: bottom }),
    line({ x: x - 2, y }, { x: x + 2, y }),
    line({ x: x - 2, y: bottom }, { x: x + 2, y: bottom }),
    text({ x, y: bottom + 10 }, `${ofDrawing(bar, placesShowing(bar))} ${unitOf(units)}`, { anchor: 'middle' }),
  ]
}
