import { angle, length, type Units } from '../figures.ts'
import type { FixturePlan } from '../ports/fixture-plan.ts'
import type { Shape } from '../shape.ts'
import type { Fixture } from '../shop/shop.ts'
import { type Degree, type Millimetre, radians } from '../units.ts'
import { captionBlock } from './caption.ts'
import { cropped } from './crop.ts'
import { fixtureLabels, type OnPage } from './fixture-labels.ts'
import { assumedWords, chuckCorners, holderSteps, rotaryCorners } from './held-marks.ts'
import { labelMarks } from './label-marks.ts'
import { type Listed, listedLabels } from './listed-labels.ts'
import {
  arcPoints,
  arrowHead,
  CENTRE_LINE,
  circle,
  DASHED,
  line,
  OUTLINE,
  polygon,
  polyline,
  SHADE,
  THIN,
  type XY,
} from './marks.ts'
import type { Room } from './operation-drawing.ts'
import { type Mark, type Measure, onPaper, type Picture } from './picture.ts'
import { boreOf, largestRadius, outsideOf } from './profile.ts'
import { firstCutMarks, roughingMarks } from './roughing-marks.ts'
import { scalesThatFit, scaleWritten } from './scale.ts'
import { inMachine, type MachinePoint, placesOf, type SetUp, tiltedPlace } from './set-up.ts'

/** Labels take half of a narrow room. */
const LABEL_ROOM = { width: onPaper(90), share: 0.45, height: onPaper(14) }

/** The set-up seen along +Y: pivot, rotary centre line, the blank as milled, and the cutter in every window's place. */
export function drawFixture({
  fixture,
  planned,
  shape,
  setUp,
  room,
  measure,
  units = 'mm',
}: {
  readonly fixture: Fixture
  readonly planned: Pick<FixturePlan, 'grip' | 'assumed'>
  readonly shape: Shape
  readonly setUp: SetUp
  readonly room: Room
  readonly measure: Measure
  readonly units?: Units | undefined
}): Picture {
  const { tilt } = setUp
  const { grip, assumed } = planned
  const corners = extentOf(fixture, grip, shape, setUp)
  const [left, right] = [Math.min(...corners.map(({ x }) => x)), Math.max(...corners.map(({ x }) => x))]
  const [low, high] = [Math.min(...corners.map(({ z }) => z)), Math.max(...corners.map(({ z }) => z))]
  const part = { width: right - left, height: high - low }
  const caption = (scale: number): readonly string[] => [
    `Tilt ${angle(tilt)}°. Seen along +Y: X to the right, Z up, both from the pivot${units === 'inch' ? ', in inches' : ''}. Scale ${scaleWritten(scale)}. Cutter axis down -Z. ${assumedWords(fixture, assumed, units)}`,
  ]
  const foot = captionBlock(caption(1), room.width, measure).height
  const space = {
    width: room.width - Math.min(LABEL_ROOM.width, LABEL_ROOM.share * room.width),
    height: room.height - LABEL_ROOM.height - foot,
  }
  const scales = scalesThatFit(part, space, 2)
  let marks: readonly Mark[] = []
  let listed: Listed = { marks: [], captions: [] }
  let scale = scales[0] ?? 0.1
  for (scale of scales) {
    const onPage = ({ x, z }: MachinePoint): XY => ({
      x: room.width / 2 + onPaper((x - (left + right) / 2) * scale),
      y: (room.height - foot) / 2 - onPaper((z - (low + high) / 2) * scale),
    })
    const drawn = [
      ...chuckOutline(fixture, grip, tilt, onPage),
      ...partOutline(fixture, shape, tilt, onPage),
      ...pivotMarks(fixture, tilt, onPage),
      ...cutterMarks(fixture, setUp, onPage),
      ...roughingMarks(fixture, setUp, onPage),
      ...firstCutMarks(setUp, onPage),
    ]
    const frame = { x: 0, y: 0, width: room.width, height: room.height - foot }
    const labels = fixtureLabels({ fixture, grip, shape, setUp, units, onPage })
    const labelled = labelMarks(labels, drawn, frame, measure)
    marks = [...drawn, ...labelled.marks]
    listed = listedLabels(labelled.missing, marks, frame, measure)
    if (labelled.missing.length === 0) break
  }
  const places = placesOf(setUp).map(
    ({ names, x, z }) => `${names.join(', ')} at X ${length(x, units)}, Z ${length(z, units)}`,
  )
  return cropped({
    marks: [...marks, ...listed.marks],
    captions: [...caption(scale), ...listed.captions],
    width: room.width,
    measure,
    alternative: `Fixture at tilt ${angle(tilt)}°: ${places.join('; ')}.`,
  })
}

/** The silhouette on both sides of the centre line. */
function silhouette(shape: Shape): readonly { readonly depth: Millimetre; readonly up: Millimetre }[] {
  const upper = outsideOf(shape).flatMap(({ from, to, radius }) => [
    { depth: from, up: radius },
    { depth: to, up: radius },
  ])
  return [...upper, ...upper.toReversed().map(({ depth, up }) => ({ depth, up: -up }))]
}

