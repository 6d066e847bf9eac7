import { angle, type Units } from '../figures.ts'
import type { Plan } from '../plan/plan.ts'
import type { PlannedPort, PortWindow } from '../ports/port.ts'
import { type Degree, type Millimetre, radians } from '../units.ts'
import { cropped } from './crop.ts'
import { type DrawnDatum, datumAnchor, datumInPlan, datumRows, drawnDatum } from './datum-marks.ts'
import {
  blankAzimuth,
  boreRadius,
  finishedShape,
  outsideRadiusAt,
  portBelt,
  sides,
  streamAzimuth,
} from './finished-part.ts'
import { hatch } from './hatch.ts'
import { type Labelled, labelMarks } from './label-marks.ts'
import { type Listed, listedLabels } from './listed-labels.ts'
import { arrow, arrowHead, CENTRE_LINE, line, OUTLINE, polygon, polyline, type XY } from './marks.ts'
import type { Room } from './operation-drawing.ts'
import { type Mark, type Measure, onPaper, type Picture } from './picture.ts'
import { scalesThatFit, scaleWritten } from './scale.ts'

const CAPTION = 14
/** Kept free around the part for labels. */
/** Labels take half of a narrow room. */
const LABEL_ROOM = { width: onPaper(88), share: 0.5, height: onPaper(40) }

type Turned = { readonly at: (azimuth: Degree, radius: Millimetre) => XY; readonly page: (azimuth: Degree) => Degree }

/**
 * The liner in plan, seen from the head, azimuth 0 up as it stands on the rotary at zero, azimuth counter-clockwise: the
 * windows where they are in the finished bore and on the outside, and the way each stream takes.
 */
export function drawPlanView(plan: Plan, room: Room, measure: Measure, units: Units = 'mm'): Picture {
  const { ports } = plan
  const shape = finishedShape(plan)
  const depth = portBelt(ports)
  const [bore, outside] = shape ? [boreRadius(shape, depth), outsideRadiusAt(shape, depth)] : [0, 0]
  const datum = drawnDatum(plan.clocking?.datum)
  const widest = Math.max(2 * outside, datum?.place.diameter ?? 0)
  const part = { width: widest, height: widest }
  const space = {
    width: room.width - Math.min(LABEL_ROOM.width, LABEL_ROOM.share * room.width),
    height: room.height - LABEL_ROOM.height - CAPTION,
  }
  const frame = { x: 0, y: 0, width: room.width, height: room.height - CAPTION }
  let marks: readonly Mark[] = []
  let listed: Listed = { marks: [], captions: [] }
  let scale = 1
  for (scale of scalesThatFit(part, space, 2)) {
    const turned = turnedAbout({ x: room.width / 2, y: (room.height - CAPTION) / 2 }, scale)
    const drawn = [
      ...wallMarks(ports, bore, outside, turned),
      ...streamMarks({ ports, bore, outside, scale, turned }),
      ...azimuthMarks(ports, widest / 2, scale, turned),
      ...(datum ? datumInPlan(datum, turned.at, scale) : []),
    ]
    const labels = [
      zeroLabel(widest / 2, scale, turned),
      ...(datum ? [datumLabel(datum, turned, units)] : []),
      ...ports.map(port => portLabel(port, bore, outside, turned)),
    ]
    const labelled = labelMarks(labels, drawn, frame, measure)
    marks = [...drawn, ...labelled.marks]
    listed = listedLabels(labelled.missing, marks, frame, measure)
    if (labelled.missing.length === 0) break
  }
  const caption = `Seen from the head: the angle round the liner counts counter-clockwise from 12 o’clock. All windows drawn in one plane. Scale ${scaleWritten(scale)}.`
  const where = ports.map(({ name, at }) => `${name} at ${angle(at, 0)}°`).join(', ')
  return cropped({
    marks: [...marks, ...listed.marks],
    captions: [caption, ...listed.captions],
    width: room.width,
    measure,
    alternative: `Plan view of ${plan.part.number} from the head: ${where}.`,
  })
}

/** Azimuth 0 up, counter-clockwise; `page` gives the direction as the page counts, clockwise from three o'clock. */
const turnedAbout = (centre: XY, scale: number): Turned => ({
  at: (azimuth, radius) => ({
    x: centre.x - onPaper(radius * scale) * Math.sin(radians(azimuth)),
    y: centre.y - onPaper(radius * scale) * Math.cos(radians(azimuth)),
  }),
  page: azimuth => -90 - azimuth,
})

const arcOf = ({ at }: Turned, radius: Millimetre, from: Degree, to: Degree): readonly XY[] => {
  const count = Math.max(1, Math.ceil(Math.abs(to - from) / 2))
  return Array.from({ length: count + 1 }, (_, index) => at(from + ((to - from) * index) / count, radius))
}

