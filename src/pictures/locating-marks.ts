import type { Millimetre } from '../units.ts'
import { polygon, THIN, type XY } from './marks.ts'
import type { PartView } from './part-view.ts'
import { type Mark, onPaper, type Point } from './picture.ts'
import { boreOf, type Gap, outsideOf, radiusAt, type Stretch } from './profile.ts'
import { longestClear } from './size-anchor.ts'

const SIZE: Point = onPaper(2.6)

/**
 * Small triangles that stand on a surface by which the part is held or located: our own sign, explained in the caption.
 * A band that jaws grip has them at the end that is gripped.
 */
export function locatingMarks(view: PartView, surface: string, gripsAt: 'top' | 'bottom' = 'top'): readonly Mark[] {
  const { shape, at, gaps } = view
  if (surface === 'top' || surface === 'bottom') {
    const depth = surface === 'top' ? shape.top : shape.bottom
    const way = surface === 'top' ? -1 : 1
    const [bore, outside] = [radiusAt(boreOf(shape), depth), radiusAt(outsideOf(shape), depth)]
    return [triangle(at(depth, (bore + outside) / 2), way, 0), triangle(at(depth, -(bore + outside) / 2), way, 0)]
  }
  const outside = outsideOf(shape).find(({ name }) => name === surface)
  if (outside) {
    const { from, to, radius } = outside
    const clear = gripsAt === 'bottom' ? lastClear(outside, gaps) : longestClear(outside, gaps, 'outer')
    return [
      triangle(at(quarter(clear, gripsAt), radius), 0, -1),
      triangle(at(quarter(gripsAt === 'bottom' ? clear : [from, to], gripsAt), -radius), 0, 1),
    ]
  }
  const bore = boreOf(shape).find(({ name, radius }) => name === surface && radius > 0)
  if (!bore) return []
  const [from, to] = longestClear(bore, gaps, 'inner')
  return [0.2, 0.8].map(part => triangle(at(from + part * (to - from), bore.radius), 0, 1))
}

/** A quarter of the way in from one end. */
const quarter = ([from, to]: readonly [Millimetre, Millimetre], end: 'top' | 'bottom'): Millimetre =>
  end === 'top' ? from + (to - from) / 4 : to - (to - from) / 4

/** Below the last window that breaks through a band. */
function lastClear({ from, to }: Stretch, gaps: readonly Gap[]): readonly [Millimetre, Millimetre] {
  const edges = gaps.map(({ outer }) => outer[1]).filter(depth => depth > from && depth < to)
  return [Math.max(from, ...edges), to]
}

/** Its point on the surface, its foot away from the metal. */
function triangle({ x, y }: XY, right: number, down: number): Mark {
  const foot = { x: x + right * SIZE, y: y + down * SIZE }
  const half = SIZE / 2
  return polygon(
    [
      { x, y },
      { x: foot.x + half * down, y: foot.y + half * right },
      { x: foot.x - half * down, y: foot.y - half * right },
    ],
    { stroke: THIN },
  )
}
