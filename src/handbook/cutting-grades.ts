/** Materials that are cut alike. */
export type CuttingFamily =
  | 'low-alloy steel'
  | 'aluminium-alloyed nitriding steel'
  | 'case-hardening steel'
  | 'bearing steel'
  | 'unalloyed steel'
  | 'free-cutting steel'
  | 'stainless steel'
  | 'grey iron'
  | 'ductile iron'
  | 'aluminium'
  | 'silicon aluminium'
  | 'bronze'

/**
 * Family of each grade that has cutting data; a grade that is not here has none, and none is guessed. Nitriding steels
 * are cut as a chromium-molybdenum steel of the same hardness, those with aluminium slower: common practice, no source.
 * Bearing steel is cut as it is bought, its carbides spheroidised. C15, C60, 38MnVS6 and S355 are cut as C45, which is within
 * a tenth of their own speeds, C60 a sixth slower: common practice, no source.
 */
export const CUTTING_FAMILY: Readonly<Record<string, CuttingFamily>> = {
  '42CrMo4': 'low-alloy steel',
  '34CrMo4': 'low-alloy steel',
  '50CrMo4': 'low-alloy steel',
  '34CrNiMo6': 'low-alloy steel',
  '30CrNiMo8': 'low-alloy steel',
  '31CrMoV9': 'low-alloy steel',
  '32CrMo12': 'low-alloy steel',
  '33CrMoV12-9': 'low-alloy steel',
  '34CrAlNi7-10': 'aluminium-alloyed nitriding steel',
  '34CrAlMo5-10': 'aluminium-alloyed nitriding steel',
  '41CrAlMo7-10': 'aluminium-alloyed nitriding steel',
  '16MnCr5': 'case-hardening steel',
  '20MnCr5': 'case-hardening steel',
  '18CrNiMo7-6': 'case-hardening steel',
  '15NiCr13': 'case-hardening steel',
  '100Cr6': 'bearing steel',
  '100CrMo7': 'bearing steel',
  C15: 'unalloyed steel',
  C45: 'unalloyed steel',
  C60: 'unalloyed steel',
  '38MnVS6': 'unalloyed steel',
  S355: 'unalloyed steel',
  '11SMn30': 'free-cutting steel',
  '11SMnPb30': 'free-cutting steel',
  '11SMnPb37': 'free-cutting steel',
  X20Cr13: 'stainless steel',
  X46Cr13: 'stainless steel',
  'EN-GJL-250': 'grey iron',
  'EN-GJL-300': 'grey iron',
  'EN-GJS-400-15': 'ductile iron',
  'EN-GJS-600-3': 'ductile iron',
  'EN-GJS-700-2': 'ductile iron',
  'EN AW-6082': 'aluminium',
  'EN AW-2618A': 'aluminium',
  AlSi12CuNiMg: 'silicon aluminium',
  CuSn8: 'bronze',
  'CuSn12-C': 'bronze',
  'CuSn7Zn4Pb7-C': 'bronze',
}

export const STEELS: ReadonlySet<CuttingFamily> = new Set([
  'low-alloy steel',
  'aluminium-alloyed nitriding steel',
  'case-hardening steel',
  'bearing steel',
  'unalloyed steel',
  'free-cutting steel',
  'stainless steel',
])

/**
 * Hardness, HB, planned for where the part file gives none: of castings the hard end of the usual range, so that the force
 * is not understated. Steel has no usual hardness: annealed and tempered differ by a quarter in speed and half in life.
 */
export const USUAL_HARDNESS: Readonly<Record<string, { readonly HB: number; readonly source: string }>> = {
  'EN-GJL-250': { HB: 240, source: 'foundry table, 170 to 240 HB' },
  'EN-GJL-300': { HB: 260, source: 'memory: EN 1561, 190 to 260 HB' },
  'EN-GJS-400-15': { HB: 180, source: 'memory: EN 1563' },
  'EN-GJS-600-3': { HB: 250, source: 'foundry tables after EN 1563, 190 to 270 HB' },
  'EN-GJS-700-2': { HB: 305, source: 'memory: EN 1563, 225 to 305 HB' },
  'EN AW-6082': { HB: 95, source: 'sheets after EN 755-2, T6' },
  'EN AW-2618A': { HB: 120, source: 'sheet of 2618-T61' },
  AlSi12CuNiMg: { HB: 125, source: 'foundry table of 336.0 and its like, T5 and T6' },
  CuSn8: { HB: 100, source: 'strip tempers, soft' },
  'CuSn12-C': { HB: 95, source: 'memory: EN 1982' },
  'CuSn7Zn4Pb7-C': { HB: 75, source: 'foundry table after EN 1982, 70 and more' },
}

/** A row for one family over a range of hardness, HB. */
export type HardnessRow = { readonly family: CuttingFamily; readonly over: number; readonly upTo: number }

/** The row that covers a family at a hardness; none where the table has none. */
export const rowAt = <R extends HardnessRow>(rows: readonly R[], family: CuttingFamily, HB: number): R | undefined =>
  rows.find(row => row.family === family && HB > row.over && HB <= row.upTo)
