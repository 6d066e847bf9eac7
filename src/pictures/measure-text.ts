import { BOLD_WIDTHS, REGULAR_WIDTHS } from './face-widths.ts'
import type { Measure } from './picture.ts'

const UNITS_PER_EM = 2048

const widthsOf = (table: typeof REGULAR_WIDTHS): ReadonlyMap<string, number> =>
  new Map(table.flatMap(([from, widths]) => widths.map((width, i) => [String.fromCodePoint(from + i), width] as const)))

const WIDTHS = { regular: widthsOf(REGULAR_WIDTHS), bold: widthsOf(BOLD_WIDTHS) }

/**
 * Width of a text in DejaVu Sans Condensed, letter by letter as our paper sets it, without opening the font. A letter that
 * the table lacks counts as one em, wide enough for any.
 */
export const measureText: Measure = (text, size, bold = false) => {
  const widths = bold ? WIDTHS.bold : WIDTHS.regular
  let units = 0
  for (const letter of text) units += widths.get(letter) || UNITS_PER_EM
  return (units / UNITS_PER_EM) * size
}
