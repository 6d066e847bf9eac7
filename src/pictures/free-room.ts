import type { Box, Segment } from './box.ts'
import type { Point } from './picture.ts'

const CELL: Point = 3

/** Which parts of a picture are still white, to a grid of 3 points: asking is quick however many lines there are. */
export type FreeRoom = {
  readonly frame: Box
  readonly takeLine: (segment: Segment) => void
  readonly takeBox: (box: Box) => void
  /** True when the box, with half a cell around it, lies in the frame and touches nothing taken. */
  readonly isFree: (x: Point, y: Point, width: Point, height: Point) => boolean
}

export function openRoom(frame: Box): FreeRoom {
  const columns = Math.ceil(frame.width / CELL) + 1
  const rows = Math.ceil(frame.height / CELL) + 1
  const taken = new Uint8Array(columns * rows)
  /** How many cells are taken above and left of a corner of the grid, counted when first asked for. */
  let counted: Int32Array | undefined
  const column = (x: Point): number => Math.floor((x - frame.x) / CELL)
  const row = (y: Point): number => Math.floor((y - frame.y) / CELL)
  const take = (atColumn: number, atRow: number): void => {
    if (atColumn >= 0 && atColumn < columns && atRow >= 0 && atRow < rows) taken[atRow * columns + atColumn] = 1
    counted = undefined
  }
  return {
    frame,
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
      counted ??= countedFrom(taken, columns, rows)
      const left = Math.max(0, column(x - CELL / 2))
      const right = Math.min(columns, column(x + width + CELL / 2) + 1)
      const top = Math.max(0, row(y - CELL / 2)) * (columns + 1)
      const bottom = Math.min(rows, row(y + height + CELL / 2) + 1) * (columns + 1)
      const at = (corner: number): number => counted?.[corner] ?? 0
      return at(bottom + right) - at(bottom + left) - at(top + right) + at(top + left) === 0
    },
  }
}

/** Sums over all cells above and left of every corner: any rectangle's is then a sum of four. */
function countedFrom(taken: Uint8Array, columns: number, rows: number): Int32Array {
  const sums = new Int32Array((columns + 1) * (rows + 1))
  for (let row = 0; row < rows; row++) {
    let along = 0
    for (let column = 0; column < columns; column++) {
      along += taken[row * columns + column] ?? 0
      sums[(row + 1) * (columns + 1) + column + 1] = along + (sums[row * (columns + 1) + column + 1] ?? 0)
    }
  }
  return sums
}
