import type { Millimetre } from '../units.ts'
import type { LadderRow } from './ladder-rows.ts'
import { onPaper, type Point } from './picture.ts'

/** Where a ladder is drawn: metal to the left. */
export type LadderPanel = {
  readonly at: (outward: Millimetre) => Point
  readonly left: Point
  readonly right: Point
}

type Room = Pick<LadderPanel, 'left' | 'right'>

/** Enlargements, largest first. */
const ENLARGED: readonly number[] = [1000, 500, 200, 100, 50, 20, 10, 5, 2, 1]
/** Left free beside what must be seen. */
const FREE: Point = 12

/**
 * One enlargement for all ladders of a picture, so that a bar means the same everywhere: the largest at which every surface
 * shows its case, or its plating, through all it goes through; where there is neither, its last two states.
 */
export function scaleForAll(ladders: readonly (readonly LadderRow[])[], { left, right }: Room): number {
  const deep = ladders.filter(rows => rows.some(({ depth }) => depth !== undefined))
  const spans = (deep.length > 0 ? deep : ladders).map(rows => {
    const { deepest, highest } = mustShow(rows)
    return highest - deepest
  })
  const widest = Math.max(1e-6, ...spans)
  return ENLARGED.find(enlarged => onPaper(widest * enlarged) <= right - left - FREE) ?? 1
}

/** What must be seen of a ladder stands in the middle of its room; what is wider than that stands with its last state inside. */
export function panelAt(rows: readonly LadderRow[], scale: number, { left, right }: Room): LadderPanel {
  const { deepest, highest } = mustShow(rows)
  const slack = Math.max(FREE / 2, (right - left - onPaper((highest - deepest) * scale)) / 2)
  const at = (outward: Millimetre): Point => left + slack + onPaper((outward - deepest) * scale)
  return { at, left, right }
}

function mustShow(rows: readonly LadderRow[]): { readonly deepest: Millimetre; readonly highest: Millimetre } {
  const kept = rows.filter(row => row.depth !== undefined)
  const shown = kept.length > 0 ? rows.slice(-kept.length - 1) : rows.slice(-2)
  return {
    deepest: Math.min(...shown.map(({ inner, depth }) => inner - (depth ?? 0))),
    highest: Math.max(...shown.map(({ outer }) => outer)),
  }
}
