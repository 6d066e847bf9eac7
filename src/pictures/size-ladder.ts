import { length, type Units, unitOf } from '../figures.ts'
import type { PlacedLadder } from '../inspection/size-places.ts'
import type { Plan } from '../plan/plan.ts'
import type { Millimetre } from '../units.ts'
import { type KeyName, ladderKey } from './ladder-key.ts'
import { type LadderRow, ladderRows } from './ladder-rows.ts'
import { type LadderPanel, panelAt, scaleForAll } from './ladder-scale.ts'
import { arrow, arrowHead, line, OUTLINE, polygon, SHADE, SMALL, THIN, text } from './marks.ts'
import { LINE, type Mark, type Measure, onPaper, type Picture, type Point } from './picture.ts'
import { scaleWritten } from './scale.ts'

const ROW: Point = 15
const HEAD: Point = 16
const BETWEEN: Point = 8
/** Columns: the operation's name, the ladder itself, the limits, what is taken. */
const NAME: Point = onPaper(43)
const LIMITS: Point = onPaper(28)
const TAKEN: Point = onPaper(33)

/**
 * The size ladders: for each surface its limits after every operation, metal to the left and air to the right, so that
 * the surface steps to the left as metal goes. All to one stated scale, counted on one side; what lies beyond the picture
 * stands as figures only. Under hardened surfaces the case, as deep as it is at its worst place.
 */
export function drawLadders(plan: Plan, width: Point, measure: Measure, units: Units = 'mm'): Picture {
  const ladders = plan.ladders.map(ladder => ({ ladder, rows: rowsOf(plan, ladder, units) }))
  const room = { left: NAME, right: width - LIMITS - TAKEN - 8 }
  const scale = scaleForAll(
    ladders.map(({ rows }) => rows),
    room,
  )
  const marks: Mark[] = [
    ...arrow({ x: room.left + 22, y: 7 }, { x: room.left + 2, y: 7 }),
    text({ x: room.left + 26, y: 10 }, `metal this way, ${scaleWritten(scale)}, counted on one side`),
  ]
  let top = HEAD
  for (const { ladder, rows } of ladders) {
    marks.push(...panelMarks({ plan, ladder, rows, panel: panelAt(rows, scale, room), top, width, measure, units }))
    top += HEAD + rows.length * ROW + BETWEEN
  }
  const key = ladderKey(namesOf(plan), width, measure)
  const height = top + key.height
  return {
    width,
    height,
    alternative: `Size ladder of ${plan.part.number}: ${plan.ladders.map(({ surface, states }) => `${surface} through ${states.length} operations`).join(', ')}.`,
    marks: [...marks, ...key.marksAt(top)],
  }
}

function rowsOf(plan: Plan, ladder: PlacedLadder, units: Units): readonly LadderRow[] {
  const plate = plan.operations.find(({ purpose }) => purpose === 'plate')?.number
  const plating = platingOf(plan, ladder)
  return ladderRows(ladder, plating && plate !== undefined ? { ...plating, operation: plate } : undefined, units)
}

const platingOf = ({ plating }: Plan, { surface }: PlacedLadder): Plan['plating'] =>
  plating?.surface === surface ? plating : undefined

/** What the marks of a ladder mean, as far as this part has them. */
function namesOf(plan: Plan): readonly KeyName[] {
  const takes = plan.ladders.some(({ states }) => states.some(({ taken }) => taken))
  return [
    { mark: 'limits', name: 'limits after the operation' },
    ...(takes ? ([{ mark: 'taken', name: 'comes off: heavy, at least; thin, at most' }] as const) : []),
    ...(plan.case ? ([{ mark: 'depth', name: 'case left at the worst place' }] as const) : []),
    ...(plan.plating
      ? ([{ mark: 'depth', name: `layer at its thinnest, on ${plan.plating.surface} from the plating on` }] as const)
      : []),
  ]
}

const takesHead = ({ kind }: PlacedLadder, units: Units): string =>
  kind === 'face' ? `takes, ${unitOf(units)}` : units === 'mm' ? 'takes, mm each side' : 'takes each side, in'

