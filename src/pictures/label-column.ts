import { type LabelRow, labelBlock, placedMarks } from './label.ts'
import type { XY } from './marks.ts'
import type { Mark, Measure, Point } from './picture.ts'

export type InColumn = { readonly rows: readonly LabelRow[]; readonly anchor: XY }

const BETWEEN: Point = 4

/**
 * Labels in a column beside a drawing, in the order of their anchors from the top, each as near the height of its anchor
 * as its neighbours let it: leaders of anchors on a curve that bulges toward the column do not cross.
 */
export function labelColumn(
  labels: readonly InColumn[],
  column: { readonly x: Point; readonly side: 'left' | 'right'; readonly top: Point; readonly bottom: Point },
  measure: Measure,
): readonly Mark[] {
  const sorted = labels
    .map(({ rows, anchor }) => ({ anchor, block: labelBlock(rows, measure) }))
    .toSorted((a, b) => a.anchor.y - b.anchor.y)
  const tops = spread(
    sorted.map(({ anchor, block }) => ({ want: anchor.y - block.height / 2, height: block.height + BETWEEN })),
    column.top,
    column.bottom,
  )
  return sorted.flatMap(({ anchor, block }, index) => {
    const y = tops[index] ?? column.top
    const x = column.side === 'right' ? column.x : column.x - block.width
    const box = { x, y, width: block.width, height: block.height }
    const end = { x: column.x + (column.side === 'right' ? -2 : 2), y: y + block.height / 2 }
    return placedMarks({ box, leader: { from: anchor, to: end } }, block, 'dot')
  })
}

/** Moves down what would overlap, then up what would leave by the bottom. */
function spread(
  items: readonly { readonly want: Point; readonly height: Point }[],
  top: Point,
  bottom: Point,
): readonly Point[] {
  const tops: Point[] = []
  for (const [index, { want }] of items.entries()) {
    const above = items[index - 1]
    const free = above === undefined ? top : (tops[index - 1] ?? top) + above.height
    tops.push(Math.max(want, free))
  }
  let limit = bottom
  for (let index = items.length - 1; index >= 0; index--) {
    const height = items[index]?.height ?? 0
    tops[index] = Math.min(tops[index] ?? top, limit - height)
    limit = tops[index] ?? limit
  }
  return tops
}
