import { boundsOf } from './box.ts'
import { captionBlock } from './caption.ts'
import { moved } from './marks.ts'
import { LINE, type Mark, type Measure, type Picture, type Point } from './picture.ts'

/** A picture cut to the height that its marks use, its captions below them. The width stays. */
export function cropped({
  marks,
  captions,
  width,
  measure,
  alternative,
}: {
  readonly marks: readonly Mark[]
  readonly captions: readonly string[]
  readonly width: Point
  readonly measure: Measure
  readonly alternative: string
}): Picture {
  const { y, height } = boundsOf(marks, measure)
  const up = { x: 0, y: LINE.cut - y }
  const caption = captionBlock(captions, width, measure)
  const bottom = 2 * LINE.cut + height + caption.height
  return {
    width,
    height: bottom,
    alternative,
    marks: [...marks.map(mark => moved(mark, up)), ...caption.marksAt(bottom)],
  }
}
