import type { Segment } from './box.ts'
import { line, type XY } from './marks.ts'
import { type Mark, onPaper, type Point } from './picture.ts'

/** Clear distance between hatching lines: wide enough to survive two photocopies. */
const HATCH_PITCH: Point = onPaper(1.6)

/**
 * Lines at 45° rising to the right, already cut to a closed outline (even-odd). They lie on one lattice over the whole
 * picture, so that the pieces of one part are hatched alike: ISO 128.
 */
export function hatchSegments(outline: readonly XY[], pitch: Point = HATCH_PITCH): readonly Segment[] {
  const sums = outline.map(({ x, y }) => x + y)
  const spacing = pitch * Math.SQRT2
  const first = Math.ceil(Math.min(...sums) / spacing)
  const last = Math.floor(Math.max(...sums) / spacing)
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => (first + index) * spacing).flatMap(sum => {
    const crossings = outline
      .flatMap((a, index) => {
        const b = outline[(index + 1) % outline.length] ?? a
        const [below, above] = [a.x + a.y - sum, b.x + b.y - sum]
        if (below < 0 === above < 0) return []
        const part = below / (below - above)
        return [{ x: a.x + part * (b.x - a.x), y: a.y + part * (b.y - a.y) }]
      })
      .toSorted((a, b) => a.x - b.x)
    return crossings.flatMap((from, index) => {
      const to = crossings[index + 1]
      return index % 2 === 0 && to && to.x - from.x > 0.2 ? [{ from, to }] : []
    })
  })
}

export const hatch = (outline: readonly XY[], pitch?: Point): readonly Mark[] =>
  hatchSegments(outline, pitch).map(({ from, to }) => line(from, to))
