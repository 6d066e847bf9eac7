import { bandAt } from '../band.ts'
import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { type Limits, middleOf } from '../limits.ts'
import type { OperationSize } from '../operation-size.ts'
import type { Part } from '../part/part.ts'
import type { EdgePlan } from '../ports/edge-plan.ts'
import type { PlannedPort } from '../ports/port.ts'
import { crankOf, crankTurns } from '../ports/timing.ts'
import { topStockAt } from '../ports/top-stock-at.ts'
import type { Operation } from '../route/operation.ts'
import type { Shop } from '../shop/shop.ts'
import { axialChart, type Resultant } from '../stock/axial-chart.ts'
import { type AxialChart, faceOf } from '../stock/part-chart.ts'
import type { StockPlan } from '../stock/plan-stock.ts'
import { openNotebook, SCRATCH, type Working } from '../working.ts'
import { edgeBreakOf } from './edge-break.ts'
import { edgeResultant, type MilledEdge, membersOf, shareOutside } from './edge-chain.ts'
import { decideEdges, type EdgesAsked, type EdgesDecided } from './edge-cures.ts'
import { openEdge } from './edge-findings.ts'
import { allowedOf, milledEdge } from './milled-edges.ts'

export type EdgesPlanned = {
  readonly ports: readonly PlannedPort[]
  /** Sizes as the decision leaves them: the depth that is milled, the length that is ground. */
  readonly sizesOf: (operation: number, sizes: readonly OperationSize[]) => readonly OperationSize[]
  /** The chart of the lengths with the edges in it. */
  readonly axial: AxialChart
  readonly findings: readonly Finding[]
  readonly workings: readonly Working[]
}

type Given = {
  readonly part: Part
  readonly shop: Shop
  readonly operations: readonly Operation[]
  readonly ports: readonly PlannedPort[]
  readonly stock: StockPlan
}

/** Traces every timing edge from the milling to the finished part, chooses how it is held, and how far it is broken. */
export function planEdges({ part, shop, operations, ports, stock }: Given): EdgesPlanned {
  const { asMilled, lengths, entries } = stock
  const { engine } = part
  const crank = engine && crankTurns(engine) ? crankOf(engine, SCRATCH) : undefined
  const notebook = openNotebook()
  const shown = engine && crank && crankOf(engine, notebook)
  const milling = operations.find(({ purpose }) => purpose === 'mill-ports')?.number ?? 0
  const edges = ports.flatMap((planned, index) => {
    const port = part.ports.find(({ name, at }) => name === planned.name && at === planned.at)
    return asMilled && port
      ? [
          {
            port,
            planned,
            milled: {
              ...milledEdge({ part, planned, entries, topStock: topStockAt(asMilled, planned.top) }),
              symbol: `X${index + 1}`,
              operation: milling,
              allowed: allowedOf(port, planned, shop, crank),
            },
          },
        ]
      : []
  })
  if (edges.length === 0) return { ports, sizesOf: (_, sizes) => sizes, axial: stock.axial, findings: [], workings: [] }
  const master = (edges.find(({ planned }) => planned.role === 'exhaust') ?? edges[0])?.planned.name ?? ''
  const asked: EdgesAsked = { part, shop, ...lengths, entries, edges: edges.map(({ milled }) => milled), master }
  const decided = decideEdges(asked)
  const plated = ({ top }: PlannedPort) =>
    bandAt(part.bore, top)?.name === stock.plating?.surface ? stock.plating : undefined
  const planned = edges.map(({ port, planned, milled }) => {
    const found = edgeResultant(decided.lines, milled)
    const edge: EdgePlan = {
      ...chainOf(decided, milled, found),
      edgeBreak: edgeBreakOf({ part, planned, milled, crank: shown, notebook, plating: plated(planned) }),
    }
    noteChain(notebook, planned.name, edge)
    return { port, planned: { ...planned, edge }, found }
  })
  return {
    ports: planned.map(({ planned }) => planned),
    sizesOf: (operation, sizes) => sizesWith(decided, asked, operation, sizes),
    axial: axialWith(stock.axial, decided, planned),
    findings: planned.flatMap(({ port, planned, found }) => openEdge(part, port, planned.edge, found)),
    workings: notebook.workings,
  }
}

