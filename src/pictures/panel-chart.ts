import { captionBlock } from './caption.ts'
import { type Axis, footAxis, pointOn, roundStep, type Shaded, shadedBetween, sideAxis } from './chart.ts'
import { labelColumn } from './label-column.ts'
import { line, polyline, text } from './marks.ts'
import { type Mark, type Measure, onPaper, type Picture, type Point } from './picture.ts'

/** A line of a panel: a figure for some of the values. */
export type Run = {
  readonly name: string
  readonly points: readonly { readonly value: number; readonly figure: number }[]
}

/** Figures of one kind, drawn on one axis. */
export type Panel = { readonly title: string; readonly runs: readonly Run[] }

const LEFT: Point = onPaper(16)
/** For the names at the ends of the lines. */
const NAMES: Point = onPaper(40)
const HEAD: Point = onPaper(8)
const BETWEEN: Point = onPaper(12)
const FOOT: Point = onPaper(12)
/** Of the names beyond a panel's own height, half a line each way. */
const BESIDE: Point = 6

/** Panels one above the other over the values of one number; shaded over stretches of it that the caption tells of. */
export function drawPanels({
  panels,
  shaded,
  along: { values, title },
  words: { caption, alternative },
  room: { width, height },
  measure,
}: {
  readonly panels: readonly Panel[]
  readonly shaded: readonly Shaded[]
  readonly along: { readonly values: readonly number[]; readonly title: string }
  readonly words: { readonly caption: string; readonly alternative: string }
  readonly room: { readonly width: Point; readonly height: Point }
  readonly measure: Measure
}): Picture {
  const [first, last] = [Math.min(...values), Math.max(...values)]
  const alone = first === last ? Math.abs(first) / 10 || 1 : 0
  const across: Axis = { from: first - alone, to: last + alone, start: LEFT, end: width - NAMES }
  const below = captionBlock([caption], width, measure)
  const room = (height - below.height - FOOT - HEAD - BETWEEN * (panels.length - 1)) / panels.length
  const marks = panels.flatMap(({ title: named, runs }, index): readonly Mark[] => {
    const top = HEAD + index * (room + BETWEEN)
    const foot = top + room
    const { up, step } = upFor(runs, top, foot)
    const lines = runs.flatMap(({ name, points }) => {
      const run = points.map(({ value, figure }) => pointOn(across, up, value, figure))
      const end = run.at(-1)
      return end ? [{ run, end, name }] : []
    })
    return [
      ...shaded.map(stretch => shadedBetween(across, up, stretch)),
      ...lines.map(({ run }) => polyline(run)),
      ...sideAxis(up, across.start, step),
      text({ x: 0, y: top - 8 }, named, { bold: true }),
      ...(index === panels.length - 1
        ? footAxis(across, foot, roundStep(across.to - across.from, 8), title)
        : [line({ x: across.start, y: foot }, { x: across.end, y: foot })]),
      ...labelColumn(
        lines.map(({ end, name }) => ({ rows: [{ lines: [name] }], anchor: end })),
        { x: across.end + onPaper(5), side: 'right', top: top - BESIDE, bottom: foot + BESIDE },
        measure,
      ),
    ]
  })
  return { width, height, alternative, marks: [...marks, ...below.marksAt(height)] }
}

/** An axis of round steps about all figures of a panel. */
function upFor(runs: readonly Run[], top: Point, foot: Point): { readonly up: Axis; readonly step: number } {
  const figures = runs.flatMap(({ points }) => points.map(({ figure }) => figure))
  const [least, most] = [Math.min(...figures), Math.max(...figures)]
  const span = most > least ? most - least : Math.abs(most) / 10 || 1
  const step = roundStep(span, 6)
  const [from, to] = [Math.floor(least / step) * step, Math.ceil(most / step) * step]
  return { up: { from, to: to > from ? to : from + step, start: foot, end: top }, step }
}
