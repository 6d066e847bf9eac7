import { type Units, unitOf } from '../figures.ts'
import type { PlacedLadder } from '../inspection/size-places.ts'
import type { Plan } from '../plan/plan.ts'
import type { Millimetre } from '../units.ts'
import { captionBlock } from './caption.ts'
import { type LadderRow, ladderRows } from './ladder-rows.ts'
import { line, OUTLINE, polygon, polyline, SHADE, SMALL, THIN, text } from './marks.ts'
import { LINE, type Mark, type Measure, onPaper, type Picture, type Point } from './picture.ts'
import { scaleWritten } from './scale.ts'

const ROW: Point = 15
const HEAD: Point = 16
/** Columns: the operation's name, the ladder itself, the limits, what is taken. */
const NAME: Point = onPaper(43)
const LIMITS: Point = onPaper(28)
const TAKEN: Point = onPaper(29)
/** Enlargements, largest first. */
const ENLARGED: readonly number[] = [1000, 500, 200, 100, 50, 20, 10, 5, 2, 1]

/**
 * The size ladders: for each surface its limits after every operation, metal to the left and air to the right, so that
 * the surface steps to the left as metal goes. Enlarged to a stated scale, counted on one side; sizes that do not fit
 * stand as figures only. Under hardened surfaces the case, as deep as it is at its worst place.
 */
export function drawLadders(plan: Plan, width: Point, measure: Measure, units: Units = 'mm'): Picture {
  let top = 0
  const marks: Mark[] = []
  for (const ladder of plan.ladders) {
    const panel = panelMarks({ plan, ladder, top, width, measure, units })
    marks.push(...panel)
    top += HEAD + ladder.states.length * ROW + 10
  }
  const captions = [
    'Metal to the left. Heavy bar: limits after the operation. Below it, full: taken at least; open: taken at most, each side.',
    ...(plan.plating
      ? [
          `On ${plan.plating.surface} from the plating on, shaded: the layer at its thinnest. Dashed line: as thick as it must be left.`,
        ]
      : []),
    ...(plan.case
      ? ['Shaded: case left at the worst place. Dashed line: as deep as the case must reach in the finished part.']
      : []),
  ]
  const caption = captionBlock(captions, width, measure)
  const height = top + caption.height
  return {
    width,
    height,
    alternative: `Size ladder of ${plan.part.number}: ${plan.ladders.map(({ surface, states }) => `${surface} through ${states.length} operations`).join(', ')}.`,
    marks: [...marks, ...caption.marksAt(height)],
  }
}

const takesHead = ({ kind }: PlacedLadder, units: Units): string =>
  kind === 'face' ? `takes, ${unitOf(units)}` : units === 'mm' ? 'takes, mm each side' : 'takes each side, in'

type Panel = { readonly at: (outward: Millimetre) => Point; readonly left: Point; readonly right: Point }

function panelMarks({
  plan,
  ladder,
  top,
  width,
  measure,
  units,
}: {
  readonly plan: Plan
  readonly ladder: PlacedLadder
  readonly top: Point
  readonly width: Point
  readonly measure: Measure
  readonly units: Units
}): readonly Mark[] {
  const plate = plan.operations.find(({ purpose }) => purpose === 'plate')?.number
  const plating = plan.plating?.surface === ladder.surface ? plan.plating : undefined
  const rows = ladderRows(ladder, plating && plate !== undefined ? { ...plating, operation: plate } : undefined, units)
  const asked = plating?.asked.least ?? plan.case?.asked
  const room = { left: NAME, right: width - LIMITS - TAKEN - 8 }
  const { panel, scale } = panelFor(rows, room)
  const signed = ladder.kind === 'face' ? 'on the length' : 'each side'
  const end = top + HEAD + rows.length * ROW
  const unit = unitOf(units)
  return [
    text({ x: 0, y: top + 10 }, ladder.surface, { size: SMALL, bold: true }),
    text({ x: room.left, y: top + 10 }, `${scaleWritten(scale)} ${signed}`, { size: SMALL }),
    text({ x: width - TAKEN, y: top + 10 }, ladder.kind === 'face' ? unit : `Ø ${unit}`, {
      anchor: 'end',
      size: SMALL,
    }),
    text({ x: width, y: top + 10 }, takesHead(ladder, units), {
      anchor: 'end',
      size: SMALL,
    }),
    line({ x: 0, y: top + HEAD }, { x: width, y: top + HEAD }, THIN),
    ...rows.flatMap((row, index) => rowMarks({ row, panel, top: top + HEAD + index * ROW, width, measure })),
    ...askedMarks({ asked, rows, panel, top: top + HEAD, bottom: end }),
  ]
}

