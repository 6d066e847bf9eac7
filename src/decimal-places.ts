import type { Limits } from './limits.ts'

/** How many decimal places a size is written with, in mm: decided once, so that it reads the same on every paper. */
export type Placed = { readonly places: number }

/** Places that show about a tenth of the tolerance, in mm: of a size that no gauge judges. */
export function placesFor({ lower, upper }: Pick<Limits, 'lower' | 'upper'>): number {
  // Differences of limits are a hair off: 48.9 less 48 must count as 0.9.
  const tolerance = upper - lower + 1e-9
  return tolerance >= 0.9 ? 1 : tolerance >= 0.09 ? 2 : 3
}

/** As few places as show the whole figure, within the given: `0.3`, `0.015`, `6.3`. */
export function placesShowing(
  value: number,
  { least = 0, most = 3 }: { readonly least?: number; readonly most?: number } = {},
): number {
  for (let places = least; places < most; places++) {
    if (Math.abs(value - Number(value.toFixed(places))) < 1e-9) return places
  }
  return most
}
