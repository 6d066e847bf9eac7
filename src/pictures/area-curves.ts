import { angle, area, fixed } from '../figures.ts'
import type { Plan } from '../plan/plan.ts'
import type { GasExchange, Uncovering } from '../ports/gas-exchange.ts'
import type { Degree, SquareMillimetre } from '../units.ts'
import { type Axis, footAxis, onAxis, pointOn, roundStep, sideAxis } from './chart.ts'
import { cropped } from './crop.ts'
import { type Labelled, labelMarks } from './label-marks.ts'
import { listedLabels } from './listed-labels.ts'
import { CENTRE_LINE, DASHED, line, OUTLINE, polygon, polyline, SHADE, SMALL, text } from './marks.ts'
import type { Room } from './operation-drawing.ts'
import { type Mark, type Measure, onPaper, type Picture, type Point } from './picture.ts'

const LEFT: Point = onPaper(14)
const HEAD: Point = onPaper(8)
/** Right of the curves, for their labels. */
const LABELS: Point = onPaper(48)
const FOOT: Point = onPaper(10)

type Curve = {
  readonly name: string
  readonly points: readonly Uncovering[]
  readonly figures: readonly string[]
  readonly dashed: boolean
}

/** Whether any port is timed by the crown, so that there is a curve to draw. */
export const hasAreaCurves = ({ gasExchange }: Plan): boolean =>
  gasExchange?.areas.some(({ uncovered = [] }) => uncovered.length > 1) ?? false

/** Flow area that the crown leaves open against the crank angle: every role's ports together, and each where they are several. */
export function drawAreaCurves(plan: Plan, gas: GasExchange, room: Room, measure: Measure): Picture {
  const curves = curvesOf(plan, gas)
  const all = curves.flatMap(({ points }) => points)
  const [from, to] = [Math.min(...all.map(({ angle }) => angle)), Math.max(...all.map(({ angle }) => angle))]
  const most = Math.max(1, ...all.map(({ area }) => area))
  const steps = { across: 10, up: roundStep(most, 6) }
  const across: Axis = {
    from: Math.floor(from / steps.across) * steps.across,
    to: Math.ceil(to / steps.across) * steps.across,
    start: LEFT,
    end: room.width - LABELS,
  }
  const up: Axis = { from: 0, to: Math.ceil(most / steps.up) * steps.up, start: room.height - FOOT, end: HEAD }
  const bottom = gas.bottomDeadCentre ?? 180
  const drawn = [
    ...blowdownMarks(gas, across, up),
    ...curves.map(({ points, dashed }) =>
      polyline(
        points.map(point => pointOn(across, up, point.angle, point.area)),
        dashed ? DASHED : OUTLINE,
      ),
    ),
    line({ x: onAxis(across, bottom), y: up.start }, { x: onAxis(across, bottom), y: up.end - 3 }, CENTRE_LINE),
    text({ x: onAxis(across, bottom), y: up.end - 6 }, `BDC ${angle(bottom, 1)}°`, {
      anchor: 'middle',
      size: SMALL,
      bold: true,
    }),
    ...sideAxis(up, across.start, steps.up, 'mm²'),
    ...footAxis(across, up.start, steps.across, 'crank degrees after top dead centre'),
  ]
  const frame = { x: across.start, y: 0, width: room.width - across.start, height: up.start }
  const labels = [...curves.map(curve => curveLabel(curve, across, up)), ...blowdownLabel(gas, across, up)]
  const { marks, missing } = labelMarks(labels, drawn, frame, measure)
  const listed = listedLabels(missing, [...drawn, ...marks], frame, measure)
  return cropped({
    marks: [...drawn, ...marks, ...listed.marks],
    captions: [captionOf(curves), ...listed.captions],
    width: room.width,
    measure,
    alternative: alternativeOf(plan, curves),
  })
}

function curvesOf({ ports }: Plan, { areas }: GasExchange): readonly Curve[] {
  return areas.flatMap(({ role, uncovered = [], angleArea, specificTimeArea }): readonly Curve[] => {
    if (uncovered.length < 2) return []
    const own = ports.filter(port => port.role === role && port.opens !== undefined)
    const names = own.map(({ name }) => name)
    const opens = Math.min(...uncovered.map(({ angle }) => angle))
    const closes = Math.max(...uncovered.map(({ angle }) => angle))
    const figures = [
      `opens ${angle(opens, 1)}°, closes ${angle(closes, 1)}°`,
      `most ${area(largest(uncovered))} mm²`,
      `${fixed(angleArea, 0)} mm²·deg${specificTimeArea === undefined ? '' : `, ${fixed(specificTimeArea, 5)} s/m`}`,
    ]
    const whole = { name: sharedName(names), points: uncovered, figures, dashed: false }
    return own.length < 2
      ? [whole]
      : [whole, ...unlike(own.flatMap(({ uncovered }) => (uncovered ? [uncovered] : []))).map(each)]
  })
}

