import type { Millimetre } from '../../units.ts'
import { pointOf } from '../drill-point.ts'
import { BREAK_THROUGH } from '../plan-window.ts'
import type { PortWindow } from '../port.ts'
import type { Flat } from './closed-line.ts'
import type { WindowWalls } from './window-walls.ts'

/** Eight places round a tool. */
const RIM = Array.from({ length: 8 }, (_, i) => ({
  cos: Math.cos((i * Math.PI) / 4),
  sin: Math.sin((i * Math.PI) / 4),
}))

/** Highest place of the outside under the cutter. */
export function highestUnder(walls: WindowWalls, { x, y }: Flat, cutter: Millimetre): Millimetre {
  let highest = walls.outside(x, y)
  for (const { cos, sin } of RIM) {
    highest = Math.max(highest, walls.outside(x + (cutter / 2) * cos, y + (cutter / 2) * sin))
  }
  return highest
}

/** Lowest place of a cylinder under a tool. */
export const lowestUnder = (wall: WindowWalls['bore'], { x, y }: Flat, tool: Millimetre): Millimetre =>
  Math.min(...RIM.map(({ cos, sin }) => wall(x + (tool / 2) * cos, y + (tool / 2) * sin)))

/** Depth of the drill's point: its full diameter past the bore. */
export function drilledTo(walls: WindowWalls, hole: PortWindow['entryHole']): Millimetre {
  return lowestUnder(walls.bore, hole, hole.diameter) - BREAK_THROUGH - pointOf(hole.diameter)
}
