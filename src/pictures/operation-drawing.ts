import { clockPosition } from '../clock-position.ts'
import type { Units } from '../figures.ts'
import type { Plan, PlannedOperation } from '../plan/plan.ts'
import { HARDENING_PROCESSES } from '../process.ts'
import type { Shape } from '../shape.ts'
import type { Box } from './box.ts'
import { cropped } from './crop.ts'
import { datumRows, drawnDatum } from './datum-marks.ts'
import { type Span, type Stacked, stackDimensions } from './dimension-stack.ts'
import { type Block, labelBlock } from './label.ts'
import { labelMarks } from './label-marks.ts'
import { locatingMarks } from './locating-marks.ts'
import { CUT, TREATED } from './marks.ts'
import { type PartView, partMarks, partView } from './part-view.ts'
import { type Mark, type Measure, onPaper, type Picture, type Point } from './picture.ts'
import { largestRadius, outsideOf, radiusAt } from './profile.ts'
import { scalesThatFit, scaleWritten } from './scale.ts'
import { tellingView, type View } from './section-plane.ts'
import { dimensionedDepths, sizeAnchor } from './size-anchor.ts'
import { type Shown, shownSizes, withNumbers } from './size-label.ts'
import { surfaceMarks } from './surface-marks.ts'

export type Room = { readonly width: Point; readonly height: Point }

/** Two lines of caption, and half a line width at either edge. */
const CAPTION: Point = 32
const SIDE: Point = onPaper(6)
/** Left for the labels above the part. */
const ABOVE: Point = onPaper(13)

type Drawn = { readonly marks: readonly Mark[]; readonly missing: readonly Shown[]; readonly stack: Stacked }

type Asked = {
  readonly plan: Plan
  readonly operation: PlannedOperation
  readonly room: Room
  readonly measure: Measure
  readonly units?: Units | undefined
}

/** mm on paper, of the longer way of the part: an estimate of what is told at arm's length. */
const LEAST_SEEN = 18

/**
 * The part as it leaves one operation, at the largest standard scale at which every size finds its place: half-section
 * above the centre line, outside below it, what is cut here in the widest line.
 */
export function drawOperation(asked: Asked): Picture {
  const drawn = drawnFrom(asked, 0)
  if (!drawn) throw new RangeError(`no drawing scale fits operation ${asked.operation.number}`)
  return drawn
}

/** The same in less room; nothing where the part would be too small to be told or its sizes would find no place. */
export const drawOperationSmaller = (asked: Asked): Picture | undefined => drawnFrom(asked, LEAST_SEEN)

function drawnFrom({ plan, operation, room, measure, units = 'mm' }: Asked, least: number): Picture | undefined {
  const { shape } = operation
  const seen = plan.features.find(feature => feature.operation <= operation.number && feature.at)
  const view = tellingView(shape.ported ? plan.ports : [], seen?.at?.[0])
  const part = { width: shape.bottom - shape.top, height: 2 * largestRadius(shape) }
  const fitting = scalesThatFit(part, { width: room.width - 4 * SIDE, height: room.height - ABOVE - CAPTION }, 10)
  const scales = fitting.filter(scale => scale * Math.max(part.width, part.height) >= least)
  const lowest = room.height - CAPTION
  const leaves = ({ bottom, boxes }: Stacked): boolean => bottom > lowest || boxes.some(({ x }) => x < SIDE)
  const faults = ({ stack, missing }: Drawn): number => missing.length + (leaves(stack) ? 1000 : 0)
  let best: (Drawn & { readonly scale: number }) | undefined
  for (const scale of scales) {
    const drawn = { ...drawAt({ plan, operation, view, scale, room, measure, units }), scale }
    if (!best || faults(drawn) < faults(best)) best = drawn
    if (faults(best) === 0) break
  }
  if (!best || (least > 0 && leaves(best.stack))) return undefined
  const caption = captionOf({
    operation,
    round: seen !== undefined,
    view,
    scale: best.scale,
    missing: best.missing,
    units,
  })
  return cropped({
    marks: best.marks,
    captions: [caption],
    width: room.width,
    measure,
    alternative: alternativeOf(plan, operation, best.scale),
  })
}