function extentOf(fixture: Fixture, grip: Held, shape: Shape, { tilt, windows }: SetUp): readonly MachinePoint[] {
  return [
    { x: 0, z: 0 },
    ...silhouette(shape).map(({ depth, up }) => inMachine({ fixture, tilt, shape }, depth, up)),
    ...chuckCorners(fixture, grip.chuckFace, tilt),
    ...rotaryCorners(fixture, grip.chuckFace, tilt),
    ...windows.flatMap(({ window }) =>
      holderSteps(fixture, window).flatMap(({ half, from, to }) => [
        { x: window.x - half, z: from },
        { x: window.x + half, z: to },
      ]),
    ),
  ]
}

type Held = FixturePlan['grip']

function partOutline(fixture: Fixture, shape: Shape, tilt: Degree, onPage: OnPage): readonly Mark[] {
  const at = (depth: Millimetre, up: Millimetre): XY => onPage(inMachine({ fixture, tilt, shape }, depth, up))
  const bore = boreOf(shape).filter(({ radius }) => radius > 0)
  const over = largestRadius(shape) / 6
  return [
    polygon(
      silhouette(shape).map(({ depth, up }) => at(depth, up)),
      { stroke: OUTLINE },
    ),
    ...bore.flatMap(({ from, to, radius }) => [radius, -radius].map(up => line(at(from, up), at(to, up), DASHED))),
    ...outsideOf(shape)
      .slice(1)
      .map(({ from }, index) => {
        const [above, below] = [outsideOf(shape)[index]?.radius ?? 0, outsideOf(shape)[index + 1]?.radius ?? 0]
        const radius = Math.min(above, below)
        return line(at(from, radius), at(from, -radius), OUTLINE)
      }),
    line(at(shape.top - over, 0), at(shape.bottom + over, 0), CENTRE_LINE),
  ]
}

function chuckOutline(fixture: Fixture, grip: Held, tilt: Degree, onPage: OnPage): readonly Mark[] {
  const rotary = rotaryCorners(fixture, grip.chuckFace, tilt).map(onPage)
  return [
    ...(rotary.length > 0 ? [polyline(rotary, OUTLINE)] : []),
    polygon(chuckCorners(fixture, grip.chuckFace, tilt).map(onPage), { stroke: OUTLINE, fill: SHADE }),
  ]
}

/** The pivot, its height to the rotary centre line square to it, and the tilt between level and the centre line. */
function pivotMarks(fixture: Fixture, tilt: Degree, onPage: OnPage): readonly Mark[] {
  const pivot = onPage({ x: 0, z: 0 })
  const foot = onPage(tiltedPlace({ x: 0, z: fixture.pivotHeight }, tilt))
  const [arm, cross] = [onPaper(16), onPaper(2.5)]
  const level = { x: pivot.x + arm, y: pivot.y }
  const turned = { x: pivot.x + arm * Math.cos(radians(tilt)), y: pivot.y + arm * Math.sin(radians(tilt)) }
  const arc = arcPoints({ centre: pivot, radius: arm * 0.9, from: 0, to: tilt })
  const [before, tip] = arc.slice(-2)
  return [
    circle(pivot, onPaper(1.5), { stroke: OUTLINE }),
    line({ x: pivot.x - cross, y: pivot.y }, { x: pivot.x + cross, y: pivot.y }),
    line({ x: pivot.x, y: pivot.y - cross }, { x: pivot.x, y: pivot.y + cross }),
    line(pivot, foot, THIN),
    ...(tilt === 0
      ? []
      : [
          line(pivot, level, THIN),
          line(pivot, turned, CENTRE_LINE),
          polyline(arc),
          ...(before && tip ? [arrowHead(tip, before)] : []),
        ]),
  ]
}

/** The cutter as far down as it goes in its holder, its axis, and a cross where the window's middle lies. */
function cutterMarks(fixture: Fixture, setUp: SetUp, onPage: OnPage): readonly Mark[] {
  return placesOf(setUp).flatMap(({ x, z, window }) => {
    const { cutter, plunge } = window
    const steps = holderSteps(fixture, window)
    const top = steps.at(-1)?.to ?? plunge.zTop
    return [
      ...steps.map(({ half, from, to }, index) => {
        const corners = [
          onPage({ x: x - half, z: to }),
          onPage({ x: x - half, z: from }),
          onPage({ x: x + half, z: from }),
          onPage({ x: x + half, z: to }),
        ]
        // The spindle goes on upward.
        return index === steps.length - 1 ? polyline(corners, OUTLINE) : polygon(corners, { stroke: OUTLINE })
      }),
      line(onPage({ x, z: top + 2 }), onPage({ x, z: plunge.zThrough - cutter }), CENTRE_LINE),
      line(onPage({ x: x - cutter, z }), onPage({ x: x + cutter, z })),
    ]
  })
}
