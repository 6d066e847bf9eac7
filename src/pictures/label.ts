import { type Box, FALL, RISE } from './box.ts'
import { arrowHead, circle, line, SMALL, THIN, text } from './marks.ts'
import type { Mark, Measure, Point } from './picture.ts'
import type { Placed } from './place-labels.ts'

/** What a label says: the numbers of inspection rows in small circles, then lines of text, one below the other. */
export type Label = {
  readonly numbers?: readonly number[]
  readonly lines: readonly string[]
  /** The first line stands out. */
  readonly bold?: boolean
}

/** Between one baseline and the next. */
export const LINE_PITCH: Point = 10
const NUMBER_GAP: Point = 2

/** Of the circle around an inspection number: three figures of our lettering fit. */
export const numberRadius = (number: number): Point => (number < 100 ? 6 : 7.5)

export type Block = { readonly width: Point; readonly height: Point; readonly marksIn: (box: Box) => readonly Mark[] }

export function labelBlock({ numbers = [], lines, bold = false }: Label, measure: Measure): Block {
  const circles = numbers.reduce((width, number) => width + 2 * numberRadius(number) + NUMBER_GAP, 0)
  const textWidth = Math.max(0, ...lines.map((words, index) => measure(words, SMALL, bold && index === 0)))
  const textHeight = lines.length === 0 ? 0 : (lines.length - 1) * LINE_PITCH + (RISE + FALL) * SMALL
  const circleHeight = Math.max(0, ...numbers.map(number => 2 * numberRadius(number)))
  const width = circles + textWidth - (lines.length === 0 ? NUMBER_GAP : 0)
  const height = Math.max(textHeight, circleHeight)
  return {
    width,
    height,
    marksIn: ({ x, y }) => {
      const middle = y + height / 2
      let left = x
      const rings = numbers.flatMap(number => {
        const radius = numberRadius(number)
        const centre = { x: left + radius, y: middle }
        left += 2 * radius + NUMBER_GAP
        return [
          circle(centre, radius),
          text({ x: centre.x, y: centre.y + 0.36 * SMALL }, String(number), { anchor: 'middle' }),
        ]
      })
      const first = middle - textHeight / 2 + RISE * SMALL
      return [
        ...rings,
        ...lines.map((words, index) =>
          text({ x: x + circles, y: first + index * LINE_PITCH }, words, { bold: bold && index === 0 }),
        ),
      ]
    },
  }
}

/** A label in its place, with the leader that ends in an arrow on what it is about. */
export const placedMarks = ({ box, leader }: Placed, block: Block): readonly Mark[] => [
  line(leader.to, leader.from, THIN),
  arrowHead(leader.from, leader.to),
  ...block.marksIn(box),
]
