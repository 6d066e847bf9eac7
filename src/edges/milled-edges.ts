import { bandAt } from '../band.ts'
import type { Part, Port } from '../part/part.ts'
import type { EdgePlan } from '../ports/edge-plan.ts'
import type { PlannedPort } from '../ports/port.ts'
import type { Crank } from '../ports/timing.ts'
import type { Shop } from '../shop/shop.ts'
import type { StockEntry } from '../stock/stock.ts'
import { type Millimetre, radians } from '../units.ts'
import type { MilledEdge } from './edge-chain.ts'

/** The timing edge as it is milled, and what finishing the bore takes off beside it. */
export function milledEdge({
  part,
  planned: { name, top, up, windows },
  entries,
  topStock,
}: {
  readonly part: Part
  readonly planned: PlannedPort
  readonly entries: readonly StockEntry[]
  readonly topStock: Millimetre
}): Omit<MilledEdge, 'symbol' | 'operation'> {
  const depth = Math.min(...windows.map(({ edges }) => edges.asCut.highest))
  const finished = Math.min(...windows.map(({ edges }) => edges.finished.highest))
  const walls = windows[0]?.walls
  const opened = walls ? walls.finished - walls.bore : 0
  const growth = walls?.growth
  // A wall grows square to itself, which moves the edge of an inclined one further along the bore.
  const more = 1 / Math.cos(radians(up)) - 1
  const middle = growth ? (growth.least + growth.most) / 2 : 0
  const wall = { nominal: middle * more, half: growth ? ((growth.most - growth.least) / 2) * more : 0 }
  const shift = finished - (depth - topStock) - middle - wall.nominal
  const bore = entries.filter(({ kind, surface }) => kind === 'bore' && surface === bandAt(part.bore, top)?.name)
  const sum = (of: (entry: (typeof bore)[number]) => number) => bore.reduce((total, entry) => total + of(entry), 0)
  return {
    port: name,
    depth,
    shift,
    grows: growth !== undefined,
    wall,
    slope: Math.abs(opened) < 1e-9 ? 0 : shift / opened,
    taken: {
      least: sum(({ perSide }) => perSide.least),
      nominal: sum(({ onDiameter }) => onDiameter.nominal / 2),
      most: sum(({ perSide }) => perSide.most),
      operation: bore.at(-1)?.operation ?? 0,
    },
  }
}

/** The drawing's own limits on the edge, in depth or in crank degrees; else what the works holds port edges to. */
export function allowedOf(
  { drawn, name }: Port,
  { top }: PlannedPort,
  shop: Shop,
  crank: Crank | undefined,
): EdgePlan['allowed'] {
  if (drawn?.top) {
    const { nominal, lower, upper } = drawn.top
    return { nominal, lower, upper, from: 'drawing' }
  }
  if (drawn?.opens && crank) {
    const at = (angle: number) => crank.depthAt(angle, { about: name })
    const { nominal, lower, upper } = drawn.opens
    return { nominal: at(nominal), lower: at(lower), upper: at(upper), from: 'drawing' }
  }
  const half = shop.habits.portEdgeTolerance / 2
  return { nominal: top, lower: top - half, upper: top + half, from: 'works' }
}
