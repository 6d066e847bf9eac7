import type { Millimetre } from '../units.ts'
import { type NominalRange, rowFor } from './nominal-range.ts'

export type GeneralToleranceClass = 'f' | 'm' | 'c' | 'v'

type Row = NominalRange & { readonly [c in GeneralToleranceClass]?: Millimetre }

/**
 * Permissible deviations, ± mm, of linear sizes without a tolerance of their own. The first row begins at 0.5 mm, which it
 * includes; below it a deviation has to stand beside the size.
 */
export const GENERAL_TOLERANCES: { readonly source: string; readonly note: string; readonly rows: readonly Row[] } = {
  source: 'ISO 2768-1:1989, linear sizes, from public reprints',
  note: 'class c up to 6 mm: one reprint has 0.15 and 0.2, the others 0.2 and 0.3',
  rows: [
    { over: 0.5, upTo: 3, f: 0.05, m: 0.1, c: 0.2 },
    { over: 3, upTo: 6, f: 0.05, m: 0.1, c: 0.3, v: 0.5 },
    { over: 6, upTo: 30, f: 0.1, m: 0.2, c: 0.5, v: 1 },
    { over: 30, upTo: 120, f: 0.15, m: 0.3, c: 0.8, v: 1.5 },
    { over: 120, upTo: 400, f: 0.2, m: 0.5, c: 1.2, v: 2.5 },
    { over: 400, upTo: 1000, f: 0.3, m: 0.8, c: 2, v: 4 },
    { over: 1000, upTo: 2000, f: 0.5, m: 1.2, c: 3, v: 6 },
    { over: 2000, upTo: 4000, m: 2, c: 4, v: 8 },
  ],
}

/**
 * The permissible deviation either way, mm; nothing where the standard gives none: below 0.5 mm, over 4000 mm, and in the
 * cells it leaves blank.
 *
 * @example generalTolerance(80, 'm') // 0.3
 */
export function generalTolerance(nominal: Millimetre, tolerance: GeneralToleranceClass): Millimetre | undefined {
  const row = nominal === 0.5 ? GENERAL_TOLERANCES.rows[0] : rowFor(GENERAL_TOLERANCES.rows, nominal)
  return row?.[tolerance]
}

/** Permissible deviations, ± mm, of chamfer heights and outside radii. The first row begins at 0.5 mm, which it includes. */
export const CHAMFER_TOLERANCES: { readonly source: string; readonly rows: readonly Row[] } = {
  source: 'memory: ISO 2768-1:1989, broken edges',
  rows: [
    { over: 0.5, upTo: 3, f: 0.2, m: 0.2, c: 0.4, v: 0.4 },
    { over: 3, upTo: 6, f: 0.5, m: 0.5, c: 1, v: 1 },
    { over: 6, upTo: 400, f: 1, m: 1, c: 2, v: 2 },
  ],
}

/** Of a smaller chamfer, the share of it either way. Common practice, no source. */
const SMALL_CHAMFER = 0.4

/**
 * The permissible deviation of a chamfer either way, mm.
 *
 * @example chamferTolerance(1.5, 'm') // 0.2
 */
export function chamferTolerance(length: Millimetre, tolerance: GeneralToleranceClass): Millimetre {
  const row = length === 0.5 ? CHAMFER_TOLERANCES.rows[0] : rowFor(CHAMFER_TOLERANCES.rows, length)
  return row?.[tolerance] ?? SMALL_CHAMFER * length
}
