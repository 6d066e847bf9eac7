import type { Picture, Point } from '../pictures/picture.ts'
import type { Bars } from './barcodes.ts'

/** A node of the document's structure, for whoever has the page read out. Without a tag a thing is page furniture. */
export type Tag = {
  readonly type: 'H1' | 'H2' | 'H3' | 'P' | 'L' | 'LI' | 'LBody' | 'Table' | 'TR' | 'TH' | 'TD' | 'Figure' | 'Sect'
  readonly parent?: Tag
  readonly alternative?: string
  readonly scope?: 'Row' | 'Column'
  /** Of a row: all its cells, those too that nothing is printed in, so that every row has as many. */
  readonly cells?: readonly Tag[]
  /** Of a cell: how many columns it goes over. */
  readonly columns?: number
}

/** One thing at its final place on a page, points from the top left corner. Painters draw items and decide nothing. */
export type Item =
  /** y of the baseline. */
  | (At & { readonly kind: 'text'; readonly text: string; readonly size: Point; readonly bold: boolean })
  /** A number in a circle, about its middle. */
  | (At & { readonly kind: 'ring'; readonly radius: Point; readonly text: string; readonly size: Point })
  /** To (x + dx, y + dy). */
  | (At & {
      readonly kind: 'rule'
      readonly dx: Point
      readonly dy: Point
      readonly width: Point
      readonly grey: number
    })
  | (At & { readonly kind: 'cell'; readonly width: Point; readonly height: Point })
  | (At & { readonly kind: 'picture'; readonly picture: Picture; readonly scale: number })
  | (At & { readonly kind: 'bars'; readonly bars: Bars })

type At = { readonly x: Point; readonly y: Point; readonly tag?: Tag }

export const moved = (items: readonly Item[], dx: Point, dy: Point): readonly Item[] =>
  dx === 0 && dy === 0 ? items : items.map(item => ({ ...item, x: item.x + dx, y: item.y + dy }))
