import type { Millimetre } from '../units.ts'
import { type NominalRange, rowFor } from './nominal-range.ts'

type Range = NominalRange & { readonly least: number; readonly most: number }

/** Brinell hardness that a grade is delivered at, quenched and tempered, by the diameter of the bar, mm. */
export const DELIVERED_HARDNESS: Readonly<
  Record<string, { readonly source: string; readonly rows: readonly Range[] }>
> = {
  '42CrMo4': {
    source: 'data sheet of a steel maker, +QT',
    rows: [
      { over: 16, upTo: 40, least: 298, most: 359 },
      { over: 40, upTo: 100, least: 271, most: 331 },
      { over: 100, upTo: 160, least: 240, most: 286 },
    ],
  },
  '34CrAlNi7-10': {
    source: 'data sheet of a steel maker, +QT',
    rows: [
      { over: 16, upTo: 40, least: 271, most: 331 },
      { over: 40, upTo: 100, least: 253, most: 319 },
      { over: 100, upTo: 250, least: 240, most: 298 },
    ],
  },
}

/** In HV, by HV = HB / 0.95 (memory: ISO 18265, unalloyed and low-alloy steel). Nothing where no range is at hand. */
export function deliveredHardness(
  grade: string,
  diameter: Millimetre,
): { readonly least: number; readonly most: number } | undefined {
  const row = rowFor(DELIVERED_HARDNESS[grade]?.rows ?? [], diameter)
  return row && { least: row.least / 0.95, most: row.most / 0.95 }
}
