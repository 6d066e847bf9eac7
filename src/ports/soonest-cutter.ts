import { LARGEST_CUTTER_IN_CORNER } from '../handbook/end-milling.ts'
import { MILLING_STARTS, SLOT_DEPTH, slotDepthOf } from '../handbook/milling-speeds.ts'
import type { EndMill } from '../shop/tool.ts'
import type { Millimetre } from '../units.ts'

/** As much of a window as tells which cutter is soonest through it. */
export type WindowSize = {
  readonly tightestCorner: Millimetre
  readonly girth: Millimetre
  /** Radius of the largest circle in the window. */
  readonly room: Millimetre
}

/** Corners of a window. */
const CORNERS = 4
/** A slug is kept where the largest circle inside the slot, with the stock on the wall, is as wide as the cutter. */
const KEPT = 1.55
/** Loops to clear a window lie half the cutter apart. */
const STEP_OVER = 0.5
/** Passes in the corners are short, slowed, and run again to finish: as many times their plain length. Timed on plans. */
const IN_CORNERS = 3

/**
 * Length cut for each millimetre of wall, to choose by before any path is laid: once round, or over the whole window, for each
 * slot depth, and in the corners what the small cutter takes off between its radius and the one that is left. At one cutting
 * speed and feed for each diameter all cutters run at the same table feed, so the shortest is the soonest.
 */
export function lengthWith(tool: EndMill, finisher: EndMill, { girth, room, tightestCorner }: WindowSize): number {
  const { fluteLength, diameter: D } = tool
  const { profileStep } = MILLING_STARTS
  const depth = slotDepthOf(SLOT_DEPTH, D, fluteLength) * D
  const area = 2 * room * (girth / 2 - 2 * room)
  const level = room > KEPT * D ? girth : Math.max(girth, area / (STEP_OVER * D))
  if (tool.name === finisher.name) return level / depth
  const rounded = D / 2 / LARGEST_CUTTER_IN_CORNER
  const left = CORNERS * (1 - Math.PI / 4) * Math.max(0, rounded ** 2 - tightestCorner ** 2)
  return level / depth + (IN_CORNERS * left) / (profileStep * finisher.diameter ** 2)
}