/** The largest enlargement at which the last rows fit, hardened ones with their case first of all. */
function panelFor(
  rows: readonly LadderRow[],
  { left, right }: { readonly left: Point; readonly right: Point },
): { readonly panel: Panel; readonly scale: number } {
  const kept = rows.filter(row => row.depth !== undefined)
  const shown = kept.length > 0 ? [...rows.slice(-kept.length - 1)] : rows.slice(-2)
  const deepest = Math.min(...shown.map(({ inner, depth }) => inner - (depth ?? 0)))
  const highest = Math.max(...shown.map(({ outer }) => outer))
  const span = Math.max(highest - deepest, 1e-6)
  const scale = ENLARGED.find(enlarged => onPaper(span * enlarged) <= right - left - 12) ?? 1
  const slack = (right - left - onPaper(span * scale)) / 2
  const at = (outward: Millimetre): Point => left + slack + onPaper((outward - deepest) * scale)
  return { panel: { at, left, right }, scale }
}

function rowMarks({
  row,
  panel: { at, left, right },
  top,
  width,
  measure,
}: {
  readonly row: LadderRow
  readonly panel: Panel
  readonly top: Point
  readonly width: Point
  readonly measure: Measure
}): readonly Mark[] {
  const base = top + 10
  const taken = row.added ?? row.taken?.written
  const written = [
    text({ x: 0, y: base }, clipped(`${row.operation} ${row.name}`, NAME - 6, measure), { size: SMALL }),
    text({ x: width - TAKEN, y: base }, row.written, { anchor: 'end', size: SMALL }),
    ...(taken ? [text({ x: width, y: base }, taken, { anchor: 'end', size: SMALL })] : []),
  ]
  const [from, to] = [at(row.inner), at(row.outer)]
  if (from < left || to > right) {
    const beyond = to > right
    const x = beyond ? right - 4 : left + 4
    const arrow = beyond ? '→' : '←'
    return [...written, text({ x, y: base }, arrow, { anchor: beyond ? 'end' : 'start', size: SMALL })]
  }
  const bar = { y: top + 5, half: 2.5 }
  const shade =
    row.depth === undefined
      ? []
      : [polygon(rectangle(Math.max(left, at(row.inner - row.depth)), from, top + 1, top + ROW), { fill: SHADE })]
  return [...shade, ...written, ...barMarks(row, { at, left, right }, bar.y, bar.half)]
}

function barMarks({ inner, outer, taken }: LadderRow, { at, right }: Panel, y: Point, half: Point): readonly Mark[] {
  const limits = polygon(rectangle(at(inner), at(outer), y - half, y + half), { stroke: OUTLINE })
  if (!taken) return [limits]
  const below = y + half + 4
  const most = [at(taken.most[0]), Math.min(right, at(taken.most[1]))] as const
  const least = [at(taken.least[0]), Math.min(right, at(taken.least[1]))] as const
  return [
    limits,
    ...(most[1] > most[0]
      ? [
          polyline(
            [
              { x: most[0], y: below },
              { x: most[1], y: below },
            ],
            THIN,
          ),
          ...most.map(x => line({ x, y: below - 2 }, { x, y: below + 2 })),
        ]
      : []),
    ...(least[1] > least[0] ? [line({ x: least[0], y: below }, { x: least[1], y: below }, { width: LINE.cut })] : []),
  ]
}

const rectangle = (left: Point, right: Point, top: Point, bottom: Point): readonly { x: Point; y: Point }[] => [
  { x: left, y: top },
  { x: right, y: top },
  { x: right, y: bottom },
  { x: left, y: bottom },
]

/** How deep the case, or a plating, must still reach under the finished surface at its deepest. */
function askedMarks({
  asked,
  rows,
  panel: { at, left },
  top,
  bottom,
}: {
  readonly asked: Millimetre | undefined
  readonly rows: readonly LadderRow[]
  readonly panel: Panel
  readonly top: Point
  readonly bottom: Point
}): readonly Mark[] {
  const last = rows.at(-1)
  if (asked === undefined || last?.depth === undefined) return []
  const x = at(last.inner - asked)
  return x < left ? [] : [line({ x, y: top }, { x, y: bottom }, { width: LINE.thin, dash: [4, 2] })]
}

function clipped(words: string, room: Point, measure: Measure): string {
  if (measure(words, SMALL) <= room) return words
  let kept = words
  while (kept.length > 1 && measure(`${kept}…`, SMALL) > room) kept = kept.slice(0, -1)
  return `${kept}…`
}
