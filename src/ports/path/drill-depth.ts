import type { Millimetre } from '../../units.ts'
import { BREAK_THROUGH } from '../plan-window.ts'
import type { PortWindow } from '../port.ts'
import type { Flat } from './offset-loops.ts'
import type { WindowWalls } from './window-walls.ts'

/** Highest place of the outside under the cutter. */
export function highestUnder(walls: WindowWalls, { x, y }: Flat, cutter: Millimetre): Millimetre {
  const rim = Array.from({ length: 8 }, (_, i) => (i * Math.PI) / 4)
  const radius = cutter / 2
  return Math.max(
    walls.outside(x, y),
    ...rim.map(turn => walls.outside(x + radius * Math.cos(turn), y + radius * Math.sin(turn))),
  )
}

/** Depth of the drill's point: its full diameter past the bore. Point angle 140°. */
export function drilledTo(walls: WindowWalls, hole: PortWindow['entryHole']): Millimetre {
  const radius = hole.diameter / 2
  const rim = Array.from({ length: 8 }, (_, i) => (i * Math.PI) / 4)
  const lowest = Math.min(
    ...rim.map(turn => walls.bore(hole.x + radius * Math.cos(turn), hole.y + radius * Math.sin(turn))),
  )
  return lowest - BREAK_THROUGH - radius / Math.tan((70 * Math.PI) / 180)
}
