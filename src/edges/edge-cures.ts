import { fixed } from '../figures.ts'
import { CLOSEST_MILLED, EDGE_READING } from '../handbook/port-edge-making.ts'
import type { Limits } from '../limits.ts'
import type { Part } from '../part/part.ts'
import type { EdgeCure, TakeOff, WeighedCure } from '../ports/edge-plan.ts'
import type { Shop } from '../shop/shop.ts'
import { axialChart, type ChartLine, type Resultant, type WorkingDimension } from '../stock/axial-chart.ts'
import type { AxialSizes } from '../stock/axial-sizes.ts'
import { type ChartStages, drawnFaces, faceOf } from '../stock/part-chart.ts'
import type { StockEntry } from '../stock/stock.ts'
import type { Millimetre } from '../units.ts'
import { edgeFace, edgeLines, edgeResultant, type MilledEdge, roomIn } from './edge-chain.ts'

export type EdgesAsked = {
  readonly part: Part
  readonly shop: Shop
  readonly sizes: AxialSizes
  readonly stages: ChartStages
  readonly entries: readonly StockEntry[]
  readonly edges: readonly (MilledEdge & { readonly allowed: Limits & { readonly from: 'drawing' | 'works' } })[]
  /** The port whose edge the face would be ground to: the exhaust, or the first. */
  readonly master: string
}

/** How the edges are made, decided for the part as a whole. */
export type EdgesDecided = {
  readonly cure: EdgeCure
  /** What the works mills edges to where nothing asks for closer. */
  readonly habit: Millimetre
  readonly milledTo: ReadonlyMap<string, Millimetre>
  readonly lines: readonly ChartLine[]
  readonly weighed: ReadonlyMap<string, readonly WeighedCure[]>
  readonly takeOff?: TakeOff
}

/** Down to a whole hundredth. */
const downToStep = (value: Millimetre): Millimetre => Math.floor(value * 100 + 1e-6) / 100
const upToStep = (value: Millimetre): Millimetre => Math.ceil(value * 100 - 1e-6) / 100

/**
 * The cure that costs least. Milling closer costs care alone; grinding each top face to its measured edge costs a reading
 * a piece, and gives up the length; wider limits cost the designer's consent, and are only ever proposed.
 */
export function decideEdges(asked: EdgesAsked): EdgesDecided {
  const { shop, stages, edges } = asked
  const habit = shop.habits.portEdgeTolerance
  const bare = edgeLines(stages, edges, () => 0)
  const fits = edges.map(edge => ({ edge, fit: 2 * roomIn(edgeResultant(bare, edge), edge.allowed) }))
  const closer = new Map(fits.map(({ edge, fit }) => [edge.port, Math.min(habit, downToStep(fit))]))
  const full = edgeLines(stages, edges, () => habit)
  const facing = toTheEdge(asked, habit)
  const weighed = new Map(
    fits.map(({ edge, fit }): [string, readonly WeighedCure[]] => {
      const wide = edgeResultant(full, edge)
      return [
        edge.port,
        [
          {
            cure: 'closer milling',
            serves: fit >= CLOSEST_MILLED.tolerance - 1e-9,
            figure: Math.max(0, fit),
            ...(fit < CLOSEST_MILLED.tolerance - 1e-9 && {
              because: `milling holds ±${fixed(CLOSEST_MILLED.tolerance / 2, 3)} mm at the best`,
            }),
          },
          facing.weighed,
          {
            cure: 'wider limits',
            serves: true,
            figure: upToStep(wide.worstCase + Math.abs(wide.nominal - (edge.allowed.lower + edge.allowed.upper) / 2)),
          },
        ],
      ]
    }),
  )
  if (fits.every(({ fit }) => fit >= CLOSEST_MILLED.tolerance - 1e-9)) {
    const cure = fits.every(({ fit }) => fit >= habit - 1e-9) ? 'none needed' : 'closer milling'
    return {
      cure,
      habit,
      milledTo: closer,
      weighed,
      lines: edgeLines(stages, edges, ({ port }) => closer.get(port) ?? habit),
    }
  }
  if (facing.made) return { cure: 'top face ground to the edge', habit, weighed, ...facing.made }
  return {
    cure: 'wider limits',
    habit,
    milledTo: new Map(edges.map(({ port }) => [port, habit])),
    weighed,
    lines: full,
  }
}

