import type { Box } from './box.ts'
import { type Labelled, labelMarks } from './label-marks.ts'
import { BLACK, circle, text } from './marks.ts'
import type { Mark, Measure } from './picture.ts'

export type Listed = { readonly marks: readonly Mark[]; readonly captions: readonly string[] }

const letterOf = (index: number): string => String.fromCharCode(65 + (index % 26))

/**
 * Labels that found no room, so that none vanishes: a letter with a leader to what each is about, and the words in a list
 * below the picture. Where even a letter has no room it stands beside its dot.
 */
export function listedLabels(
  missing: readonly Labelled[],
  drawn: readonly Mark[],
  frame: Box,
  measure: Measure,
): Listed {
  if (missing.length === 0) return { marks: [], captions: [] }
  const lettered = missing.map((label, index) => ({
    ...label,
    rows: [{ lines: [letterOf(index)], bold: true }],
    spread: 180,
    mayCross: true,
  }))
  const placed = labelMarks(lettered, drawn, frame, measure)
  const squeezed = placed.missing.flatMap(({ anchor, rows }): readonly Mark[] => [
    circle(anchor, 1.3, { fill: BLACK }),
    text({ x: anchor.x + 3, y: anchor.y - 2 }, rows[0]?.lines[0] ?? '', { bold: true }),
  ])
  return {
    marks: [...placed.marks, ...squeezed],
    captions: missing.map(({ rows }, index) => `${letterOf(index)}: ${rows.flatMap(({ lines }) => lines).join(', ')}.`),
  }
}
