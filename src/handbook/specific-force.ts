import type { HardnessRow } from './cutting-grades.ts'

export type SpecificForceRow = HardnessRow & {
  /** Material group after VDI 3323. */
  readonly group: number
  /** N/mm², and the exponent of chip thickness. */
  readonly kc11: number
  readonly mc: number
}

const GROUPS = {
  1: [1350, 0.21],
  2: [1500, 0.22],
  3: [1675, 0.24],
  6: [1775, 0.24],
  7: [1675, 0.24],
  8: [1725, 0.24],
  9: [1800, 0.24],
  12: [1875, 0.21],
  13: [1875, 0.21],
  15: [1150, 0.2],
  16: [1350, 0.28],
  17: [1225, 0.25],
  18: [1350, 0.28],
  22: [800, 0.25],
  24: [700, 0.27],
  26: [700, 0.27],
} as const

const row = (
  family: SpecificForceRow['family'],
  over: number,
  upTo: number,
  group: keyof typeof GROUPS,
): SpecificForceRow => ({ family, over, upTo, group, kc11: GROUPS[group][0], mc: GROUPS[group][1] })

/**
 * Specific cutting force of a chip of 1 mm by 1 mm, sharp, rake 0°. Each published group has one hardness (6: 200 HB, 7: 275,
 * 8: 300, 9: 350; 2: 190, 3: 250); the ranges between them are those of the speed tables.
 * Source: ISCAR material groups after VDI 3323, turning catalogue 2017, p. 558, and boring catalogue 2022, p. 111.
 */
export const SPECIFIC_FORCE_ROWS: readonly SpecificForceRow[] = [
  row('low-alloy steel', 0, 225, 6),
  row('low-alloy steel', 225, 275, 7),
  row('low-alloy steel', 275, 325, 8),
  row('low-alloy steel', 325, 375, 9),
  row('aluminium-alloyed nitriding steel', 0, 225, 6),
  row('aluminium-alloyed nitriding steel', 225, 275, 7),
  row('aluminium-alloyed nitriding steel', 275, 325, 8),
  row('aluminium-alloyed nitriding steel', 325, 375, 9),
  row('case-hardening steel', 0, 250, 6),
  row('bearing steel', 0, 250, 6),
  row('unalloyed steel', 0, 225, 2),
  row('unalloyed steel', 225, 325, 3),
  row('free-cutting steel', 0, 225, 1),
  row('stainless steel', 0, 245, 12),
  row('stainless steel', 245, 325, 13),
  row('grey iron', 0, 200, 15),
  row('grey iron', 200, 260, 16),
  row('ductile iron', 0, 190, 17),
  row('ductile iron', 190, 305, 18),
  row('aluminium', 0, 130, 22),
  row('silicon aluminium', 0, 130, 24),
  row('bronze', 0, 200, 26),
]

export const SPECIFIC_FORCE_SOURCE = 'ISCAR material groups after VDI 3323, turning catalogue 2017, p. 558'

/**
 * Values of the German textbooks, up to half as high again for alloy steel: worn and older tools, it is thought. They
 * bound the force from above.
 */
export const TEXTBOOK_FORCE: Readonly<
  Record<string, { readonly kc11: number; readonly mc: number; readonly source: string }>
> = {
  '42CrMo4': { kc11: 2500, mc: 0.26, source: 'memory: Tschätsch; 2526 / 0.2496 fitted to a chuck maker’s table' },
  '16MnCr5': { kc11: 2100, mc: 0.26, source: 'memory: Tschätsch' },
  C45: { kc11: 2220, mc: 0.14, source: 'memory: Tschätsch' },
  '34CrMo4': { kc11: 2240, mc: 0.21, source: 'memory: Tschätsch' },
  '11SMn30': { kc11: 1400, mc: 0.18, source: 'memory: Tschätsch, uncertain, 1200 to 1400' },
  'EN-GJL-250': { kc11: 1160, mc: 0.26, source: 'memory; 1186 / 0.2459 fitted to a chuck maker’s table' },
  'EN-GJS-600-3': { kc11: 1480, mc: 0.17, source: 'memory, uncertain' },
  'EN AW-6082': { kc11: 830, mc: 0.23, source: 'memory, uncertain, 700 to 830' },
}
