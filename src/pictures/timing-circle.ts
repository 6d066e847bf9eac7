import { angle } from '../figures.ts'
import type { Plan } from '../plan/plan.ts'
import type { Degree } from '../units.ts'
import { cropped } from './crop.ts'
import { type InColumn, labelColumn } from './label-column.ts'
import { arcPoints, arrowHead, CENTRE_LINE, circle, line, OUTLINE, polyline, text, type XY } from './marks.ts'
import type { Room } from './operation-drawing.ts'
import { type Mark, type Measure, onPaper, type Picture, type Point } from './picture.ts'

const CAPTION = 14
const RADIUS: Point = onPaper(26)
/** Between the arc of one port and the next. */
const RING: Point = onPaper(4)

type Event = {
  readonly names: readonly string[]
  readonly opens: Degree
  readonly closes: Degree
  readonly duration: Degree
}

/** Crank degrees after top dead centre, clockwise from the top, as the page counts: clockwise from three o'clock. */
const crankOnPage = (angle: Degree): Degree => angle - 90

export const onCircle = ({ x, y }: XY, radius: Point, crank: Degree): XY => {
  const page = (crankOnPage(crank) * Math.PI) / 180
  return { x: x + radius * Math.cos(page), y: y + radius * Math.sin(page) }
}

/** The timing circle: how long each port is open, from the crank angle at which it opens to that at which it closes. */
export function drawTimingCircle(plan: Plan, room: Room, measure: Measure): Picture {
  const events = eventsOf(plan)
  const centre = { x: room.width / 2, y: (room.height - CAPTION) / 2 }
  const drawn = [...dial(centre, events), ...events.flatMap((event, ring) => arcMarks(event, ring, centre))]
  const caption = 'Crank turns clockwise. Degrees after top dead centre (TDC), of the finished bore edges.'
  const when = events.map(
    ({ names, opens, closes }) => `${names.join(' and ')} opens ${angle(opens, 1)}°, closes ${angle(closes, 1)}°`,
  )
  const marks = [...drawn, ...eventLabels(events, centre, room, measure)]
  return cropped({
    marks,
    captions: [caption],
    width: room.width,
    measure,
    alternative: `Timing circle: ${when.join('; ')}.`,
  })
}

/** Ports that open and close together share an arc. */
function eventsOf({ ports }: Plan): readonly Event[] {
  const events = new Map<string, Event>()
  for (const { name, opens, closes, duration } of ports) {
    if (opens === undefined || closes === undefined || duration === undefined) continue
    const key = `${opens.toFixed(4)} ${closes.toFixed(4)}`
    events.set(key, { names: [...(events.get(key)?.names ?? []), name], opens, closes, duration })
  }
  return [...events.values()].toSorted((a, b) => a.opens - b.opens)
}

const ringRadius = (ring: number): Point => RADIUS - ring * RING

function dial(centre: XY, events: readonly Event[]): readonly Mark[] {
  const symmetrical = events.every(({ opens, closes }) => Math.abs(opens + closes - 360) < 1e-6)
  const ticks = Array.from({ length: 36 }, (_, index) => {
    const long = index % 9 === 0 ? onPaper(2) : onPaper(1)
    return line(
      onCircle(centre, RADIUS + onPaper(3), index * 10),
      onCircle(centre, RADIUS + onPaper(3) + long, index * 10),
    )
  })
  const inner = Math.max(onPaper(8), ringRadius(events.length) - onPaper(3))
  const turn = arcPoints({ centre, radius: inner, from: crankOnPage(-28), to: crankOnPage(28) })
  const [before, tip] = turn.slice(-2)
  return [
    circle(centre, RADIUS + onPaper(3)),
    ...ticks,
    line(onCircle(centre, inner - onPaper(3), 0), onCircle(centre, RADIUS + onPaper(3), 0), CENTRE_LINE),
    line(onCircle(centre, inner - onPaper(3), 180), onCircle(centre, RADIUS + onPaper(3), 180), CENTRE_LINE),
    polyline(turn),
    ...(before && tip ? [arrowHead(tip, before)] : []),
    text({ x: centre.x, y: centre.y - RADIUS - onPaper(6) }, 'TDC', { anchor: 'middle', bold: true }),
    text({ x: centre.x, y: centre.y + RADIUS + onPaper(8) }, symmetrical ? 'BDC 180°' : '180°', {
      anchor: 'middle',
      bold: true,
    }),
  ]
}

const arcMarks = ({ opens, closes }: Event, ring: number, centre: XY): readonly Mark[] => [
  polyline(arcPoints({ centre, radius: ringRadius(ring), from: crankOnPage(opens), to: crankOnPage(closes) }), OUTLINE),
  ...[opens, closes].map(end =>
    line(onCircle(centre, ringRadius(ring) - onPaper(1.2), end), onCircle(centre, RADIUS + onPaper(4), end)),
  ),
]

/** Openings on the right, where the crank passes going down; closings on the left. */
function eventLabels(events: readonly Event[], centre: XY, room: Room, measure: Measure): readonly Mark[] {
  const named = (names: readonly string[], line: string, at: Degree): InColumn => ({
    rows: [{ lines: names, bold: true }, { lines: [line] }],
    anchor: onCircle(centre, RADIUS + onPaper(4), at),
  })
  const away = RADIUS + onPaper(10)
  const rows = { top: 4, bottom: room.height - CAPTION }
  return [
    ...labelColumn(
      events.map(({ names, opens }) => named(names, `opens ${angle(opens, 1)}°`, opens)),
      { x: centre.x + away, side: 'right', ...rows },
      measure,
    ),
    ...labelColumn(
      events.map(({ names, closes, duration }) =>
        named(names, `closes ${angle(closes, 1)}°, open for ${angle(duration, 1)}°`, closes),
      ),
      { x: centre.x - away, side: 'left', ...rows },
      measure,
    ),
  ]
}
