import type { Box, Segment } from './box.ts'
import type { Point } from './picture.ts'

const CELL: Point = 3

/** Which parts of a picture are still white, to a grid of 3 points: asking is quick however many lines there are. */
export type FreeRoom = {
  readonly takeLine: (segment: Segment) => void
  readonly takeBox: (box: Box) => void
  /** True when the box, with half a cell around it, lies in the frame and touches nothing taken. */
  readonly isFree: (x: Point, y: Point, width: Point, height: Point) => boolean
}

export function openRoom(frame: Box): FreeRoom {
  const columns = Math.ceil(frame.width / CELL) + 1
  const rows = Math.ceil(frame.height / CELL) + 1
  const taken = new Uint8Array(columns * rows)
  const column = (x: Point): number => Math.floor((x - frame.x) / CELL)
  const row = (y: Point): number => Math.floor((y - frame.y) / CELL)
  const take = (atColumn: number, atRow: number): void => {
    if (atColumn >= 0 && atColumn < columns && atRow >= 0 && atRow < rows) taken[atRow * columns + atColumn] = 1
  }
  return {
    takeLine: ({ from, to }) => {
      const steps = Math.max(1, Math.ceil((Math.hypot(to.x - from.x, to.y - from.y) * 2) / CELL))
      for (let step = 0; step <= steps; step++) {
        take(column(from.x + ((to.x - from.x) * step) / steps), row(from.y + ((to.y - from.y) * step) / steps))
      }
    },
    takeBox: ({ x, y, width, height }) => {
      for (let atRow = row(y); atRow <= row(y + height); atRow++) {
        for (let atColumn = column(x); atColumn <= column(x + width); atColumn++) take(atColumn, atRow)
      }
    },
    isFree: (x, y, width, height) => {
      if (x < frame.x || y < frame.y || x + width > frame.x + frame.width || y + height > frame.y + frame.height) {
        return false
      }
      const left = column(x - CELL / 2)
      const right = column(x + width + CELL / 2)
      const top = row(y - CELL / 2)
      const bottom = row(y + height + CELL / 2)
      for (let atRow = Math.max(0, top); atRow <= Math.min(bottom, rows - 1); atRow++) {
        for (let atColumn = Math.max(0, left); atColumn <= Math.min(right, columns - 1); atColumn++) {
          if (taken[atRow * columns + atColumn] === 1) return false
        }
      }
      return true
    },
  }
}
