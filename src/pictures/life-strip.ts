import type { Plan, PlannedOperation } from '../plan/plan.ts'
import { HARDENING_PROCESSES } from '../process.ts'
import type { Shape } from '../shape.ts'
import type { Box } from './box.ts'
import { CENTRE_LINE, DOTTED, OUTLINE, polygon, polyline, SHADE, SMALL, THIN, text, type XY } from './marks.ts'
import { LINE, type Mark, onPaper, type Picture, type Point, type Stroke } from './picture.ts'
import { boreOf, largestRadius, type ProfilePoint, wallPieces } from './profile.ts'

const ICON_HEIGHT: Point = onPaper(8)
const NUMBER_ROOM: Point = 12
const BETWEEN: Point = onPaper(2.5)

/**
 * The life of the piece: a small half-section after every operation, the present one in outline, the past ones thin, the
 * coming ones dotted. The radius is stretched so that the wall can be seen: these are signs, not drawings to scale.
 */
export function drawLifeStrip(plan: Plan, present: PlannedOperation, width: Point): Picture {
  const { operations } = plan
  const pitch = Math.min(width / operations.length, onPaper(14))
  const height = ICON_HEIGHT + NUMBER_ROOM + 2 * LINE.outline
  const placeIn = fitFor(operations.map(({ shape }) => shape))
  const hardening =
    operations.find(({ process }) => HARDENING_PROCESSES.has(process))?.number ?? Number.POSITIVE_INFINITY
  const marks = operations.flatMap((operation, index): readonly Mark[] => {
    const stroke = operation.number === present.number ? OUTLINE : operation.number < present.number ? THIN : DOTTED
    const box = {
      x: index * pitch + BETWEEN / 2,
      y: LINE.outline,
      width: pitch - BETWEEN,
      height: ICON_HEIGHT,
    }
    const isPresent = operation.number === present.number
    return [
      ...icon(operation.shape, operation.number >= hardening, placeIn(box), stroke),
      text({ x: box.x + box.width / 2, y: height - 3 }, String(operation.number), {
        anchor: 'middle',
        size: SMALL,
        bold: isPresent,
      }),
    ]
  })
  const place = operations.findIndex(({ number }) => number === present.number) + 1
  return {
    width: pitch * operations.length,
    height,
    alternative: `Operation ${present.number}, ${present.name}: ${place} of ${operations.length} operations in the life of the piece.`,
    marks,
  }
}

type Fit = (point: ProfilePoint) => XY

/** Depth over the box's width; radius over its height, all that lies well inside every bore pressed to the centre line. */
function fitFor(shapes: readonly Shape[]): (box: Box) => Fit {
  const top = Math.min(...shapes.map(shape => shape.top))
  const bottom = Math.max(...shapes.map(shape => shape.bottom))
  const outside = Math.max(...shapes.map(largestRadius))
  const bores = shapes.flatMap(shape => boreOf(shape).map(({ radius }) => radius)).filter(radius => radius > 0)
  const smallest = Math.min(outside, ...bores)
  const hidden = bores.length === 0 ? 0 : Math.max(0, smallest - 0.4 * (outside - smallest))
  return box => point => ({
    x: box.x + ((point.depth - top) / (bottom - top)) * box.width,
    y: box.y + box.height * (1 - Math.max(0, point.radius - hidden) / (outside - hidden)),
  })
}

/** A port is a gap in the wall; a hardened wall is shaded. */
function icon(shape: Shape, hardened: boolean, at: Fit, stroke: Stroke): readonly Mark[] {
  const [middle, half] = [(shape.top + shape.bottom) / 2, (shape.bottom - shape.top) / 10]
  const window = [middle - half, middle + half] as const
  const gaps = shape.ported ? [{ port: '', inner: window, outer: window }] : []
  const pieces = wallPieces(shape, gaps).map(piece => piece.map(at))
  const axis = [shape.top, shape.bottom].map(depth => at({ depth, radius: 0 }))
  return [
    ...pieces.map(piece => polygon(piece, { stroke, ...(hardened && { fill: SHADE }) })),
    ...(shape.bore.length > 0 ? [polyline(axis, CENTRE_LINE)] : []),
  ]
}
