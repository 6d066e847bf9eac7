import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { stretchedDepth } from '../hardening/growth.ts'
import type { DrawnSize, Limits, Spread } from '../limits.ts'
import { type Part, placeOf } from '../part/part.ts'
import type { Operation, Purpose } from '../route/operation.ts'
import type { Millimetre } from '../units.ts'
import {
  axialChart,
  type ChartLine,
  type FaceGrowth,
  type Resultant,
  type Stretch,
  type WorkingDimension,
} from './axial-chart.ts'
import type { Looks } from './axial-growth.ts'
import type { AxialSizes } from './axial-sizes.ts'

/** Working dimensions of the lengths, and what comes out of them; `drawn` where limits are asked of it. */
export type AxialChart = {
  readonly dimensions: readonly WorkingDimension[]
  /** Free growth at every treated face, in hardening. */
  readonly growth?: FaceGrowth
  /** Of the metal between the faces, in hardening. */
  readonly stretch?: Stretch
  readonly resultants: readonly ChartRow<DrawnLimits>[]
}
export type PartChart = AxialChart & { readonly findings: readonly Finding[] }

/** The drawing's limits, and what of the part they are of: `length`, a band, a port. */
export type DrawnLimits = Limits & { readonly feature: string }
export type ChartRow<Drawn> = Resultant & { readonly drawn?: Drawn }

/** The lines of a part's chart as they follow one another: turned, hardened, ground. */
export type ChartStages = {
  readonly turned: readonly WorkingDimension[]
  readonly growth?: FaceGrowth
  readonly stretch?: Stretch
  readonly facing?: WorkingDimension
  /** A depth as far as it stretches in hardening, at the mean stretch of the part. */
  readonly stretchedTo: (depth: Millimetre) => Millimetre
}

/** Turned from the top face, ground from the face that locates it. */
export function chartStages(operations: readonly Operation[], sizes: AxialSizes): ChartStages {
  const number = (...purposes: readonly Purpose[]) =>
    operations.find(({ purpose }) => purposes.includes(purpose))?.number ?? 0
  const down = (symbol: string, to: string, limits: Limits): WorkingDimension => ({
    kind: 'cut',
    symbol,
    operation: number('finish-turn', 'turn'),
    from: 'top',
    to,
    direction: 'down',
    limits,
  })
  const looking = (way: Looks) => sizes.steps.filter(({ looks }) => looks === way).map(({ band }) => band.name)
  const { free, stretch, sections } = sizes.growth
  const hardened = { operation: number('nitride', 'case-harden', 'induction-harden') }
  const { locator } = sizes
  const finished = locator?.face === 'shoulder' ? sizes.finishedDepth.get(locator.band) : sizes.finishedLength
  return {
    stretchedTo: depth => stretchedDepth(sections, depth),
    turned: [
      down('W1', 'bottom', sizes.softLength),
      ...sizes.steps.flatMap(({ band }, index) => {
        const depth = sizes.softDepth.get(band.name)
        return depth ? [down(`W${index + 2}`, band.name, depth)] : []
      }),
    ],
    ...(moves(free) && {
      growth: {
        kind: 'growth',
        symbol: 'g',
        ...hardened,
        up: [...(sizes.growth.topOpen ? ['top'] : []), ...looking('up')],
        down: ['bottom', ...looking('down')],
        limits: { nominal: free.nominal, lower: free.least, upper: free.most },
      },
    }),
    ...(moves(stretch) && {
      stretch: {
        kind: 'stretch',
        symbol: 'e',
        ...hardened,
        faces: [
          { face: 'bottom', depth: stretchedDepth(sections, sizes.finishedLength.nominal) },
          ...[...sizes.finishedDepth].map(([face, depth]) => ({
            face,
            depth: stretchedDepth(sections, depth.nominal),
          })),
        ],
        limits: { nominal: stretch.nominal, lower: stretch.least, upper: stretch.most },
      },
    }),
    ...(locator &&
      finished && {
        facing: {
          kind: 'cut',
          symbol: `W${sizes.steps.length + 2}`,
          operation: number('grind-bore', 'grind-top'),
          from: locator.face === 'bottom' ? 'bottom' : locator.band,
          to: 'top',
          direction: 'up',
          limits: finished,
        },
      }),
  }
}

const moves = ({ least, most }: Spread): boolean => least !== 0 || most !== 0

export const linesOf = ({ turned, growth, stretch, facing }: ChartStages): readonly ChartLine[] => [
  ...turned,
  ...[growth, stretch, facing].filter(line => line !== undefined),
]

/** Every length and depth that the drawing gives, by what of the part it is of. */
export const drawnFaces = (
  part: Part,
  { steps }: AxialSizes,
): readonly { readonly feature: string; readonly name: string; readonly size: DrawnSize; readonly path: string }[] => [
  { feature: 'length', name: 'length', size: part.length, path: '/body/length' },
  ...steps.map(({ band }) => ({ feature: band.name, name: `depth of ${band.name}`, size: band.to, path: band.path })),
]

/** The face that a length or a depth from the top goes to. */
export const faceOf = (feature: string): string => (feature === 'length' ? 'bottom' : feature)

/** The chart of a part's lengths. */
export function partChart(part: Part, sizes: AxialSizes, stages: ChartStages): PartChart {
  const chart = axialChart(linesOf(stages))
  const distances = drawnFaces(part, sizes).map(({ feature, name, size, path }) => ({
    ...chart.distance('top', faceOf(feature), name),
    drawn: { feature, nominal: size.nominal, lower: size.lower, upper: size.upper },
    path,
  }))
  return {
    dimensions: linesOf(stages).filter(line => line.kind === 'cut'),
    ...(stages.growth && { growth: stages.growth }),
    ...(stages.stretch && { stretch: stages.stretch }),
    resultants: [
      ...chart.stocks.map(({ face: _, operation: __, ...rest }) => rest),
      ...distances.map(({ path: _, ...rest }) => rest),
    ],
    findings: distances.flatMap(({ path, ...distance }) => openChain(part, distance, path)),
  }
}

function openChain(
  part: Part,
  { name, nominal, worstCase, rootSumSquare, expression, drawn }: Resultant & { readonly drawn: Limits },
  path: string,
): readonly Finding[] {
  const over = (half: number) => Math.max(nominal + half - drawn.upper, drawn.lower - (nominal - half))
  if (over(worstCase) <= 1e-9) return []
  return [
    {
      severity: over(rootSumSquare) > 1e-9 ? 'error' : 'warning',
      code: 'stock/chain-open',
      message: `${name} comes out at ${fixed(nominal, 3)} ±${fixed(worstCase, 3)} mm at the worst (±${fixed(rootSumSquare, 3)} root sum of squares, ${expression}); the drawing allows ${fixed(drawn.lower, 3)} to ${fixed(drawn.upper, 3)} mm`,
      at: placeOf(part, path),
      hint: `turn or grind the faces closer by ${fixed(over(worstCase), 3)} mm in all, or widen the drawing's limits`,
    },
  ]
}
