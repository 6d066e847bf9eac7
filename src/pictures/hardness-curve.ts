import { fixed, inUnits, length, type Units, unitOf } from '../figures.ts'
import type { CasePlan } from '../hardening/case-plan.ts'
import type { Spread } from '../limits.ts'
import type { Plan } from '../plan/plan.ts'
import type { Millimetre, Vickers } from '../units.ts'
import { captionBlock } from './caption.ts'
import { type Axis, axisIn, footAxis, onAxis, pointOn, roundStep, sideAxis } from './chart.ts'
import { type Labelled, labelMarks } from './label-marks.ts'
import { DASHED, line, OUTLINE, polygon, polyline, SHADE, THIN, text, type XY } from './marks.ts'
import type { Room } from './operation-drawing.ts'
import { type Mark, type Measure, onPaper, type Picture, type Point, type Stroke } from './picture.ts'

const LEFT: Point = onPaper(24)
const ROW: Point = 14

/** What all finishing operations together take off a surface, each side, at their worst places. */
type Removal = Spread & { readonly surface: string }

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
  const taken = hardened.hardnessAfter.map(({ surface, off }): Removal => ({ surface, ...off }))
  const { profile } = hardened
  const caption = captionBlock([captionOf(hardened, units)], room.width, measure)
  const foot = room.height - caption.height - taken.length * ROW - 34
  const deepest = Math.max(...profile.map(({ depth }) => depth), ...taken.map(({ most }) => most + hardened.asked))
  const highest = Math.max(...profile.map(({ high }) => high))
  const across: Axis = { from: 0, to: deepest, start: LEFT, end: room.width - onPaper(6) }
  const up: Axis = { from: 0, to: Math.ceil(highest / 100) * 100, start: foot, end: onPaper(8) }
  const limit = hardened.limitHardness
  const asked = askedHardness(plan)
  const drawn = [
    ...curveMarks(hardened, across, up),
    line({ x: across.start, y: onAxis(up, limit) }, { x: across.end, y: onAxis(up, limit) }, DASHED),
    ...(asked === undefined
      ? []
      : [line({ x: across.start, y: onAxis(up, asked) }, { x: across.end, y: onAxis(up, asked) }, DASHED)]),
    ...sideAxis(up, across.start, 100, 'HV'),
    ...footAxis(
      axisIn(across, units),
      foot,
      roundStep(inUnits(deepest, units), 10),
      `${units === 'mm' ? 'mm' : 'inches'} below the surface as hardened`,
    ),
    ...removalMarks({ taken, asked: hardened.asked, across, top: foot + 34, units }),
  ]
  const frame = { x: across.start, y: up.end, width: across.end - across.start, height: foot - up.end }
  const labels = curveLabels({ plan: hardened, limit, hardness: asked, across, up })
  return {
    ...room,
    alternative: `Hardness against depth of ${plan.part.number}, ${hardened.process}: ${taken.map(({ surface, least, most }) => `${surface} is finished ${length(least, units)} to ${length(most, units)} ${unitOf(units)} below the surface as hardened`).join('; ')}.`,
    marks: [...drawn, ...labelMarks(labels, drawn, frame, measure).marks, ...caption.marksAt(room.height)],
  }
}

const captionOf = ({ asked }: CasePlan, units: Units): string =>
  `Bars: finished surface at least, nominal and most removal each side. Dashed: the ${length(asked, units, 2)} ${unitOf(units)} of case asked for below it. Shaded: spread of the model.`

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
  return taken.flatMap(({ surface, least, nominal, most }, index) => {
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
        `${length(least, units)} to ${length(most, units)} ${unitOf(units)} off`,
      ),
    ]
  })
}

function curveLabels({
  plan: { profile, definition },
  limit,
  hardness,
  across,
  up,
}: {
  readonly plan: CasePlan
  readonly limit: Vickers
  readonly hardness: Vickers | undefined
  readonly across: Axis
  readonly up: Axis
}): readonly Labelled[] {
  const middle = profile[Math.floor(profile.length / 3)]
  return [
    ...(middle
      ? [
          {
            rows: [{ lines: ['expected'] }],
            anchor: pointOn(across, up, middle.depth, middle.expected),
            toward: -45,
            spread: 60,
            mayCross: true,
          },
        ]
      : []),
    {
      rows: [{ lines: [`case counts to ${fixed(limit, 0)} HV`, definition] }],
      anchor: pointOn(across, up, across.to * 0.7, limit),
      toward: -80,
      spread: 170,
    },
    ...(hardness === undefined
      ? []
      : [
          {
            rows: [{ lines: [`asked at the finished surface ${fixed(hardness, 0)} HV`] }],
            anchor: pointOn(across, up, across.to * 0.8, hardness),
            toward: -80,
            spread: 170,
          },
        ]),
  ]
}
