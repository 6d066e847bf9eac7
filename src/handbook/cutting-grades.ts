/** Materials that are cut alike. */
export type CuttingFamily =
  | 'low-alloy steel'
  | 'aluminium-alloyed nitriding steel'
  | 'case-hardening steel'
  | 'bearing steel'
  | 'unalloyed steel'
  | 'free-cutting steel'
  | 'grey iron'
  | 'ductile iron'
  | 'aluminium'
  | 'bronze'

/**
 * Family of each grade that has cutting data; a grade that is not here has none, and none is guessed. Nitriding steels
 * are cut as a chromium-molybdenum steel of the same hardness, those with aluminium slower: common practice, no source.
 * Bearing steel is cut as it is bought, its carbides spheroidised.
 */
export const CUTTING_FAMILY: Readonly<Record<string, CuttingFamily>> = {
  '42CrMo4': 'low-alloy steel',
  '34CrMo4': 'low-alloy steel',
  '50CrMo4': 'low-alloy steel',
  '34CrNiMo6': 'low-alloy steel',
  '31CrMoV9': 'low-alloy steel',
  '32CrMo12': 'low-alloy steel',
  '34CrAlNi7-10': 'aluminium-alloyed nitriding steel',
  '34CrAlMo5-10': 'aluminium-alloyed nitriding steel',
  '41CrAlMo7-10': 'aluminium-alloyed nitriding steel',
  '16MnCr5': 'case-hardening steel',
  '20MnCr5': 'case-hardening steel',
  '100Cr6': 'bearing steel',
  C45: 'unalloyed steel',
  '11SMn30': 'free-cutting steel',
  'EN-GJL-250': 'grey iron',
  'EN-GJS-400-15': 'ductile iron',
  'EN-GJS-600-3': 'ductile iron',
  'EN AW-6082': 'aluminium',
  'EN AW-2618A': 'aluminium',
  CuSn8: 'bronze',
  'CuSn12-C': 'bronze',
}

export const STEELS: ReadonlySet<CuttingFamily> = new Set([
  'low-alloy steel',
  'aluminium-alloyed nitriding steel',
  'case-hardening steel',
  'bearing steel',
  'unalloyed steel',
  'free-cutting steel',
])

/**
 * Hardness, HB, planned for where the part file gives none: of castings the hard end of the usual range, so that the force
 * is not understated. Steel has no usual hardness: annealed and tempered differ by a quarter in speed and half in life.
 */
export const USUAL_HARDNESS: Readonly<Record<string, { readonly HB: number; readonly source: string }>> = {
  'EN-GJL-250': { HB: 240, source: 'foundry table, 170 to 240 HB' },
  'EN-GJS-400-15': { HB: 180, source: 'memory: EN 1563' },
  'EN-GJS-600-3': { HB: 250, source: 'foundry tables after EN 1563, 190 to 270 HB' },
  'EN AW-6082': { HB: 95, source: 'sheets after EN 755-2, T6' },
  'EN AW-2618A': { HB: 120, source: 'sheet of 2618-T61' },
  CuSn8: { HB: 100, source: 'strip tempers, soft' },
  'CuSn12-C': { HB: 95, source: 'memory: EN 1982' },
}

/** A row for one family over a range of hardness, HB. */
export type HardnessRow = { readonly family: CuttingFamily; readonly over: number; readonly upTo: number }

/** The row that covers a family at a hardness; none where the table has none. */
export const rowAt = <R extends HardnessRow>(rows: readonly R[], family: CuttingFamily, HB: number): R | undefined =>
  rows.find(row => row.family === family && HB > row.over && HB <= row.upTo)
