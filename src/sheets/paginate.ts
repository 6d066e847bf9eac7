import type { Point } from '../pictures/picture.ts'
import { type Item, moved } from './display-list.ts'
import type { Slice } from './slice.ts'

/** Room of every page of a sheet. */
export type Frame = { readonly left: Point; readonly top: Point; readonly bottom: Point }

/**
 * Puts strips on pages: none is cut, what is kept together stays together unless it is longer than a page, the head of a
 * table stands over its rows on every page, and what is pinned stands at the foot.
 */
export function paginate(strips: readonly Slice[], { left, top, bottom }: Frame): readonly (readonly Item[])[] {
  // What is pinned takes the strip before it along: a page with nothing but a sign-off tells nobody what is signed.
  const slices = strips.map((slice, index) => (strips[index + 1]?.pinned ? { ...slice, keep: true } : slice))
  const pages: Item[][] = [[]]
  let y = top
  let begun = false
  const turn = () => {
    pages.push([])
    y = top
    begun = false
  }
  const put = (slice: Slice, at: Point) => {
    pages.at(-1)?.push(...moved(slice.items, left, at))
    begun = true
  }
  slices.forEach((slice, index) => {
    if (slice.newPage) {
      if (begun) turn()
      return
    }
    const slack = 1e-6
    const room = bottom - top - (slice.head?.height ?? 0)
    const chain = chainFrom(slices, index, room)
    if (begun && y + slice.gap + chain > bottom + slack) turn()
    if (!begun && slice.head) {
      put(slice.head, y)
      y += slice.head.height
    } else if (begun) {
      y += slice.gap
    }
    if (slice.pinned) y = Math.max(y, bottom - slice.height)
    put(slice, y)
    y += slice.height
  })
  return pages.filter((items, index) => items.length > 0 || index === 0)
}

/** Height of what must follow on the same page; a chain longer than a page cannot be kept, and only its first strip counts. */
function chainFrom(slices: readonly Slice[], index: number, room: Point): Point {
  let height = 0
  for (let at = index; ; at++) {
    const slice = slices[at]
    if (slice === undefined) break
    height += slice.height + (at > index ? slice.gap : 0)
    if (!slice.keep) break
  }
  return height <= room ? height : (slices[index]?.height ?? 0)
}
