import { inUnits, ofDrawing, type Units } from '../figures.ts'
import { line, polygon, SHADE, SMALL, THIN, text, type XY } from './marks.ts'
import { type Mark, onPaper, type Point } from './picture.ts'

/** One axis of a chart: from a value to a value, from a place on the picture to a place. */
export type Axis = {
  readonly from: number
  readonly to: number
  readonly start: Point
  readonly end: Point
}

export const onAxis = ({ from, to, start, end }: Axis, value: number): Point =>
  start + ((value - from) / (to - from)) * (end - start)

/** An axis of lengths, counted in the units of the sheet: its ticks stand at round figures there. */
export const axisIn = (axis: Axis, units: Units): Axis => ({
  ...axis,
  from: inUnits(axis.from, units),
  to: inUnits(axis.to, units),
})

/** A round step, 1, 2 or 5 times a power of ten, that divides a span into at most `most` parts. */
export function roundStep(span: number, most: number): number {
  const power = 10 ** Math.floor(Math.log10(span / most))
  const step = [1, 2, 5, 10].find(factor => span / (factor * power) <= most + 1e-9) ?? 10
  return step * power
}

/** The multiples of a step within the axis. */
function ticksOf({ from, to }: Axis, step: number): readonly number[] {
  const first = Math.ceil(from / step - 1e-9)
  const count = Math.floor(to / step + 1e-9) - first + 1
  return Array.from({ length: Math.max(0, count) }, (_, index) => (first + index) * step)
}

/** Places after the point that show a step. */
const placesOf = (step: number): number => Math.max(0, -Math.floor(Math.log10(step) + 1e-9))

/** An axis along the foot of a chart, figures below, its title after the last figure. */
export function footAxis(axis: Axis, y: Point, step: number, title: string): readonly Mark[] {
  return [
    line({ x: axis.start, y }, { x: axis.end, y }, THIN),
    ...ticksOf(axis, step).flatMap(value => {
      const x = onAxis(axis, value)
      return [
        line({ x, y }, { x, y: y + 3 }),
        text({ x, y: y + 12 }, ofDrawing(value, placesOf(step)), { anchor: 'middle', size: SMALL }),
      ]
    }),
    text({ x: (axis.start + axis.end) / 2, y: y + 23 }, title, { anchor: 'middle', size: SMALL }),
  ]
}

/** An axis up the left of a chart, figures to its left, its title above it where it has one. */
export function sideAxis(axis: Axis, x: Point, step: number, title?: string): readonly Mark[] {
  return [
    line({ x, y: axis.start }, { x, y: axis.end }, THIN),
    ...ticksOf(axis, step).flatMap(value => {
      const y = onAxis(axis, value)
      return [
        line({ x, y }, { x: x - 3, y }),
        text({ x: x - 5, y: y + 3 }, ofDrawing(value, placesOf(step)), { anchor: 'end', size: SMALL }),
      ]
    }),
    ...(title === undefined
      ? []
      : [text({ x, y: Math.min(axis.start, axis.end) - 6 }, title, { anchor: 'middle', size: SMALL })]),
  ]
}

export const pointOn = (across: Axis, up: Axis, x: number, y: number): XY => ({
  x: onAxis(across, x),
  y: onAxis(up, y),
})

/** From a value to a value. */
export type Shaded = { readonly from: number; readonly to: number }

/** A chart shaded over a stretch of its foot; a single value is a stretch as wide as a line. */
export function shadedBetween(across: Axis, up: Axis, { from, to }: Shaded): Mark {
  const left = onAxis(across, from)
  const right = Math.max(onAxis(across, to), left + onPaper(1))
  return polygon(
    [
      { x: left, y: up.start },
      { x: right, y: up.start },
      { x: right, y: up.end },
      { x: left, y: up.end },
    ],
    { fill: SHADE },
  )
}
