import { line, OUTLINE, polygon, SHADE, SMALL, text } from './marks.ts'
import { LINE, type Mark, type Measure, type Point } from './picture.ts'

/** What a mark of a ladder means. */
export type KeyName = { readonly mark: 'limits' | 'taken' | 'depth'; readonly name: string }

const PITCH: Point = 14
const SAMPLE: Point = 24
const GAP: Point = 4
const BETWEEN: Point = 16

type Placed = KeyName & { readonly x: Point; readonly row: number }

/** Every kind of mark once more, each with its name beside it, in as many rows as the width asks. */
export function ladderKey(
  names: readonly KeyName[],
  width: Point,
  measure: Measure,
): { readonly height: Point; readonly marksAt: (top: Point) => readonly Mark[] } {
  const placed: Placed[] = []
  for (const name of names) {
    const last = placed.at(-1)
    const x = last ? last.x + SAMPLE + GAP + measure(last.name, SMALL) + BETWEEN : 0
    const fits = x + SAMPLE + GAP + measure(name.name, SMALL) <= width
    placed.push({ ...name, x: fits ? x : 0, row: (last?.row ?? 0) + (fits ? 0 : 1) })
  }
  return {
    height: ((placed.at(-1)?.row ?? 0) + 1) * PITCH,
    marksAt: top =>
      placed.flatMap(({ mark, name, x, row }) => {
        const y = top + row * PITCH + 6
        return [...sample(mark, x, y), text({ x: x + SAMPLE + GAP, y: y + 3 }, name)]
      }),
  }
}

function sample(mark: KeyName['mark'], x: Point, y: Point): readonly Mark[] {
  if (mark === 'taken')
    return [
      line({ x, y }, { x: x + SAMPLE, y }),
      ...[x, x + SAMPLE].map(end => line({ x: end, y: y - 2 }, { x: end, y: y + 2 })),
      line({ x: x + 5, y }, { x: x + 13, y }, { width: LINE.cut }),
    ]
  const half = mark === 'limits' ? 2.5 : 5
  const corners = [
    { x, y: y - half },
    { x: x + SAMPLE, y: y - half },
    { x: x + SAMPLE, y: y + half },
    { x, y: y + half },
  ]
  return [polygon(corners, mark === 'limits' ? { stroke: OUTLINE } : { fill: SHADE })]
}