const largest = (points: readonly Uncovering[]): SquareMillimetre => Math.max(...points.map(({ area }) => area))

/** `main transfer` for a port and its mirror image, every name where they are of different kinds. */
function sharedName(names: readonly string[]): string {
  const plain = [...new Set(names.map(name => name.replace(/, mirrored$/, '')))]
  return `${plain.join(' and ')}${names.length > 1 ? `, ${names.length} together` : ''}`
}

const each = (points: readonly Uncovering[]): Curve => ({
  name: 'each',
  points,
  figures: [`most ${area(largest(points))} mm²`],
  dashed: true,
})

/** One of every mirrored pair. */
const unlike = (curves: readonly (readonly Uncovering[])[]): readonly (readonly Uncovering[])[] => {
  const key = (points: readonly Uncovering[]): string =>
    `${fixed(points[0]?.angle ?? 0, 3)} ${fixed(largest(points), 2)}`
  return curves.filter((points, index) => curves.findIndex(other => key(other) === key(points)) === index)
}

/** Under the exhaust's curve, from its opening to that of the first transfer. */
function blowdownMarks({ areas, blowdown }: GasExchange, across: Axis, up: Axis): readonly Mark[] {
  const exhaust = areas.find(({ role }) => role === 'exhaust')?.uncovered ?? []
  if (blowdown?.from === undefined || blowdown.to === undefined || exhaust.length < 2) return []
  const { from, to } = blowdown
  const within = exhaust.filter(({ angle }) => angle >= from && angle < to)
  const edge = [...within, { angle: to, area: between(exhaust, to) }]
  const foot = [to, from].map(angle => pointOn(across, up, angle, 0))
  return [
    polygon([...edge.map(({ angle, area }) => pointOn(across, up, angle, area)), ...foot], { fill: SHADE }),
    line(pointOn(across, up, to, 0), pointOn(across, up, to, between(exhaust, to))),
  ]
}

/** Along the drawn curve. */
function between(points: readonly Uncovering[], at: Degree): SquareMillimetre {
  const after = points.findIndex(({ angle }) => angle >= at)
  const [low, high] = [points[Math.max(0, after - 1)], points[after]]
  if (!low || !high || high.angle === low.angle) return high?.area ?? 0
  return low.area + ((at - low.angle) / (high.angle - low.angle)) * (high.area - low.area)
}

/** On the closing side, where the curves stand apart. */
function curveLabel({ name, points, figures }: Curve, across: Axis, up: Axis): Labelled {
  const closes = points.at(-1)?.angle ?? 0
  const top = points.find(({ area }) => area === largest(points))?.angle ?? closes
  const at = top + (closes - top) * 0.45
  return {
    rows: [{ lines: [name], bold: true }, { lines: figures }],
    anchor: pointOn(across, up, at, between(points, at)),
    toward: -25,
    spread: 70,
    mayCross: true,
    end: 'dot',
  }
}

function blowdownLabel({ blowdown, areas }: GasExchange, across: Axis, up: Axis): readonly Labelled[] {
  if (blowdown?.from === undefined || blowdown.to === undefined) return []
  const exhaust = areas.find(({ role }) => role === 'exhaust')?.uncovered ?? []
  const at = blowdown.from + 0.75 * (blowdown.to - blowdown.from)
  const time = blowdown.time === undefined ? '' : `, ${fixed(blowdown.time, 2)} ms`
  const specific = blowdown.specificTimeArea === undefined ? '' : `, ${fixed(blowdown.specificTimeArea, 5)} s/m`
  return [
    {
      rows: [
        { lines: ['blowdown'], bold: true },
        { lines: [`${angle(blowdown.angle, 1)}°${time}`, `${fixed(blowdown.angleArea, 0)} mm²·deg${specific}`] },
      ],
      anchor: pointOn(across, up, at, 0.4 * between(exhaust, at)),
      toward: 215,
      spread: 120,
      mayCross: true,
      end: 'dot',
    },
  ]
}

const captionOf = (curves: readonly Curve[]): string =>
  `Area seen along the stream that the crown leaves open, in the finished bore. Full line: all ports of a kind together.${
    curves.some(({ dashed }) => dashed) ? ' Dashed: one of them.' : ''
  } Shaded: exhaust open before the transfers. s/m: at the engine’s speed, by its swept volume.`

const alternativeOf = ({ part }: Plan, curves: readonly Curve[]): string =>
  `Uncovered area of ${part.number} against crank angle: ${curves
    .filter(({ dashed }) => !dashed)
    .map(({ name, figures }) => `${name} ${figures[0]}, ${figures[1]}`)
    .join('; ')}.`
