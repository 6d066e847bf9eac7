import { type Limits, middleOf } from '../limits.ts'
import type { EdgeMember } from '../ports/edge-plan.ts'
import {
  axialChart,
  type ChartLine,
  type FaceGrowth,
  type Resultant,
  type WorkingDimension,
} from '../stock/axial-chart.ts'
import { added, bellShaped, chanceBelow, type Distribution, evenlySpread } from '../stock/distribution.ts'
import { type ChartStages, linesOf } from '../stock/part-chart.ts'
import type { Millimetre } from '../units.ts'

/** A timing edge as the milling leaves it, and what finishing the bore does to it. */
export type MilledEdge = {
  readonly port: string
  readonly symbol: string
  readonly operation: number
  /** Highest point, from the top face as it stands, in the bore as it is. */
  readonly depth: Millimetre
  /** By how much the corner of an inclined wall moves down for each mm that comes off the bore side, and from milled to finished. */
  readonly slope: number
  readonly shift: Millimetre
  /** Whether the window's own wall grows with the faces, and how much more than a face an inclined one brings its edge down. */
  readonly grows: boolean
  readonly wall: { readonly nominal: Millimetre; readonly half: Millimetre }
  /** Off the bore side at any one place, and by which operation last. */
  readonly taken: {
    readonly least: Millimetre
    readonly nominal: Millimetre
    readonly most: Millimetre
    readonly operation: number
  }
}

/** What the face of an edge is called in the chart. */
export const edgeFace = (port: string): string => `${port}, top edge`

const wallSymbol = ({ symbol }: MilledEdge): string => symbol.replace('X', 'b')
const ownWallSymbol = ({ symbol }: MilledEdge): string => symbol.replace('X', 'w')

/** The chart of the lengths with the edges in it. `facing` takes the place of the ground face's own dimension. */
export function edgeLines(
  stages: ChartStages,
  edges: readonly MilledEdge[],
  milledTo: (edge: MilledEdge) => Millimetre,
  facing: WorkingDimension | undefined = stages.facing,
): readonly ChartLine[] {
  const milled = edges.map((edge): WorkingDimension => {
    const half = milledTo(edge) / 2
    return {
      kind: 'cut',
      symbol: edge.symbol,
      operation: edge.operation,
      from: 'top',
      to: edgeFace(edge.port),
      direction: 'down',
      limits: { nominal: edge.depth, lower: edge.depth - half, upper: edge.depth + half },
    }
  })
  const { stretch } = stages
  const faces = edges.map(({ port, depth }) => ({ face: edgeFace(port), depth: stages.stretchedTo(depth) }))
  const walls = edges.flatMap((edge): readonly FaceGrowth[] => {
    const { slope, shift, taken, operation, wall } = edge
    const own: readonly FaceGrowth[] =
      wall.nominal < 1e-9
        ? []
        : [
            {
              kind: 'growth',
              symbol: ownWallSymbol(edge),
              operation: stages.growth?.operation ?? operation,
              up: [],
              down: [edgeFace(edge.port)],
              limits: { nominal: wall.nominal, lower: wall.nominal - wall.half, upper: wall.nominal + wall.half },
            },
          ]
    if (Math.abs(slope) < 1e-6) return own
    const half = (Math.abs(slope) * (taken.most - taken.least)) / 2
    const limits = { nominal: shift, lower: shift - half, upper: shift + half }
    return [
      ...own,
      {
        kind: 'growth',
        symbol: wallSymbol(edge),
        operation: taken.operation || operation,
        up: [],
        down: [edgeFace(edge.port)],
        limits,
      },
    ]
  })
  const withEdges: ChartStages = {
    ...stages,
    turned: [...stages.turned, ...milled],
    // The roof of a window is a treated face that looks down: it grows by what every other face of the piece grows.
    ...(stages.growth && {
      growth: {
        ...stages.growth,
        down: [...stages.growth.down, ...edges.filter(({ grows }) => grows).map(({ port }) => edgeFace(port))],
      },
    }),
    ...(stretch && { stretch: { ...stretch, faces: [...stretch.faces, ...faces] } }),
    ...(facing && { facing }),
  }
  return [...linesOf(withEdges), ...walls]
}

export const edgeResultant = (lines: readonly ChartLine[], { port }: MilledEdge): Resultant =>
  axialChart(lines).distance('top', edgeFace(port), edgeFace(port))

/** Half of the range of every line that a resultant depends on, as much as it moves it. */
export function membersOf(lines: readonly ChartLine[], { expression }: Resultant): readonly EdgeMember[] {
  return [...expression.matchAll(/(?:(\d+(?:\.\d+)?) \* )?([A-Za-z]\w*)/g)].flatMap(
    ([, coefficient = '1', symbol = '']) => {
      const line = lines.find(one => one.symbol === symbol)
      if (!line) return []
      const half = (Number(coefficient) * (line.limits.upper - line.limits.lower)) / 2
      return [{ name: nameOf(line), symbol, operation: line.operation, half }]
    },
  )
}

const WALL_NAMES: Readonly<Record<string, string>> = {
  b: 'bore side taken, inclined wall',
  w: 'growth of an inclined wall',
}

function nameOf(line: ChartLine): string {
  if (line.kind === 'growth') return WALL_NAMES[line.symbol.charAt(0)] ?? 'growth of a face'
  if (line.kind === 'stretch') return 'stretch of the length between'
  if (line.direction === 'up')
    return line.from.endsWith('top edge') ? `top face ground to ${line.from}` : `top face from ${line.from}`
  return line.to.endsWith('top edge')
    ? `${line.to}, milled`
    : line.to === 'bottom'
      ? 'length, turned'
      : `depth of ${line.to}, turned`
}

const STEP = 0.0005

/** Share outside the limits when every member lies anywhere in its range as stated. */
export function shareOutside(
  members: readonly EdgeMember[],
  nominal: Millimetre,
  allowed: Limits,
  as: 'bellShaped' | 'even',
): number {
  const spread = (half: Millimetre): Distribution => {
    if (as === 'bellShaped') return bellShaped(STEP, { least: -half, nominal: 0, most: half })
    const from0 = evenlySpread(STEP, 2 * half)
    return { ...from0, start: from0.start - half }
  }
  const [first, ...rest] = members.filter(({ half }) => half > 0).map(({ half }) => spread(half))
  if (!first) return nominal < allowed.lower || nominal > allowed.upper ? 1 : 0
  const sum = rest.reduce(added, first)
  const share = chanceBelow(sum, allowed.lower - nominal) + 1 - chanceBelow(sum, allowed.upper - nominal)
  // What is left over of adding up many small shares is nothing.
  return share < 1e-9 ? 0 : Math.min(1, share)
}

/** What is left between the chain at its worst and the nearer limit; negative where it does not close. */
export const roomIn = ({ nominal, worstCase }: Resultant, allowed: Limits): Millimetre =>
  (allowed.upper - allowed.lower) / 2 - Math.abs(nominal - middleOf(allowed)) - worstCase
