import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { between, type DrawnSize, type Limits } from '../limits.ts'
import { type Part, placeOf } from '../part/part.ts'
import type { Operation, Purpose } from '../route/operation.ts'
import type { Shop } from '../shop/shop.ts'
import { axialChart, type ChartLine, type FaceGrowth, type Resultant, type WorkingDimension } from './axial-chart.ts'
import type { AxialSizes } from './axial-sizes.ts'

/** Working dimensions of the lengths, and what comes out of them; `drawn` where the drawing gives limits. */
export type AxialChart = {
  readonly dimensions: readonly WorkingDimension[]
  /** At every face, in hardening. */
  readonly growth?: FaceGrowth
  readonly resultants: readonly (Resultant & { readonly drawn?: Limits })[]
}
export type PartChart = AxialChart & { readonly findings: readonly Finding[] }

/** The chart of a part's lengths: turned from the top face, ground from the face that locates it. */
export function partChart(part: Part, shop: Shop, operations: readonly Operation[], sizes: AxialSizes): PartChart {
  const number = (...purposes: readonly Purpose[]) =>
    operations.find(({ purpose }) => purposes.includes(purpose))?.number ?? 0
  const turned = number('finish-turn')
  const down = (symbol: string, to: string, limits: Limits, operation: number): ChartLine => ({
    kind: 'cut',
    symbol,
    operation,
    from: 'top',
    to,
    direction: 'down',
    limits,
  })
  const lines: ChartLine[] = [
    down('W1', 'bottom', sizes.softLength, turned),
    ...sizes.steps.flatMap(({ band }, index) => {
      const depth = sizes.softDepth.get(band.name)
      return depth ? [down(`W${index + 2}`, band.name, depth, turned)] : []
    }),
  ]
  const half = shop.habits.portEdgeTolerance / 2
  const ported = part.ports.length > 0
  // Depths of single ports are the port room's: here a port edge stands at 0 and only what is added to it is traced.
  if (ported) lines.push(down('X', 'port edges', between(-half, half), number('mill-ports')))
  if (part.hardening) {
    const { least, nominal, most } = sizes.growth
    lines.push({
      kind: 'growth',
      symbol: 'g',
      operation: number('nitride', 'case-harden', 'induction-harden'),
      up: ['top', ...sizes.steps.filter(({ looks }) => looks === 'up').map(({ band }) => band.name)],
      down: ['bottom', ...sizes.steps.filter(({ looks }) => looks === 'down').map(({ band }) => band.name)],
      limits: { nominal, lower: least, upper: most },
    })
  }
  const { locator } = sizes
  if (locator) {
    const finished = locator.face === 'bottom' ? sizes.finishedLength : sizes.finishedDepth.get(locator.band)
    if (finished) {
      lines.push({
        kind: 'cut',
        symbol: `W${sizes.steps.length + 2}`,
        operation: number('grind-bore', 'grind-top'),
        from: locator.face === 'bottom' ? 'bottom' : locator.band,
        to: 'top',
        direction: 'up',
        limits: finished,
      })
    }
  }
  const chart = axialChart(lines)
  const drawn: readonly { face: string; size: DrawnSize; path: string }[] = [
    { face: 'bottom', size: part.length, path: '/body/length' },
    ...sizes.steps.map(({ band }) => ({ face: band.name, size: band.to, path: band.path })),
  ]
  const distances = drawn.map(({ face, size, path }) => ({
    ...chart.distance('top', face, face === 'bottom' ? 'length' : `depth of ${face}`),
    drawn: { nominal: size.nominal, lower: size.lower, upper: size.upper },
    path,
  }))
  const growth = lines.find(line => line.kind === 'growth')
  return {
    dimensions: lines.filter(line => line.kind === 'cut'),
    ...(growth && { growth }),
    resultants: [
      ...chart.stocks.map(({ face: _, operation: __, ...rest }) => rest),
      ...distances.map(({ path: _, ...rest }) => rest),
      ...(ported ? [chart.distance('top', 'port edges', 'port edges, finished less as milled')] : []),
    ],
    findings: distances.flatMap(({ path, ...distance }) => openChain(part, distance, path)),
  }

  function openChain(
    of: Part,
    { name, nominal, worstCase, rootSumSquare, expression, drawn: size }: Resultant & { drawn: Limits },
    path: string,
  ): readonly Finding[] {
    const over = (half: number) => Math.max(nominal + half - size.upper, size.lower - (nominal - half))
    if (over(worstCase) <= 1e-9) return []
    return [
      {
        severity: over(rootSumSquare) > 1e-9 ? 'error' : 'warning',
        code: 'stock/chain-open',
        message: `${name} comes out at ${fixed(nominal, 3)} ±${fixed(worstCase, 3)} mm at the worst (±${fixed(rootSumSquare, 3)} root sum of squares, ${expression}); the drawing allows ${fixed(size.lower, 3)} to ${fixed(size.upper, 3)} mm`,
        at: placeOf(of, path),
        hint: `turn or grind the faces closer by ${fixed(over(worstCase), 3)} mm in all, or widen the drawing's limits`,
      },
    ]
  }
}