function panelMarks({
  plan,
  ladder,
  rows,
  panel,
  top,
  width,
  measure,
  units,
}: {
  readonly plan: Plan
  readonly ladder: PlacedLadder
  readonly rows: readonly LadderRow[]
  readonly panel: LadderPanel
  readonly top: Point
  readonly width: Point
  readonly measure: Measure
  readonly units: Units
}): readonly Mark[] {
  const plating = platingOf(plan, ladder)
  const asked = plating
    ? { depth: plating.asked.least, name: 'layer' }
    : plan.case && { depth: plan.case.asked, name: 'case' }
  const end = top + HEAD + rows.length * ROW
  const unit = unitOf(units)
  return [
    text({ x: 0, y: top + 10 }, ladder.surface, { bold: true }),
    text({ x: width - TAKEN, y: top + 10 }, ladder.kind === 'face' ? unit : `Ø ${unit}`, { anchor: 'end' }),
    text({ x: width, y: top + 10 }, takesHead(ladder, units), { anchor: 'end' }),
    line({ x: 0, y: top + HEAD }, { x: width, y: top + HEAD }, THIN),
    ...rows.flatMap((row, index) => rowMarks({ row, panel, top: top + HEAD + index * ROW, width, measure })),
    ...(asked
      ? askedMarks({
          depth: asked.depth,
          name: `${asked.name} must reach here: ${length(asked.depth, units)}`,
          rows,
          panel,
          top: top + HEAD,
          bottom: end,
        })
      : []),
  ]
}

function rowMarks({
  row,
  panel: { at, left, right },
  top,
  width,
  measure,
}: {
  readonly row: LadderRow
  readonly panel: LadderPanel
  readonly top: Point
  readonly width: Point
  readonly measure: Measure
}): readonly Mark[] {
  const base = top + 10
  const taken = row.added ?? row.taken?.written
  const written = [
    text({ x: 0, y: base }, clipped(`${row.operation} ${row.name}`, NAME - 6, measure)),
    text({ x: width - TAKEN, y: base }, row.written, { anchor: 'end' }),
    ...(taken ? [text({ x: width, y: base }, taken, { anchor: 'end' })] : []),
  ]
  const [from, to] = [at(row.inner), at(row.outer)]
  if (from < left || to > right) {
    const beyond = to > right
    const x = beyond ? right - 4 : left + 4
    const where = beyond ? 'farther out →' : '← farther in'
    return [...written, text({ x, y: base }, where, { anchor: beyond ? 'end' : 'start' })]
  }
  const bar = { y: top + 5, half: 2.5 }
  const shade =
    row.depth === undefined
      ? []
      : [polygon(rectangle(Math.max(left, at(row.inner - row.depth)), from, top + 1, top + ROW), { fill: SHADE })]
  return [...shade, ...written, ...barMarks(row, { at, left, right }, bar.y, bar.half)]
}

function barMarks(
  { inner, outer, taken }: LadderRow,
  { at, right }: LadderPanel,
  y: Point,
  half: Point,
): readonly Mark[] {
  const limits = polygon(rectangle(at(inner), at(outer), y - half, y + half), { stroke: OUTLINE })
  if (!taken) return [limits]
  const below = y + half + 4
  const most = [at(taken.most[0]), Math.min(right, at(taken.most[1]))] as const
  const least = [at(taken.least[0]), Math.min(right, at(taken.least[1]))] as const
  return [
    limits,
    ...(most[1] > most[0]
      ? [
          line({ x: most[0], y: below }, { x: most[1], y: below }),
          // What runs out of the picture has no end there.
          ...most.map(x =>
            x < right ? line({ x, y: below - 2 }, { x, y: below + 2 }) : arrowHead({ x, y: below }, { x: 0, y: below }),
          ),
        ]
      : []),
    ...(least[1] > least[0]
      ? [line({ x: least[0], y: below }, { x: least[1] < right ? least[1] : right - 4, y: below }, { width: LINE.cut })]
      : []),
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
  depth,
  name,
  rows,
  panel: { at, left },
  top,
  bottom,
}: {
  readonly depth: Millimetre
  readonly name: string
  readonly rows: readonly LadderRow[]
  readonly panel: LadderPanel
  readonly top: Point
  readonly bottom: Point
}): readonly Mark[] {
  const last = rows.at(-1)
  if (last?.depth === undefined) return []
  const x = at(last.inner - depth)
  if (x < left) return []
  return [
    line({ x, y: top - 4 }, { x, y: bottom }, { width: LINE.thin, dash: [4, 2] }),
    text({ x: x + 3, y: top - 6 }, name),
  ]
}

function clipped(words: string, room: Point, measure: Measure): string {
  if (measure(words, SMALL) <= room) return words
  let kept = words
  while (kept.length > 1 && measure(`${kept}…`, SMALL) > room) kept = kept.slice(0, -1)
  return `${kept}…`
}