function drawAt({
  plan,
  operation,
  view,
  scale,
  room,
  measure,
  units,
}: {
  readonly plan: Plan
  readonly operation: PlannedOperation
  readonly view: View
  readonly scale: number
  readonly room: Room
  readonly measure: Measure
  readonly units: Units
}): Drawn {
  const { shape } = operation
  const datum = drawnDatum(plan.clocking?.datum)
  const features = plan.features.filter(feature => feature.operation <= operation.number)
  const names = { grouped: [...plan.ports, ...plan.features].map(({ name }) => name) }
  // What a furnace makes of the sizes is foretold, not asked: on its drawing it would pass for a size to hold.
  const sizes = HARDENING_PROCESSES.has(operation.process)
    ? []
    : [
        ...(datum && operation.purpose === 'mill-ports'
          ? withNumbers(datum.name, datumRows(datum, units), operation, plan.inspection.characteristics)
          : []),
        ...shownSizes(operation, plan.inspection.characteristics, names, units).filter(
          ({ features }) => !datum || !features.includes(datum.name),
        ),
      ]
  const blocks = new Map(sizes.map(shown => [shown, labelBlock(shown.rows, measure)]))
  const above = Math.max(ABOVE, ...[...blocks.values()].map(({ height }) => height + ABOVE / 2))
  const frame: Box = { x: 0, y: 0, width: room.width, height: room.height - CAPTION }
  const length = onPaper((shape.bottom - shape.top) * scale)
  const widest = Math.max(0, ...sizes.map(shown => labelOutside(shown, blocks.get(shown), shape, scale)))
  const left = Math.max((room.width - length) / 2, Math.min(widest + 2 * SIDE, room.width - length - SIDE))
  const drawing = partView({
    shape,
    allPorts: plan.ports,
    view,
    finished: isFinished(plan, operation),
    datum,
    features,
    placement: {
      left: left - onPaper(shape.top * scale),
      axis: above + onPaper(largestRadius(shape) * scale),
      scale,
    },
  })
  const marks = [
    ...partMarks(drawing),
    ...workedMarks(operation, drawing, scale),
    ...operation.locatedBy.flatMap(surface => locatingMarks(drawing, surface, operation.gripsAt)),
  ]
  const spans = sizes.flatMap(shown => spanOf(shown, drawing, blocks.get(shown)) ?? [])
  const stack = stackDimensions(
    spans.map(({ span }) => span),
    // Clear of the chain line of a treatment.
    drawing.at(0, -largestRadius(shape)).y + onPaper(2.5),
  )
  const stacked = new Set(spans.filter((_, index) => !stack.refused.includes(index)).map(({ shown }) => shown))
  const led = sizes.filter(shown => !stacked.has(shown))
  const anchored = led.flatMap(shown => {
    const anchor = shown.features.map(feature => sizeAnchor(feature, drawing)).find(found => found !== undefined)
    return anchor ? [{ shown, label: { ...anchor, rows: shown.rows } }] : []
  })
  const labels = anchored.map(({ label }) => label)
  const labelled = labelMarks(labels, [...marks, ...stack.marks], frame, measure)
  const placed = anchored.filter(({ label }) => !labelled.missing.includes(label)).map(({ shown }) => shown)
  const shown = new Set([...stacked, ...placed])
  return {
    marks: [...marks, ...stack.marks, ...labelled.marks],
    missing: sizes.filter(size => !shown.has(size) && !size.onlyChecked),
    stack,
  }
}

/** The bore has been taken to its drawing size. */
function isFinished(plan: Plan, { shape }: PlannedOperation): boolean {
  const last = plan.operations.at(-1)?.shape
  return shape.bore.every(({ diameter }, index) => Math.abs(diameter - (last?.bore[index]?.diameter ?? 0)) < 1e-9)
}

/** What is cut here in the widest line; what is treated here as a wide chain line clear of the surface. */
function workedMarks({ process, surfaces }: PlannedOperation, view: PartView, scale: number): readonly Mark[] {
  const treated = HARDENING_PROCESSES.has(process) || process === 'plate'
  const both = surfaces.includes('length') && !surfaces.includes('top') && !surfaces.includes('bottom')
  return [...surfaces, ...(both ? ['top', 'bottom'] : [])].flatMap(surface =>
    treated ? surfaceMarks(view, surface, TREATED, 1.2 / scale) : surfaceMarks(view, surface, CUT),
  )
}

function spanOf(
  shown: Shown,
  drawing: PartView,
  block: Block | undefined,
): { readonly shown: Shown; readonly span: Span } | undefined {
  const depths = shown.size && dimensionedDepths(shown.size, drawing.shape)
  if (!depths || !block) return undefined
  const outside = outsideOf(drawing.shape)
  const [from, to] = depths.map(depth => drawing.at(depth, -radiusAt(outside, depth)))
  return from && to && { shown, span: { from: from.x, to: to.x, startFrom: from.y, startTo: to.y, block } }
}

/** Room that the label of a length wants to the left of the part, where it is too long for its own dimension line. */
function labelOutside({ size }: Shown, block: Block | undefined, shape: Shape, scale: number): Point {
  const depths = size && dimensionedDepths(size, shape)
  if (!block || !depths) return 0
  return block.width + 8 > onPaper((depths[1] - depths[0]) * scale) ? block.width : 0
}

function captionOf({
  operation: { shape, process, surfaces, locatedBy },
  round,
  view,
  scale,
  missing,
  units,
}: {
  readonly operation: PlannedOperation
  /** Something of it stands at an azimuth. */
  readonly round: boolean
  readonly view: View
  readonly scale: number
  readonly missing: readonly Shown[]
  readonly units: Units
}): string {
  const unshown = missing.map(
    ({ rows, features }) => rows.flatMap(({ numbers = [] }) => numbers).join(', ') || features.join(', '),
  )
  const worked = HARDENING_PROCESSES.has(process)
    ? 'Chain line: treated here.'
    : process === 'plate'
      ? 'Chain line: plated here.'
      : 'Widest line: cut here.'
  return [
    `Scale ${scaleWritten(scale)}.`,
    ...(units === 'inch' ? ['Sizes in inches.'] : []),
    ...(surfaces.length > 0 ? [worked] : []),
    ...(locatedBy.length > 0 ? ['Triangles: held or located here.'] : []),
    ...(shape.ported || round
      ? [
          `Cut through ${clockPosition(view.section)}, looked at from ${clockPosition(view.seenFrom)}, both as seen from the head.`,
        ]
      : []),
    ...(unshown.length > 0 ? [`Not shown, see the table: ${unshown.join(', ')}.`] : []),
  ].join('  ')
}

const alternativeOf = (plan: Plan, { number, name }: PlannedOperation, scale: number): string =>
  `${plan.part.title} ${plan.part.number} as it leaves operation ${number}, ${name}: half-section and outside view, scale ${scaleWritten(scale)}.`