type ToTheEdge = {
  readonly weighed: WeighedCure
  readonly made?: Pick<EdgesDecided, 'milledTo' | 'lines'> & { readonly takeOff: TakeOff }
}

/**
 * The top face ground so that the measured edge of one port comes to its depth. That edge is then as good as reading and
 * grinding; the others follow it by the milling of both, and the length follows it too.
 */
function toTheEdge({ part, shop, sizes, stages, entries, edges, master }: EdgesAsked, habit: Millimetre): ToTheEdge {
  const cure = 'top face ground to the edge'
  const first = edges.find(({ port }) => port === master)
  const { facing } = stages
  const refused = (figure: Millimetre, because: string): ToTheEdge => ({
    weighed: { cure, serves: false, figure, because },
  })
  if (!first || !facing) return refused(0, 'no operation grinds the top face')
  const half = shop.habits.faceGrindingTolerance / 2 + EDGE_READING.most
  const target = (first.allowed.lower + first.allowed.upper) / 2 - first.shift
  const ground: WorkingDimension = {
    ...facing,
    from: edgeFace(master),
    limits: { nominal: target, lower: target - half, upper: target + half },
  }
  const bare = edgeLines(stages, edges, () => 0, ground)
  const chart = axialChart(bare)
  const rooms = [
    // The edge itself does not depend on its milling; the others depend on two, the lengths on one.
    ...edges.map(edge => ({
      what: edgeFace(edge.port),
      room: roomIn(edgeResultant(bare, edge), edge.allowed),
      fit: edge.port === master ? Number.POSITIVE_INFINITY : roomIn(edgeResultant(bare, edge), edge.allowed),
    })),
    ...drawnFaces(part, sizes).map(({ feature, name, size }) => {
      const room = roomIn(chart.distance('top', faceOf(feature), name), size)
      return { what: name, room, fit: 2 * room }
    }),
  ]
  const worst = rooms.toSorted((a, b) => a.fit - b.fit)[0]
  const open = rooms.find(({ room }) => room < -1e-9)
  const fit = Math.min(habit, downToStep(worst?.fit ?? 0))
  if (open || fit < CLOSEST_MILLED.tolerance - 1e-9)
    return refused(Math.max(0, worst?.fit ?? 0), `${(open ?? worst)?.what ?? 'an edge'} would not close`)
  // Milled closer than it must be, the edge stands closer to where it is wanted, and less stock serves.
  for (let milled = fit; milled >= CLOSEST_MILLED.tolerance - 1e-9; milled = downToStep(milled - 0.01)) {
    const lines = edgeLines(stages, edges, () => milled, ground)
    const off = axialChart(lines).stocks.find(({ face }) => face === 'top')
    if (!off || !faceServes(entries, off)) continue
    const { operation } = facing
    const range = { least: off.nominal - off.worstCase, nominal: off.nominal, most: off.nominal + off.worstCase }
    return {
      weighed: { cure, serves: true, figure: milled },
      made: {
        milledTo: new Map(edges.map(({ port }) => [port, milled])),
        lines,
        takeOff: { operation, port: master, target, ...range },
      },
    }
  }
  return refused(fit, 'the stock on the top face would not clean up, or take too much of its case')
}

/** Whether the face cleans up where least comes off, and keeps its case where most does. */
function faceServes(entries: readonly StockEntry[], { nominal, worstCase }: Resultant): boolean {
  const entry = entries.find(({ surface, kind }) => kind === 'face' && surface === 'top')
  if (!entry) return true
  const { perSide, margin, eccentricity, form } = entry
  const stray = eccentricity + form
  return (
    nominal - worstCase - stray >= perSide.needed - 1e-9 &&
    (margin.case === undefined || nominal + worstCase + stray <= perSide.most + margin.case + 1e-9)
  )
}
