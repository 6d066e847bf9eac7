import { type Box, FALL, RISE } from './box.ts'
import { arrowHead, BLACK, circle, line, SMALL, text } from './marks.ts'
import type { Mark, Measure, Point } from './picture.ts'
import type { Placed } from './place-labels.ts'

/** The numbers of inspection rows in small circles, then what they are about in one or more lines. */
export type LabelRow = {
  readonly numbers?: readonly number[]
  readonly lines: readonly string[]
  readonly bold?: boolean
}

/** Between one baseline and the next. */
const LINE_PITCH: Point = 10
const GAP: Point = 2

/** Of the circle around an inspection number: three figures of our lettering fit. */
const numberRadius = (number: number): Point => (number < 100 ? 6.5 : 8.5)

export type Block = { readonly width: Point; readonly height: Point; readonly marksIn: (box: Box) => readonly Mark[] }

/** Rows one below the other. */
export function labelBlock(rows: readonly LabelRow[], measure: Measure): Block {
  const blocks = rows.map(row => rowBlock(row, measure))
  return {
    width: Math.max(0, ...blocks.map(({ width }) => width)),
    height: blocks.reduce((height, block) => height + block.height, Math.max(0, blocks.length - 1)),
    marksIn: ({ x, y }) => {
      let top = y
      return blocks.flatMap(({ width, height, marksIn }) => {
        const marks = marksIn({ x, y: top, width, height })
        top += height + 1
        return marks
      })
    },
  }
}

function rowBlock({ numbers = [], lines, bold = false }: LabelRow, measure: Measure): Block {
  const circles = numbers.reduce((width, number) => width + 2 * numberRadius(number) + GAP, 0)
  const textWidth = Math.max(0, ...lines.map(words => measure(words, SMALL, bold)))
  const textHeight = lines.length === 0 ? 0 : (lines.length - 1) * LINE_PITCH + (RISE + FALL) * SMALL
  const height = Math.max(textHeight, ...numbers.map(number => 2 * numberRadius(number)))
  return {
    width: circles + textWidth - (lines.length === 0 ? GAP : 0),
    height,
    marksIn: ({ x, y }) => {
      const middle = y + height / 2
      let left = x
      const rings = numbers.flatMap(number => {
        const radius = numberRadius(number)
        const centre = { x: left + radius, y: middle }
        left += 2 * radius + GAP
        return [
          circle(centre, radius),
          text({ x: centre.x, y: centre.y + 0.36 * SMALL }, String(number), { anchor: 'middle' }),
        ]
      })
      const first = middle - textHeight / 2 + RISE * SMALL
      const at = (index: number): Point => first + index * LINE_PITCH
      return [...rings, ...lines.map((words, index) => text({ x: x + circles, y: at(index) }, words, { bold }))]
    },
  }
}

/** A label in its place. Its leader ends in an arrow on an outline, in a dot within one: ISO 128. */
export const placedMarks = ({ box, leader }: Placed, block: Block, end: 'arrow' | 'dot' = 'arrow'): readonly Mark[] => [
  line(leader.to, leader.from),
  end === 'arrow' ? arrowHead(leader.from, leader.to) : circle(leader.from, 1.3, { fill: BLACK }),
  ...block.marksIn(box),
]
