import type { Measure, Picture, Point } from '../pictures/picture.ts'

/** What has the picture of a name, or none. */
export type PicturesByName = Pick<ReadonlyMap<string, Picture>, 'get'>

/** What a layout needs to know beside the markup: it opens no file and has no typeface of its own. */
export type Layout = {
  readonly measure: Measure
  readonly pictures: PicturesByName
  /** Of a whole page between head and foot. */
  readonly bodyHeight: Point
}
