import { type Box, segmentsOf, textBox } from './box.ts'
import { type LabelRow, labelBlock, placedMarks } from './label.ts'
import type { Mark, Measure, Point } from './picture.ts'
import { placeLabels, type Start } from './place-labels.ts'

export type Labelled = Start & {
  readonly rows: readonly LabelRow[]
  readonly orFrom?: readonly Start[]
  readonly spread?: number
  readonly mayCross?: boolean
  readonly reach?: readonly [Point, Point]
  readonly end?: 'arrow' | 'dot'
}

export type LabelMarks = { readonly marks: readonly Mark[]; readonly missing: readonly Labelled[] }

/** Labels set on what is drawn already: clear of its lines and its lettering. */
export function labelMarks(
  labels: readonly Labelled[],
  drawn: readonly Mark[],
  frame: Box,
  measure: Measure,
): LabelMarks {
  const blocks = labels.map(({ rows }) => labelBlock(rows, measure))
  const boxes = drawn.flatMap(mark => (mark.kind === 'text' ? [textBox(mark, measure)] : []))
  const places = placeLabels(
    labels.map((label, index) => ({ ...label, width: blocks[index]?.width ?? 0, height: blocks[index]?.height ?? 0 })),
    { frame, lines: drawn.flatMap(segmentsOf), boxes },
  )
  return {
    marks: labels.flatMap(({ end }, index) => {
      const [place, block] = [places[index], blocks[index]]
      return place && block ? placedMarks(place, block, end) : []
    }),
    missing: labels.filter((_, index) => !places[index]),
  }
}