/** The wall between each window and the next, cut. */
function wallMarks(
  ports: readonly PlannedPort[],
  bore: Millimetre,
  outside: Millimetre,
  turned: Turned,
): readonly Mark[] {
  const windows = ports.flatMap(({ windows }) => windows).toSorted((a, b) => a.at - b.at)
  return windows.flatMap((window, index) => {
    const next = windows[index + 1] ?? windows[0] ?? window
    const round = index + 1 < windows.length ? 0 : 360
    const inner = [sides(window, 'finished')[1], sides(next, 'finished')[0] + round] as const
    const outer = [sides(window, 'outside')[1], sides(next, 'outside')[0] + round] as const
    if (inner[1] <= inner[0] || outer[1] <= outer[0]) return []
    const piece = [...arcOf(turned, bore, ...inner), ...arcOf(turned, outside, outer[1], outer[0])]
    return [...hatch(piece), polygon(piece, { stroke: OUTLINE })]
  })
}

/** Through the middle of every window: into the bore, or out of it through the exhaust. */
function streamMarks({
  ports,
  bore,
  outside,
  scale,
  turned: { at, page },
}: {
  readonly ports: readonly PlannedPort[]
  readonly bore: Millimetre
  readonly outside: Millimetre
  readonly scale: number
  readonly turned: Turned
}): readonly Mark[] {
  return ports.flatMap(port => {
    const way = radians(page(streamAzimuth(port)))
    return port.windows.flatMap(window => {
      const middle = at(window.at, bore)
      const along = (distance: Millimetre): XY => ({
        x: middle.x + onPaper(distance * scale) * Math.cos(way),
        y: middle.y + onPaper(distance * scale) * Math.sin(way),
      })
      const tail = along(-1.6 * (outside - bore) - 3 / scale)
      const tip = along(reachOf(port, window, bore))
      return port.role === 'exhaust' ? arrow(tip, tail) : arrow(tail, tip)
    })
  })
}

/** To the plane of symmetry, where a pair of streams meets, but not farther than most of the way to the axis. */
function reachOf(port: PlannedPort, { at }: PortWindow, bore: Millimetre): Millimetre {
  if (port.role === 'exhaust') return bore * 0.45
  const across = bore * Math.sin(radians(at))
  const closing = -Math.sin(radians(streamAzimuth(port))) * Math.sign(across)
  return closing > 0.2 ? Math.min(Math.abs(across) / closing, 1.4 * bore) : bore * 0.6
}

/** The axes of azimuth 0 and 90, and an arrow the way azimuth counts, where the wall is blank. */
function azimuthMarks(
  ports: readonly PlannedPort[],
  outside: Millimetre,
  scale: number,
  turned: Turned,
): readonly Mark[] {
  const reach = outside + 4 / scale
  const blank = blankAzimuth(ports, 'outside')
  const sense = arcOf(turned, outside + 3 / scale, blank - 14, blank + 14)
  const [before, tip] = sense.slice(-2)
  return [
    line(turned.at(0, reach), turned.at(180, reach), CENTRE_LINE),
    line(turned.at(90, reach), turned.at(-90, reach), CENTRE_LINE),
    polyline(sense),
    ...(before && tip ? [arrowHead(tip, before)] : []),
  ]
}

const zeroLabel = (outside: Millimetre, scale: number, { at }: Turned): Labelled => ({
  rows: [{ lines: ['12 o’clock, angle 0°'] }],
  anchor: at(0, outside + 4 / scale),
  toward: -90,
})

const datumLabel = (datum: DrawnDatum, { at, page }: Turned, units: Units): Labelled => ({
  rows: datumRows(datum, units),
  anchor: datumAnchor(datum, at),
  toward: page(datum.at),
  spread: 108,
  mayCross: true,
})

function portLabel(port: PlannedPort, bore: Millimetre, outside: Millimetre, { at, page }: Turned): Labelled {
  const [window] = port.windows
  const [from, to] = window ? sides(window, 'outside') : [port.at, port.at]
  const [inFrom, inTo] = window ? sides(window, 'finished') : [port.at, port.at]
  const quarter = 0.22 * (from + inFrom) + 0.28 * (to + inTo)
  const rotaries = [...new Set(port.windows.map(({ rotary }) => angle(rotary)))]
  const turns = [
    ...(port.back === 0 ? [] : [`back ${angle(port.back, 0)}°`]),
    ...(port.up === 0 ? [] : [`up ${angle(port.up, 0)}°`]),
  ]
  return {
    rows: [
      { lines: [port.name], bold: true },
      {
        lines: [
          [`at ${angle(port.at, 0)}°`, ...turns].join(', '),
          `rotary ${rotaries.map(each => `${each}°`).join(', ')}`,
        ],
      },
    ],
    anchor: at(quarter, (bore + outside) / 2),
    toward: page(quarter),
    spread: 108,
    end: 'dot',
  }
}
