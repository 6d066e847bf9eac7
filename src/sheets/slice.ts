import type { Point } from '../pictures/picture.ts'
import { type Item, moved } from './display-list.ts'

/** A strip of a sheet that no page end may cut; items stand as if its top left corner were the origin. */
export type Slice = {
  readonly height: Point
  /** Clear room above, dropped at the top of a page. */
  readonly gap: Point
  readonly items: readonly Item[]
  /** Stays on the page of the slice after it. */
  readonly keep?: boolean
  /** Stands at the foot of its page. */
  readonly pinned?: boolean
  /** Begins a page. */
  readonly newPage?: boolean
  /** Head of the table that it is a row of, said again where the row begins a page. */
  readonly head?: Slice
}

/** Slices on top of each other, as one. */
export function stacked(slices: readonly Slice[]): { readonly height: Point; readonly items: readonly Item[] } {
  let y = 0
  const items = slices.flatMap(({ gap, height, items }, index) => {
    const top = y + (index > 0 ? gap : 0)
    y = top + height
    return moved(items, 0, top)
  })
  return { height: y, items }
}

/** None is parted from the next. */
export const kept = (slices: readonly Slice[]): readonly Slice[] =>
  slices.map((slice, index) => (index < slices.length - 1 ? { ...slice, keep: true } : slice))

export const withGap = (slices: readonly Slice[], gap: Point): readonly Slice[] =>
  slices.map((slice, index) => (index === 0 ? { ...slice, gap } : slice))

/** Items without their tags: what is said again on the next page is not read out again. */
export const untagged = (items: readonly Item[]): readonly Item[] => items.map(({ tag: _, ...item }): Item => item)
