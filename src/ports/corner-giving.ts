import { type Millimetre, radians } from '../units.ts'
import { tightestCorner } from './contour-measures.ts'
import type { WindowDesign } from './port-design.ts'

/** The corner to draw so that the tightest one in the cutter's plane is as wanted, by halving; nothing if none fits. */
export function cornerGiving(window: WindowDesign, from: Millimetre, wanted: Millimetre): Millimetre | undefined {
  const most = Math.min(window.roof - window.floor, window.radius * radians(window.to - window.from)) / 2
  const gives = (corner: Millimetre): Millimetre => tightestCorner(window.withCorner(corner))
  if (gives(most) < wanted) return undefined
  let [low, high] = [from, most]
  for (let halving = 0; halving < 40; halving++) {
    const middle = (low + high) / 2
    if (gives(middle) < wanted) low = middle
    else high = middle
  }
  return high
}
