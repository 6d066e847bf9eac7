import type { Limits } from '../limits.ts'
import { BLACK, CUT, DASHED, line, OUTLINE, polygon, SHADE, SMALL, THIN, text } from './marks.ts'
import type { Mark, Measure, PathStep, Picture, Point } from './picture.ts'
import { onPaper } from './picture.ts'

/** One reading or one span of readings of a piece. */
export type StripPiece = {
  readonly serial: string
  readonly least: number
  readonly most: number
  readonly verdict: 'in limits' | 'in doubt' | 'out'
}

/** One characteristic over the batch, in the units in which it is printed. */
export type Strip = {
  readonly title: string
  readonly limits: Partial<Pick<Limits, 'lower' | 'upper'>>
  /** Either side of a limit no reading settles anything. */
  readonly guard: number
  /** Either limit as it is printed beside the strip. */
  readonly written: { readonly lower?: string; readonly upper?: string }
  /** In the order of making. */
  readonly pieces: readonly StripPiece[]
}

const TITLE_ROOM: Point = SMALL + onPaper(2)
const SERIAL_ROOM: Point = SMALL + onPaper(1)
const PLOT_HEIGHT: Point = onPaper(18)
const GAP: Point = onPaper(1.5)
const DOT: Point = onPaper(1)
/** More pieces than that have no room for each number. */
const PITCH: Point = onPaper(4)

/**
 * Readings of a batch against their limits, a piece beside the other: a bar from the least to the most of each, a full mark where it is
 * in limits, an open one where it is in doubt, a cross where it is out. Grey: the guard bands, in which no reading settles anything.
 */
export function drawReadingStrip(strip: Strip, width: Point, measure: Measure): Picture {
  const { title, limits, guard, written, pieces } = strip
  const [low, high] = rangeOf(strip)
  const marked = (['lower', 'upper'] as const).flatMap(end => {
    const limit = limits[end]
    return limit === undefined ? [] : [{ limit, label: written[end] ?? '' }]
  })
  const left = Math.max(0, ...marked.map(({ label }) => measure(label, SMALL))) + 2 * GAP
  const [top, bottom] = [TITLE_ROOM, TITLE_ROOM + PLOT_HEIGHT]
  const y = (value: number): Point => bottom - ((value - low) / (high - low)) * PLOT_HEIGHT
  const pitch = (width - left) / Math.max(1, pieces.length)
  const every = Math.ceil(PITCH / pitch)
  const placed = pieces.map(({ serial, least, most, verdict }, index): Placed => {
    const [from, to] = [y(least), y(most)]
    return { serial, verdict, x: left + (index + 0.5) * pitch, from, to }
  })
  const held = (value: Point): Point => Math.min(bottom, Math.max(top, value))
  const bands = marked.flatMap(({ limit }): readonly Mark[] => {
    const [above, below] = [held(y(limit + guard)), held(y(limit - guard))]
    const corners = [
      { x: left, y: above },
      { x: width, y: above },
      { x: width, y: below },
      { x: left, y: below },
    ]
    return [
      ...(guard > 0 ? [polygon(corners, { fill: SHADE })] : []),
      line({ x: left, y: y(limit) }, { x: width, y: y(limit) }, OUTLINE),
    ]
  })
  const names = apart(marked.map(({ limit, label }) => ({ label, at: y(limit) + SMALL / 3 })))
  return {
    width,
    height: bottom + SERIAL_ROOM,
    alternative: `${title}: ${pieces.length} pieces against their limits, ${count(pieces, 'in doubt')} in doubt, ${count(pieces, 'out')} out.`,
    marks: [
      text({ x: 0, y: SMALL }, title, { bold: true }),
      ...bands,
      line({ x: left, y: top }, { x: left, y: bottom }, THIN),
      ...names.map(({ label, at }) => text({ x: left - GAP, y: at }, label, { anchor: 'end' })),
      ...pieceMarks(placed),
      ...placed
        .filter((_, index) => index % every === 0)
        .map(({ serial, x }) => text({ x, y: bottom + SERIAL_ROOM - onPaper(0.5) }, serial, { anchor: 'middle' })),
    ],
  }
}

const count = (pieces: readonly StripPiece[], verdict: StripPiece['verdict']): number =>
  pieces.filter(piece => piece.verdict === verdict).length

/** All readings and limits, with a margin; a size that has no lower limit begins at nought. */
function rangeOf({ limits, guard, pieces }: Strip): readonly [number, number] {
  const { lower, upper } = limits
  const values = [
    ...pieces.flatMap(({ least, most }) => [least, most]),
    ...(lower === undefined ? [] : [lower - guard]),
    ...(upper === undefined ? [] : [upper + guard]),
    ...(lower === undefined ? [0] : []),
  ]
  const [low, high] = [Math.min(...values), Math.max(...values)]
  const margin = (high - low || 1) * 0.08
  return [lower === undefined ? low : low - margin, high + margin]
}

/** Two limits that stand close have their figures a line apart. */
function apart(names: readonly { readonly label: string; readonly at: Point }[]): typeof names {
  const [one, other] = names
  if (!one || !other || Math.abs(one.at - other.at) >= SMALL) return names
  const middle = (one.at + other.at) / 2
  return [
    { ...one, at: middle + SMALL / 2 },
    { ...other, at: middle - SMALL / 2 },
  ]
}

type Placed = Pick<StripPiece, 'serial' | 'verdict'> & { readonly x: Point; readonly from: Point; readonly to: Point }

/** All of one kind as one path: a strip of two hundred pieces has as few marks as one of ten. */
function pieceMarks(pieces: readonly Placed[]): readonly Mark[] {
  const of = (verdict: StripPiece['verdict']) => pieces.filter(piece => piece.verdict === verdict)
  const bars = (some: readonly Placed[]) =>
    some.filter(({ from, to }) => from - to > 2 * DOT).flatMap(({ x, from, to }) => stroke(x, from, x, to))
  const dots = (some: readonly Placed[]) => some.flatMap(dot)
  const [inside, doubtful, out] = [of('in limits'), of('in doubt'), of('out')]
  const drawn: readonly (readonly [readonly PathStep[], Omit<Extract<Mark, { kind: 'path' }>, 'kind' | 'steps'>])[] = [
    [bars([...inside, ...out]), { stroke: OUTLINE }],
    [bars(doubtful), { stroke: DASHED }],
    [dots(inside), { fill: BLACK }],
    [dots(doubtful), { stroke: THIN, fill: { grey: 1 } }],
    [out.flatMap(cross), { stroke: CUT }],
  ]
  return drawn.flatMap(([steps, how]) => (steps.length > 0 ? [{ kind: 'path', steps, ...how }] : []))
}

const stroke = (x1: Point, y1: Point, x2: Point, y2: Point): readonly PathStep[] => [
  { to: 'move', x: x1, y: y1 },
  { to: 'line', x: x2, y: y2 },
]

/** Standing on its corner: seen from arm's length as round as a dot is. */
function dot({ x, from, to }: Placed): readonly PathStep[] {
  const y = (from + to) / 2
  return [
    { to: 'move', x, y: y - DOT },
    { to: 'line', x: x + DOT, y },
    { to: 'line', x, y: y + DOT },
    { to: 'line', x: x - DOT, y },
    { to: 'close' },
  ]
}

function cross({ x, from, to }: Placed): readonly PathStep[] {
  const [y, arm] = [(from + to) / 2, 1.2 * DOT]
  return [...stroke(x - arm, y - arm, x + arm, y + arm), ...stroke(x - arm, y + arm, x + arm, y - arm)]
}
