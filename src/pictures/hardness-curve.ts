import { fixed, inUnits, length, type Units, unitOf } from '../figures.ts'
import type { CasePlan, HardnessAfter } from '../hardening/case-plan.ts'
import type { Spread } from '../limits.ts'
import type { Plan } from '../plan/plan.ts'
import type { Millimetre, Vickers } from '../units.ts'
import { captionBlock } from './caption.ts'
import { type Axis, axisIn, footAxis, onAxis, pointOn, roundStep, sideAxis } from './chart.ts'
import { DASHED, line, OUTLINE, polygon, polyline, SHADE, SMALL, THIN, text, type XY } from './marks.ts'
import type { Room } from './operation-drawing.ts'
import { type Mark, type Measure, onPaper, type Picture, type Point, type Stroke } from './picture.ts'

const LEFT: Point = onPaper(24)
const ROW: Point = 14
/** Between two levels that both have a name on them. */
const NAME: Point = 12

/** What all finishing operations together take off a surface, each side, and the hardness expected where most comes off. */
type Removal = Spread & { readonly surface: string; readonly left: Vickers }

/** Hardness against depth below the surface as hardened, and under it where finishing leaves each surface. */
export function drawHardnessCurve({
  plan,
  hardened,
  room,
  measure,
  units = 'mm',
}: {
  readonly plan: Plan
  readonly hardened: CasePlan
  readonly room: Room
  readonly measure: Measure
  readonly units?: Units | undefined
}): Picture {
  const taken = hardened.hardnessAfter.map(
    ({ surface, off, most: { expected: left } }): Removal => ({ surface, ...off, left }),
  )
  const { profile } = hardened
  const caption = captionBlock([CAPTION], room.width, measure)
  const foot = room.height - caption.height - 34
  const band = (taken.length + 1) * ROW + 4
  const deepest = Math.max(...profile.map(({ depth }) => depth), ...taken.map(({ most }) => most + hardened.asked))
  const highest = Math.max(...profile.map(({ high }) => high))
  const across: Axis = { from: 0, to: deepest, start: LEFT, end: room.width - onPaper(6) }
  const up: Axis = { from: 0, to: Math.ceil(highest / 100) * 100, start: foot - band, end: onPaper(8) }
  return {
    ...room,
    alternative: `Hardness against depth of ${plan.part.number}, ${hardened.process}: ${taken.map(({ surface, least, most }) => `${surface} is finished ${length(least, units)} to ${length(most, units)} ${unitOf(units)} below the surface as hardened`).join('; ')}.`,
    marks: [
      ...curveMarks(hardened, across, up),
      ...carriedUp(hardened, across, up),
      ...levels({ limit: hardened.limitHardness, asked: askedHardness(plan), across, up }),
      ...curveNames(hardened, across, up),
      ...sideAxis(up, across.start, 100, 'HV'),
      ...footAxis(
        axisIn(across, units),
        foot,
        roundStep(inUnits(deepest, units), 10),
        `${units === 'mm' ? 'mm' : 'inches'} below the surface as hardened`,
      ),
      ...removalNames({ hardened, across, y: up.start + ROW - 3, measure, units }),
      ...removalMarks({ taken, asked: hardened.asked, across, top: up.start + 2 * ROW - 3, units }),
      ...caption.marksAt(room.height),
    ],
  }
}

const CAPTION =
  'Bars: what comes off each side at the worst place, carried up to the hardness then left. Shaded: as the models and the grade vary.'

/** What the drawing asks of the finished surface, from the row that inspects it. */
const askedHardness = ({ inspection }: Plan): Vickers | undefined =>
  inspection.characteristics.find(
    ({ unit, lower, stage }) => unit.startsWith('HV') && lower !== undefined && stage === 'final',
  )?.lower

function curveMarks({ profile }: CasePlan, across: Axis, up: Axis): readonly Mark[] {
  const along = (hardness: (row: CasePlan['profile'][number]) => Vickers): readonly XY[] =>
    profile.map(row => pointOn(across, up, row.depth, hardness(row)))
  const [low, high] = [along(row => row.low), along(row => row.high)]
  return [
    polygon([...high, ...low.toReversed()], { fill: SHADE }),
    polyline(high),
    polyline(low),
    polyline(
      along(row => row.expected),
      OUTLINE,
    ),
  ]
}

/** A bar a surface: from least to most, a cross line at nominal; dashed on, as deep as the case must reach below it. */
function removalMarks({
  taken,
  asked,
  across,
  top,
  units,
}: {
  readonly taken: readonly Removal[]
  readonly asked: Millimetre
  readonly across: Axis
  readonly top: Point
  readonly units: Units
}): readonly Mark[] {
  return taken.flatMap(({ surface, least, nominal, most, left }, index) => {
    const y = top + index * ROW
    const at = (depth: Millimetre): XY => ({ x: onAxis(across, depth), y })
    const cross = (depth: Millimetre, half: Point, stroke: Stroke = THIN): Mark =>
      line({ x: at(depth).x, y: y - half }, { x: at(depth).x, y: y + half }, stroke)
    return [
      text({ x: across.start - 8, y: y + 3 }, surface, { anchor: 'end', bold: true }),
      line(at(least), at(most), OUTLINE),
      line(at(most), at(most + asked), DASHED),
      ...[cross(least, 3), cross(most, 3), cross(most + asked, 4), cross(nominal, 4, OUTLINE)],
      text(
        { x: at(most + asked).x + 6, y: y + 3 },
        `${length(least, units)} to ${length(most, units)} ${unitOf(units)} off, then ${fixed(left, 0)} HV`,
      ),
    ]
  })
}