function chainOf(
  { cure, weighed, milledTo, lines, takeOff, habit }: EdgesDecided,
  milled: MilledEdge & Pick<EdgePlan, 'allowed'>,
  found: Resultant,
): EdgePlan {
  const members = membersOf(lines, found)
  const asUsual = milledTo.get(milled.port) === habit
  const share = (as: 'bellShaped' | 'even') => shareOutside(members, found.nominal, milled.allowed, as)
  const { expression, nominal, worstCase, rootSumSquare } = found
  return {
    members,
    expression,
    nominal,
    worstCase,
    rootSumSquare,
    allowed: milled.allowed,
    milledTo: milledTo.get(milled.port) ?? 0,
    outside: { bellShaped: share('bellShaped'), even: share('even') },
    cure: cure === 'closer milling' && asUsual ? 'none needed' : cure,
    weighed: weighed.get(milled.port) ?? [],
    ...(takeOff && { takeOff }),
  }
}

function noteChain(notebook: ReturnType<typeof openNotebook>, about: string, edge: EdgePlan): void {
  const source = 'derived: tolerance chart; root sum of squares memory: Chase, tolerance charting'
  const note = (symbol: string, meaning: string, value: number, expression: string) =>
    notebook.note({ about, symbol, meaning, value, unit: 'mm', expression, source })
  note('h', 'depth of the top edge, finished', edge.nominal, edge.expression)
  const sum = edge.members.map(({ half }) => fixed(half, 4))
  note('w', 'half width, every member at its limit', edge.worstCase, sum.join(' + '))
  note(
    'q',
    'half width, root of the sum of squares',
    edge.rootSumSquare,
    `sqrt(${sum.map(half => `${half}^2`).join(' + ')})`,
  )
}

function sizesWith(
  { milledTo, lines, takeOff }: EdgesDecided,
  { stages, part, sizes: lengths, edges }: EdgesAsked,
  operation: number,
  sizes: readonly OperationSize[],
): readonly OperationSize[] {
  return sizes.map(size => {
    const half = (milledTo.get(size.feature) ?? 0) / 2
    if (edges[0]?.operation === operation && size.measure === 'depth' && half > 0) {
      const middle = middleOf(size)
      return { ...size, lower: middle - half, upper: middle + half }
    }
    const located = stages.facing?.from
    const named = located === 'bottom' ? 'length' : located
    if (!takeOff || operation !== takeOff.operation || size.feature !== named || size.measure === 'diameter')
      return size
    // The face goes where the edge wants it: the length is what comes out, within the drawing.
    const drawn = located === 'bottom' ? part.length : lengths.steps.find(({ band }) => band.name === located)?.band.to
    const { nominal, worstCase } = axialChart(lines).distance('top', located ?? 'bottom', named ?? 'length')
    const limits: Limits = { nominal, lower: nominal - worstCase, upper: nominal + worstCase }
    return { ...size, ...limits, ...(drawn && { drawn: drawn.written }) }
  })
}

function axialWith(
  axial: AxialChart,
  { lines }: EdgesDecided,
  planned: readonly { readonly planned: PlannedPort & { readonly edge: EdgePlan }; readonly found: Resultant }[],
): AxialChart {
  const chart = axialChart(lines)
  const again = axial.resultants.map(({ name, drawn, ...rest }): AxialChart['resultants'][number] => {
    const stock = chart.stocks.find(one => one.name === name)
    if (stock) {
      const { face: _, operation: __, ...resultant } = stock
      return resultant
    }
    return drawn ? { ...chart.distance('top', faceOf(drawn.feature), name), drawn } : { name, ...rest }
  })
  return {
    ...axial,
    dimensions: lines.filter(line => line.kind === 'cut'),
    resultants: [
      ...again,
      ...planned.map(({ planned: { name, edge }, found }) => {
        const { nominal, lower, upper } = edge.allowed
        return { ...found, drawn: { feature: name, nominal, lower, upper } }
      }),
    ],
  }
}
