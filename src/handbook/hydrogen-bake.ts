import type { Celsius, Hour, Vickers } from '../units.ts'
import { convertedFrom } from './hardness-conversion.ts'

/** Least hours of bake after plating, by tensile strength, MPa. */
export type BakeRow = { readonly over: number; readonly upTo: number; readonly hours: Hour }

/** The standard itself says that baking does not guarantee freedom; ISO 9588 is the international counterpart (memory). */
export const BAKE_SOURCE = "ASTM B850-98(2009) bake table, a plater's copy"
export const BAKE = {
  temperature: { least: 190 as Celsius, most: 220 as Celsius },
  /** Hours after plating within which the bake must start. */
  startWithin: 3 as Hour,
} as const

export const BAKE_ROWS: readonly BakeRow[] = [
  { over: 1000, upTo: 1100, hours: 8 },
  { over: 1100, upTo: 1200, hours: 10 },
  { over: 1200, upTo: 1300, hours: 12 },
  { over: 1300, upTo: 1400, hours: 14 },
  { over: 1400, upTo: 1500, hours: 16 },
  { over: 1500, upTo: 1600, hours: 18 },
  { over: 1600, upTo: 1700, hours: 20 },
  { over: 1700, upTo: 1800, hours: 22 },
]

/** ISO 9587:2007 sets 1000 MPa at 300 HV10, which the conversion table puts at 965 MPa: the lower hardness decides. */
export const BAKED_FROM: Vickers = 300

/**
 * Least hours of bake: nought under 300 HV. A surface-hardened part falls in the category of its layer, whatever the core
 * (ISO 9587:2007 for before plating; ISO 9588 believed the same), unless designer and plater agree otherwise.
 */
export function bakeHours(hardness: Vickers, surfaceHardened?: Vickers): Hour {
  const decides = Math.max(hardness, surfaceHardened ?? 0)
  if (decides < BAKED_FROM) return 0
  const last = BAKE_ROWS.at(-1)
  const strength = Math.max(convertedFrom('HV', decides)?.strength ?? Number.POSITIVE_INFINITY, 1000.5)
  return (BAKE_ROWS.find(({ over, upTo }) => strength > over && strength <= upTo) ?? last)?.hours ?? 0
}
