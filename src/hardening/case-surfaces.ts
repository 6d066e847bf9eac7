import type { Band } from '../band.ts'
import type { Part } from '../part/part.ts'
import type { SurfaceKind } from '../place.ts'

/** The band that the growth of a side is reckoned at: its longest. */
function longest(bands: readonly Band[]): Band | undefined {
  const reach = ({ from, to }: Band) => to.nominal - from
  return bands.reduce<Band | undefined>((best, band) => (best && reach(best) >= reach(band) ? best : band), undefined)
}

export const seatOf = ({ outside }: Pick<Part, 'outside'>): Band | undefined => longest(outside)
export const boreOf = ({ bore }: Pick<Part, 'bore'>): Band | undefined => longest(bore)

/** Sides that take case: they exist and are not masked, by their own name or as a whole. */
export function treatedSides(part: Part): { readonly outside: boolean; readonly bore: boolean } {
  const masked = new Set(part.hardening?.masked ?? [])
  const open = (side: string, band: Band | undefined) =>
    part.hardening !== undefined && band !== undefined && !masked.has(side) && !masked.has(band.name)
  return { outside: open('outside', seatOf(part)), bore: open('bore', boreOf(part)) }
}

/** Neither masked by its own name nor with its whole side. */
export const takesCase = ({ hardening }: Part, kind: SurfaceKind, surface: string): boolean =>
  hardening !== undefined && !hardening.masked.includes(surface) && !hardening.masked.includes(kind)
