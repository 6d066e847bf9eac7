import type { Millimetre } from '../units.ts'

/** Depth by the definition of the process: nitriding, carburising (case), surface hardening by induction. */
export type DepthTerm = 'NHD' | 'CHD' | 'SHD'

/** Upper deviation of an ordered depth; the lower one is nought. */
export type DepthTolerance = { readonly term: DepthTerm; readonly from: Millimetre; readonly upper: Millimetre }

export const DEPTH_TOLERANCE_SOURCE = 'memory: tables of DIN 6773 and ISO 15787'
/** The present ISO 15787 gives no figures, and a trade committee lists a scatter of ±0.15 for 0.25 to 0.75 mm: agree it. */
export const DEPTH_TOLERANCES: readonly DepthTolerance[] = [
  { term: 'NHD', from: 0.1, upper: 0.05 },
  { term: 'NHD', from: 0.2, upper: 0.1 },
  { term: 'NHD', from: 0.3, upper: 0.1 },
  { term: 'NHD', from: 0.4, upper: 0.2 },
  { term: 'NHD', from: 0.5, upper: 0.25 },
  { term: 'CHD', from: 0.3, upper: 0.2 },
  { term: 'CHD', from: 0.5, upper: 0.3 },
  { term: 'CHD', from: 0.8, upper: 0.4 },
  { term: 'CHD', from: 1.2, upper: 0.5 },
  { term: 'SHD', from: 1, upper: 1 },
  { term: 'SHD', from: 2, upper: 1.6 },
  { term: 'SHD', from: 3, upper: 2 },
]

/** The row at or below the depth; below the first row, the first. */
export function upperTolerance(term: DepthTerm, depth: Millimetre): Millimetre {
  const rows = DEPTH_TOLERANCES.filter(row => row.term === term)
  const row = rows.findLast(({ from }) => from <= depth + 1e-9) ?? rows[0]
  if (!row) throw new RangeError(`no depth tolerance for ${term}`)
  return row.upper
}

/**
 * Scatter about the mean of depths as nitrided, either way: a closer band is agreed first. A German trade committee on heat
 * treatment lists it for 0.10 to 0.75 mm.
 */
const DEPTH_SCATTER: readonly { readonly from: Millimetre; readonly eitherWay: Millimetre }[] = [
  { from: 0.1, eitherWay: 0.05 },
  { from: 0.2, eitherWay: 0.1 },
  { from: 0.25, eitherWay: 0.15 },
]

/** The row at or below the mean depth; nothing under the first. */
export const usualScatter = (mean: Millimetre): Millimetre | undefined =>
  DEPTH_SCATTER.findLast(({ from }) => from <= mean + 1e-9)?.eitherWay
