import type { XY } from './marks.ts'
import type { Mark, Measure, Point } from './picture.ts'

export type Box = { readonly x: Point; readonly y: Point; readonly width: Point; readonly height: Point }
export type Segment = { readonly from: XY; readonly to: XY }

/** Of our typeface: how far figures and capitals rise above the baseline, and tails fall below it, in text sizes. */
export const RISE = 0.76
export const FALL = 0.24

export const grown = ({ x, y, width, height }: Box, by: Point): Box => ({
  x: x - by,
  y: y - by,
  width: width + 2 * by,
  height: height + 2 * by,
})

export function around(points: readonly XY[]): Box {
  const xs = points.map(point => point.x)
  const ys = points.map(point => point.y)
  const [x, y] = [Math.min(...xs), Math.min(...ys)]
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y }
}

/** Twice the signed area of the triangle: positive when c lies to the left of the way from a to b, y up. */
const side = (a: XY, b: XY, c: XY): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)

/** True when the two segments share a point, ends included. */
export function meet(a: Segment, b: Segment): boolean {
  const slack = 1e-9
  if (Math.min(a.from.x, a.to.x) > Math.max(b.from.x, b.to.x) + slack) return false
  if (Math.max(a.from.x, a.to.x) < Math.min(b.from.x, b.to.x) - slack) return false
  if (Math.min(a.from.y, a.to.y) > Math.max(b.from.y, b.to.y) + slack) return false
  if (Math.max(a.from.y, a.to.y) < Math.min(b.from.y, b.to.y) - slack) return false
  if (side(b.from, b.to, a.from) * side(b.from, b.to, a.to) > 0) return false
  return side(a.from, a.to, b.from) * side(a.from, a.to, b.to) <= 0
}

/** True when any of the segment lies in the box. */
export function enters({ from, to }: Segment, box: Box): boolean {
  let [first, last] = [0, 1]
  const ends = [
    [from.x, to.x - from.x, box.x, box.x + box.width],
    [from.y, to.y - from.y, box.y, box.y + box.height],
  ] as const
  for (const [start, run, low, high] of ends) {
    if (run === 0) {
      if (start < low || start > high) return false
      continue
    }
    const [a, b] = [(low - start) / run, (high - start) / run]
    first = Math.max(first, Math.min(a, b))
    last = Math.min(last, Math.max(a, b))
  }
  return first <= last
}

/** The room a line of text takes, turned as it stands. */
export function textBox(mark: Mark & { readonly kind: 'text' }, measure: Measure): Box {
  const width = measure(mark.text, mark.size, mark.bold)
  const left = mark.anchor === 'start' ? 0 : mark.anchor === 'middle' ? -width / 2 : -width
  const turn = ((mark.turned ?? 0) * Math.PI) / 180
  const corners = [left, left + width].flatMap(x => [-RISE * mark.size, FALL * mark.size].map(y => ({ x, y })))
  return around(
    corners.map(({ x, y }) => ({
      x: mark.x + x * Math.cos(turn) - y * Math.sin(turn),
      y: mark.y + x * Math.sin(turn) + y * Math.cos(turn),
    })),
  )
}

/** The lines of a mark, to keep labels off them. Curves count by their control polygon. */
export function segmentsOf(mark: Mark): readonly Segment[] {
  switch (mark.kind) {
    case 'text':
      return []
    case 'line':
      return [{ from: { x: mark.x1, y: mark.y1 }, to: { x: mark.x2, y: mark.y2 } }]
    case 'circle':
      return Array.from({ length: 24 }, (_, index) => {
        const at = (turn: number): XY => ({
          x: mark.x + mark.radius * Math.cos((turn * Math.PI) / 12),
          y: mark.y + mark.radius * Math.sin((turn * Math.PI) / 12),
        })
        return { from: at(index), to: at(index + 1) }
      })
    case 'path': {
      const segments: Segment[] = []
      let start: XY | undefined
      let present: XY | undefined
      const go = (to: XY): void => {
        if (present) segments.push({ from: present, to })
        present = to
      }
      for (const step of mark.steps) {
        if (step.to === 'close') {
          if (start) go(start)
        } else if (step.to === 'move') {
          start = { x: step.x, y: step.y }
          present = start
        } else {
          if (step.to === 'curve') {
            go({ x: step.x1, y: step.y1 })
            go({ x: step.x2, y: step.y2 })
          }
          go({ x: step.x, y: step.y })
        }
      }
      return segments
    }
  }
}

/** The room that all marks take together, lines by their middle. */
export function boundsOf(marks: readonly Mark[], measure: Measure): Box {
  const points = marks.flatMap(mark => {
    if (mark.kind !== 'text') return segmentsOf(mark).flatMap(({ from, to }) => [from, to])
    const { x, y, width, height } = textBox(mark, measure)
    return [
      { x, y },
      { x: x + width, y: y + height },
    ]
  })
  return around(points)
}
