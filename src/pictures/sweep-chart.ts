import { inUnits, type Units } from '../figures.ts'
import type { Sweep, SweepPoint } from '../plan/sweep.ts'
import type { Millimetre } from '../units.ts'
import { captionBlock } from './caption.ts'
import { type Axis, footAxis, onAxis, pointOn, roundStep, shadedBetween, sideAxis } from './chart.ts'
import { labelColumn } from './label-column.ts'
import { line, OUTLINE, polyline, text, type XY } from './marks.ts'
import { type Mark, type Measure, onPaper, type Picture, type Point } from './picture.ts'

const LEFT: Point = onPaper(14)
/** For the names at the ends of the lines. */
const NAMES: Point = onPaper(34)
const HEAD: Point = onPaper(8)
const BETWEEN: Point = onPaper(12)
const FOOT: Point = onPaper(12)

/** One above the other, those that there are. */
const ENDS = [
  { key: 'cleanUp', title: 'to spare to clean up', side: ' each side' },
  { key: 'case', title: 'case to spare at the deepest place', side: '' },
  { key: 'plating', title: 'plating to spare at the thinnest place', side: '' },
] as const
type End = (typeof ENDS)[number]['key']

/**
 * The two margins of every finish against the value that is swept, one above the other; shaded where both ends hold on
 * every surface, which `words` say.
 */
export function drawSweep({
  sweep: { points, surfaces, windows },
  names: { part, path, words },
  room: { width, height },
  measure,
  units = 'mm',
}: {
  readonly sweep: Sweep
  readonly names: { readonly part: string; readonly path: string; readonly words: string }
  readonly room: { readonly width: Point; readonly height: Point }
  readonly measure: Measure
  readonly units?: Units | undefined
}): Picture {
  const values = points.map(({ value }) => value)
  const [first, last] = [Math.min(...values), Math.max(...values)]
  const alone = first === last ? Math.abs(first) / 10 || 1 : 0
  const across: Axis = { from: first - alone, to: last + alone, start: LEFT, end: width - NAMES }
  const shown = ENDS.filter(({ key }) =>
    points.some(point => point.entries.some(({ margin }) => margin[key] !== undefined)),
  )
  const caption = captionBlock([`${words} Below the thick line the margin is gone.`], width, measure)
  const room = (height - caption.height - FOOT - HEAD - BETWEEN * (shown.length - 1)) / shown.length
  const marks = shown.flatMap(({ key, title, side }, index): readonly Mark[] => {
    const top = HEAD + index * (room + BETWEEN)
    const up = upFor({ points, end: key, units, top, foot: top + room })
    const step = roundStep(up.to - up.from, 6)
    const lines = surfaces.flatMap(({ surface, operation }) => {
      const run = points.flatMap((point): XY[] => {
        const margin = marginOf(point, surface, operation, key)
        return margin === undefined ? [] : [pointOn(across, up, point.value, inUnits(margin, units))]
      })
      const end = run.at(-1)
      return end ? [{ run, end, name: `${surface}, op. ${operation}` }] : []
    })
    const column = { x: across.end + onPaper(5), side: 'right' as const, top: top - 6, bottom: top + room + 6 }
    return [
      ...windows.map(stretch => shadedBetween(across, up, stretch)),
      ...lines.map(({ run }) => polyline(run)),
      line({ x: across.start, y: onAxis(up, 0) }, { x: across.end, y: onAxis(up, 0) }, OUTLINE),
      ...sideAxis(up, across.start, step),
      text({ x: 0, y: top - 8 }, `${title}, ${units === 'mm' ? 'mm' : 'inches'}${side}`, { bold: true }),
      ...(index === shown.length - 1
        ? footAxis(
            across,
            top + room,
            roundStep(across.to - across.from, 8),
            units === 'mm' ? path : `${path}, as in the file`,
          )
        : [line({ x: across.start, y: top + room }, { x: across.end, y: top + room })]),
      ...labelColumn(
        lines.map(({ end, name }) => ({ rows: [{ lines: [name] }], anchor: end })),
        column,
        measure,
      ),
    ]
  })
  return {
    width,
    height,
    alternative: `Margins of ${part} against ${path} from ${first} to ${last}. ${words}`,
    marks: [...marks, ...caption.marksAt(height)],
  }
}

const marginOf = ({ entries }: SweepPoint, surface: string, operation: number, end: End): Millimetre | undefined =>
  entries.find(entry => entry.surface === surface && entry.operation === operation)?.margin[end]

function upFor({
  points,
  end,
  units,
  top,
  foot,
}: {
  readonly points: readonly SweepPoint[]
  readonly end: End
  readonly units: Units
  readonly top: Point
  readonly foot: Point
}): Axis {
  const margins = points
    .flatMap(({ entries }) => entries.flatMap(({ margin }) => margin[end] ?? []))
    .map(margin => inUnits(margin, units))
  const [least, most] = [Math.min(0, ...margins), Math.max(inUnits(0.001, units), ...margins)]
  const step = roundStep(most - least, 6)
  return { from: Math.floor(least / step) * step, to: Math.ceil(most / step) * step, start: foot, end: top }
}
