import type { Band } from '../band.ts'
import type { Part } from '../part/part.ts'
import { takesCase } from '../part/takes-case.ts'

/** The band that the growth of a side is reckoned at: its longest. */
function longest(bands: readonly Band[]): Band | undefined {
  const reach = ({ from, to }: Band) => to.nominal - from
  return bands.reduce<Band | undefined>((best, band) => (best && reach(best) >= reach(band) ? best : band), undefined)
}

export const seatOf = ({ outside }: Pick<Part, 'outside'>): Band | undefined => longest(outside)
export const boreOf = ({ bore }: Pick<Part, 'bore'>): Band | undefined => longest(bore)

/** Sides that take case: they exist and are not masked, by their own name or as a whole. */
export function treatedSides(part: Part): { readonly outside: boolean; readonly bore: boolean } {
  const open = (side: 'outside' | 'bore', band: Band | undefined) =>
    band !== undefined && takesCase(part, side, band.name)
  return { outside: open('outside', seatOf(part)), bore: open('bore', boreOf(part)) }
}
