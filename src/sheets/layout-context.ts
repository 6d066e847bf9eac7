import type { Measure, Picture, Point } from '../pictures/picture.ts'

/** What a layout needs to know beside the markup: it opens no file and has no typeface of its own. */
export type Layout = {
  readonly measure: Measure
  readonly pictures: ReadonlyMap<string, Picture>
  /** Of a whole page between head and foot. */
  readonly bodyHeight: Point
}