/** The surface that loses most. */
const worstOf = ({ hardnessAfter }: CasePlan): HardnessAfter | undefined =>
  hardnessAfter.reduce<HardnessAfter | undefined>(
    (deepest, one) => (deepest && deepest.off.most >= one.off.most ? deepest : one),
    undefined,
  )

/** From each bar up to the curve expected: where least, middle and most come off the surface that loses most; most of the rest. */
function carriedUp(hardened: CasePlan, across: Axis, up: Axis): readonly Mark[] {
  const { hardnessAfter } = hardened
  const worst = worstOf(hardened)
  return hardnessAfter.flatMap((after, index) =>
    (after === worst ? (['least', 'nominal', 'most'] as const) : (['most'] as const)).map(end => {
      const { x, y } = pointOn(across, up, after.off[end], after[end].expected)
      return line({ x, y: up.start + ROW - 3 + (index + 1) * ROW }, { x, y }, THIN)
    }),
  )
}

/** Over the bars: the ends of the longest, beside their lines where there is room between them, and the case below. */
function removalNames({
  hardened,
  across,
  y,
  measure,
  units,
}: {
  readonly hardened: CasePlan
  readonly across: Axis
  readonly y: Point
  readonly measure: Measure
  readonly units: Units
}): readonly Mark[] {
  const worst = worstOf(hardened)
  if (!worst) return []
  const [least, middle, most] = [worst.off.least, worst.off.nominal, worst.off.most].map(off => onAxis(across, off))
  if (least === undefined || middle === undefined || most === undefined) return []
  const wide = (words: string): Point => measure(words, SMALL) + 6
  const apart = middle - least >= wide('middle') && least - across.start >= wide('least')
  const last = apart ? 'most comes off' : 'least, middle, most comes off'
  const after = most + 3 + wide(last) + 6
  const below = `below it, dashed: the ${length(hardened.asked, units, 2)} ${unitOf(units)} of case asked for`
  return [
    ...(apart
      ? [text({ x: least - 3, y }, 'least', { anchor: 'end' }), text({ x: middle - 3, y }, 'middle', { anchor: 'end' })]
      : []),
    text({ x: most + 3, y }, last),
    text({ x: after, y }, below),
  ]
}

/** Both levels, each with its name over its right end, where the curves have gone below; where two lie close, the upper carries both. */
function levels({
  limit,
  asked,
  across,
  up,
}: {
  readonly limit: Vickers
  readonly asked: Vickers | undefined
  readonly across: Axis
  readonly up: Axis
}): readonly Mark[] {
  const ends = `the depth ends at ${fixed(limit, 0)} HV`
  const wanted = asked === undefined ? undefined : `asked of the finished surface: ${fixed(asked, 0)} HV`
  const level = (hardness: Vickers, name: string | undefined): readonly Mark[] => {
    const y = onAxis(up, hardness)
    return [
      line({ x: across.start, y }, { x: across.end, y }, DASHED),
      ...(name === undefined ? [] : [text({ x: across.end, y: y - 4 }, name, { anchor: 'end' })]),
    ]
  }
  if (asked === undefined || wanted === undefined) return level(limit, ends)
  if (Math.abs(onAxis(up, asked) - onAxis(up, limit)) >= NAME) return [...level(limit, ends), ...level(asked, wanted)]
  const [upper, lower] = [Math.max(asked, limit), Math.min(asked, limit)]
  const second = text({ x: across.end, y: onAxis(up, upper) - 4 - NAME }, upper === asked ? wanted : ends, {
    anchor: 'end',
  })
  return [...level(upper, upper === asked ? ends : wanted), ...level(lower, undefined), second]
}

/** The names of the three curves: the hard end's over it, the others' at the end of a leader where nothing is drawn. */
function curveNames({ profile, ordered }: CasePlan, across: Axis, up: Axis): readonly Mark[] {
  const at = (share: number): CasePlan['profile'][number] | undefined =>
    profile.find(({ depth }) => depth >= share * ordered.least)
  const named = (
    share: number,
    of: 'low' | 'expected' | 'high',
    { name, bold = false, by }: { readonly name: string; readonly bold?: boolean; readonly by: XY },
  ): readonly Mark[] => {
    const row = at(share)
    if (!row) return []
    const from = pointOn(across, up, row.depth, row[of])
    const end = { x: from.x + by.x, y: Math.max(from.y + by.y, up.end) }
    return [line(from, end, THIN), text({ x: end.x + 3, y: end.y + 3 }, name, { bold })]
  }
  return [
    ...named(0.3, 'high', { name: 'hardest', by: { x: 14, y: -10 } }),
    ...named(0.6, 'expected', { name: 'expected', bold: true, by: { x: 36, y: -40 } }),
    ...named(0.6, 'low', { name: 'softest', by: { x: 20, y: onAxis(up, 100) - onAxis(up, 260) } }),
  ]
}
