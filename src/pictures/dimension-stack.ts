import type { Box } from './box.ts'
import type { Block } from './label.ts'
import { arrowHead, line } from './marks.ts'
import { type Mark, onPaper, type Point } from './picture.ts'

/** A length along the part: from where to where on the picture, and from which height its extension lines start. */
export type Span = {
  readonly from: Point
  readonly to: Point
  readonly startFrom: Point
  readonly startTo: Point
  readonly block: Block
}

export type Stacked = {
  readonly marks: readonly Mark[]
  readonly boxes: readonly Box[]
  readonly bottom: Point
  /** Indices of the spans that would cross another: they want a leader instead. */
  readonly refused: readonly number[]
}

const OVER: Point = onPaper(0.8)
const PAD: Point = 4
/** A shorter span has its arrow heads outside, on a line that runs on so far beyond it. */
const ROOM_FOR_HEADS: Point = onPaper(6)
const BEYOND: Point = onPaper(4)

type Level = {
  readonly span: Span
  readonly left: Point
  readonly right: Point
  readonly textLeft: Point
  readonly level: number
}

/**
 * Dimension lines below a view, the shortest nearest, so that no extension line crosses a dimension line. A span that
 * only partly overlaps another cannot be had without a crossing and is refused.
 */
export function stackDimensions(spans: readonly Span[], top: Point): Stacked {
  const order = spans.map((_, index) => index).toSorted((a, b) => lengthOf(spans[a]) - lengthOf(spans[b]) || a - b)
  const farLeft = Math.min(...spans.map(({ from }) => from))
  const placed: Level[] = []
  const refused: number[] = []
  for (const index of order) {
    const span = spans[index]
    if (!span) continue
    const level = levelFor(span, placed, farLeft)
    if (level) placed.push(level)
    else refused.push(index)
  }
  const heights = levelHeights(placed)
  const lineOf = (level: number): Point => top + heights.slice(0, level + 1).reduce((sum, height) => sum + height, 0)
  const marks = placed.map(level => levelMarks(level, lineOf(level.level)))
  return {
    marks: marks.flatMap(({ marks }) => marks),
    boxes: marks.map(({ box }) => box),
    bottom: placed.length === 0 ? top : lineOf(Math.max(...placed.map(({ level }) => level))) + OVER,
    refused: refused.toSorted((a, b) => a - b),
  }
}

const lengthOf = (span: Span | undefined): Point => (span ? span.to - span.from : 0)

/** Every level is as high as its highest label. */
function levelHeights(placed: readonly Level[]): readonly Point[] {
  const count = Math.max(-1, ...placed.map(({ level }) => level)) + 1
  return Array.from(
    { length: count },
    (_, level) => Math.max(...placed.filter(other => other.level === level).map(({ span }) => span.block.height)) + PAD,
  )
}

/** The label stands on its line where it fits, else to the left of a line that starts at the datum. */
function levelFor(span: Span, placed: readonly Level[], farLeft: Point): Level | undefined {
  const { from, to, block } = span
  const fits = block.width + 2 * PAD <= to - from
  if (!fits && from > farLeft + 0.01) return undefined
  const textLeft = fits ? (from + to - block.width) / 2 : from - PAD - block.width
  const left = Math.min(from, textLeft)
  const right = to - from > ROOM_FOR_HEADS ? to : to + BEYOND
  const crossing = placed.some(({ span: other, right: otherRight }) => {
    const apart = other.to <= from + 0.01 || other.from >= to - 0.01
    const nested = other.from >= from - 0.01 && other.to <= to + 0.01
    const headInTheWay = otherRight > other.to && to > other.to + 0.01 && to < otherRight + PAD
    return (!apart && !nested) || headInTheWay
  })
  if (crossing) return undefined
  const under = placed.filter(other => other.left < right + PAD && other.right > left - PAD)
  return { span, left, right, textLeft, level: Math.max(-1, ...under.map(({ level }) => level)) + 1 }
}

function levelMarks(
  { span, textLeft, left, right }: Level,
  y: Point,
): { readonly marks: readonly Mark[]; readonly box: Box } {
  const { from, to, block, startFrom, startTo } = span
  const box = { x: textLeft, y: y - block.height - 1.5, width: block.width, height: block.height }
  const [a, b] = [
    { x: from, y },
    { x: to, y },
  ]
  const inward = right === to
  const heads = inward
    ? [arrowHead(a, b), arrowHead(b, a)]
    : [arrowHead(a, { x: from - 1, y }), arrowHead(b, { x: to + 1, y })]
  const start = inward ? left : Math.min(left, from - BEYOND)
  return {
    box,
    marks: [
      line({ x: from, y: startFrom + OVER }, { x: from, y: y + OVER }),
      line({ x: to, y: startTo + OVER }, { x: to, y: y + OVER }),
      line({ x: start, y }, { x: right, y }),
      ...heads,
      ...block.marksIn(box),
    ],
  }
}
