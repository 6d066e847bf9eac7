import type { Finding } from '../finding.ts'
import { depthThroughBoreChain } from '../handbook/stock-chain.ts'
import type { CasePlan } from '../hardening/case-plan.ts'
import type { QuenchPlan } from '../hardening/quench-plan.ts'
import { known, told, worked } from '../known.ts'
import { middleOf } from '../limits.ts'
import type { OperationSize } from '../operation-size.ts'
import { type Part, placeOf, type StockChoice } from '../part/part.ts'
import { type PlannedPlating, planPlating } from '../plating/plan-plating.ts'
import type { PlatingPlan } from '../plating/plating-plan.ts'
import { platingSizes } from '../plating/plating-sizes.ts'
import { isHardening, type Operation } from '../route/operation.ts'
import type { Shape } from '../shape.ts'
import type { Shop } from '../shop/shop.ts'
import type { Millimetre } from '../units.ts'
import { thinnestWall } from '../wall.ts'
import { type Notebook, openNotebook, type Working } from '../working.ts'
import { type AxialSizes, axialSizes, topStockAt } from './axial-sizes.ts'
import { stockThatCleansUp } from './choose-stock.ts'
import { finishChains } from './finish-chain.ts'
import { judgeStock } from './judge-stock.ts'
import { withSteps } from './ladder-steps.ts'
import { laddersOf } from './ladders.ts'
import { operationSizes, type Sized } from './operation-sizes.ts'
import { type AxialChart, type ChartStages, chartStages, partChart } from './part-chart.ts'
import { platedChain, platedEntry } from './plated-chain.ts'
import { releaseFindings, releases, withReleases } from './release.ts'
import { roughLimits } from './rough-sizes.ts'
import { type ChosenStock, growthsOf, settleStock } from './settle-stock.ts'
import { roughedShape, shapesAfter } from './shapes.ts'
import { type SolvedChain, solveChain } from './solve-chain.ts'
import type { AsMilled, Ladder, StockEntry } from './stock.ts'
import { toldOf } from './told.ts'
import { withChances } from './with-chances.ts'

export type StockPlan = {
  readonly sizes: ReadonlyMap<number, readonly OperationSize[]>
  /** The part as it leaves each operation that changes it, the saw apart. */
  readonly shapes: ReadonlyMap<number, Shape>
  /** Between roughing and finishing. */
  readonly roughed: Shape
  readonly entries: readonly StockEntry[]
  readonly ladders: readonly Ladder[]
  readonly case?: CasePlan
  /** Instead of a case, where the part is hardened through. */
  readonly quench?: QuenchPlan
  readonly plating?: PlatingPlan
  /** Only for a part with ports. */
  readonly asMilled?: AsMilled
  readonly axial: AxialChart
  /** What the chart of the lengths is made of: the edges of the ports are traced through the same cuts. */
  readonly lengths: { readonly sizes: AxialSizes; readonly stages: ChartStages }
  /** Largest rough-turned diameter and length, for the bar. */
  readonly need: { readonly diameter: Millimetre; readonly length: Millimetre }
  readonly findings: readonly Finding[]
  readonly workings: readonly Working[]
}

export type StockOptions = {
  /** Left out, what is reckoned over a batch is too: a sweep needs the margins alone. */
  readonly chances?: boolean
  /** What the planner chooses for this part, where it has been settled before. */
  readonly chosen?: ChosenStock
  /** The case is ordered as for that choice, whatever the part file fixes. */
  readonly orderStands?: boolean
}

/** Every in-between size, worked backward from the drawing, what each finishing operation then takes, and the case to order. */
export function planStock(
  part: Part,
  shop: Shop,
  operations: readonly Operation[],
  { chances = true, chosen, orderStands = false }: StockOptions = {},
): StockPlan {
  const notebook = openNotebook()
  const chains = finishChains(notebook, part, shop, operations)
  const settled = settleStock({ part, shop, chains, wall: thinnestWall(part), chosen, orderStands })
  const along = growthsOf(notebook, part, settled.growth)
  for (const chain of chains)
    for (const index of chain.finishes.keys()) stockThatCleansUp(notebook, chain, index, along.of(chain))
  const solved = settled.chains.map(({ chain, stocks }) => solveChain(notebook, chain, along.of(chain), stocks))
  const axial = axialSizes(
    part,
    shop,
    solved.find(({ chain }) => chain.kind === 'face'),
    along.axial,
  )
  const plating = platedBore({ notebook, part, shop, operations, order: settled.planned.case })
  const sized: Sized = { part, shop, chains: solved, axial, ...(plating && { plated: plating.solved }) }
  const judged = judgeStock(notebook, part, shop.habits.stockStep, { ...settled, chains: solved })
  const released = releases(notebook, part, shop, settled)
  const entries = withReleases(inRouteOrder([...judged.entries, ...(plating ? [plating.entry] : [])], solved), released)
  const stages = chartStages(operations, axial)
  const { findings: chartFindings, ...chart } = partChart(part, axial, stages)
  const shapes = shapesAfter(sized, operations)
  const asMilled = part.ports.length > 0 ? asMilledOf(sized, operations, shapes) : undefined
  const all = plating ? [...solved, plating.solved] : solved
  if (settled.planned.case) tighterDepths(notebook, solved, settled.planned.case.asked)

  return {
    sizes: operationSizes(sized, operations),
    shapes,
    roughed: roughedShape(sized),
    entries: chances ? withChances(notebook, entries, all, settled.planned.case) : entries,
    ladders: withSteps(laddersOf(sized, operations), entries, hardenedIn(operations, settled.planned.case)),
    ...(settled.planned.case && { case: settled.planned.case }),
    ...(settled.planned.quench && { quench: settled.planned.quench }),
    ...(plating && { plating: plating.plan }),
    ...(asMilled && { asMilled }),
    axial: chart,
    lengths: { sizes: axial, stages },
    need: blankNeed(sized),
    findings: [
      ...settled.planned.findings,
      ...judged.findings,
      ...releaseFindings(part, settled, released),
      ...(plating?.findings ?? []),
      ...chartFindings,
      ...unusedStock(part, all),
    ],
    // Written out only when read: who asks for the margins alone does not pay for the text.
    get workings() {
      return [...settled.planned.workings, ...notebook.workings]
    },
  }
}

/** The operation that lays the case, and the case as ordered. */
function hardenedIn(
  operations: readonly Operation[],
  order: CasePlan | undefined,
): { readonly operation: number; readonly ordered: CasePlan['ordered'] } | undefined {
  const hardening = operations.find(({ purpose }) => isHardening(purpose))
  return order && hardening && { operation: hardening.number, ordered: order.ordered }
}

type PlatedBore = PlannedPlating & {
  /** From the plated size to the drawing. */
  readonly solved: SolvedChain
  readonly entry: StockEntry
}

/** The hone of a plated bore is one more chain; the rest of the plating is its own subject. */
function platedBore({
  notebook,
  part,
  shop,
  operations,
  order,
}: {
  readonly notebook: Notebook
  readonly part: Part
  readonly shop: Shop
  readonly operations: readonly Operation[]
  readonly order: CasePlan | undefined
}): PlatedBore | undefined {
  const sizes = platingSizes(notebook, part, shop)
  const hone = operations.find(({ purpose }) => purpose === 'hone-bore')
  if (!sizes || !hone) return undefined
  const solved = platedChain(sizes, hone, toldOf(shop, 'bore', sizes.finished, sizes.finishedTolerance.value))
  const entry = platedEntry(notebook, sizes, solved)
  return { ...planPlating({ notebook, part, sizes, hone: entry, order }), solved, entry }
}

function asMilledOf(
  { chains, axial }: Sized,
  operations: readonly Operation[],
  shapes: ReadonlyMap<number, Shape>,
): AsMilled | undefined {
  const milled = operations.find(({ purpose }) => purpose === 'mill-ports')
  const shape = milled && shapes.get(milled.number)
  const bore = chains.find(({ chain }) => chain.kind === 'bore')
  if (!shape || !bore) return undefined
  const { free, stretch } = axial.growth
  const { least, nominal, most } = free
  const grows = most > 0
  return {
    boreDiameter: middleOf(bore.soft),
    shape,
    topStock: axial.topStock,
    ...((stretch.least !== 0 || stretch.most !== 0) && { topStockAt: depth => topStockAt(axial, depth) }),
    ...(grows && { wallGrowth: { least, nominal, most } }),
  }
}

function blankNeed({ chains, axial, shop }: Sized): StockPlan['need'] {
  const outside = chains.filter(({ chain }) => chain.kind === 'outside')
  return {
    diameter: Math.max(...outside.map(({ soft }) => roughLimits(soft, false, shop).upper)),
    length: roughLimits(axial.softLength, false, shop).upper,
  }
}

/** Ground and honed, the bore's chain is closer than the sum of its two cuts: shown beside the cautious figure. */
function tighterDepths(notebook: Notebook, chains: readonly SolvedChain[], asked: Millimetre): void {
  for (const { chain, soft, growth } of chains) {
    const [grind, hone] = chain.finishes
    if (chain.kind !== 'bore' || !chain.cased || !grind || !hone) continue
    notebook.use(
      depthThroughBoreChain,
      {
        ...told(worked('depth asked for, or the usual one'), { N_asked: asked }),
        ...told(worked('limits of the sizes, finished and as turned'), {
          d_final: chain.final.upper,
          d_soft: soft.lower,
        }),
        g_most: known(growth.most, 'mm', growth),
        e: grind.eccentricity,
      },
      { about: chain.surface },
    )
  }
}

const STOCK_KEYS: readonly (keyof StockChoice)[] = ['outside', 'bore', 'hone', 'preplate', 'lap', 'top']

const WORK_OF: Readonly<Record<keyof StockChoice, string>> = {
  outside: 'grinds the outside',
  bore: 'grinds the bore',
  hone: 'hones the bore',
  preplate: 'hones the bore before plating',
  lap: 'laps the outside',
  top: 'grinds the top face',
}

/** The entries of a surface stay together, in the order in which it is cut. */
const inRouteOrder = (entries: readonly StockEntry[], chains: readonly SolvedChain[]): readonly StockEntry[] =>
  chains.flatMap(({ chain }) => entries.filter(({ surface }) => surface === chain.surface))

/** Stock that the part file writes for an operation that there is not. */
function unusedStock(part: Part, chains: readonly SolvedChain[]): readonly Finding[] {
  const used = new Set(chains.flatMap(({ chain }) => chain.finishes.map(({ stockKey }) => stockKey)))
  return STOCK_KEYS.filter(key => part.stock[key] !== undefined && !used.has(key)).map(
    (key): Finding => ({
      severity: 'warning',
      code: 'stock/unused',
      message: `stock.${key} ${part.stock[key]} mm is not used: no operation ${WORK_OF[key]}`,
      at: placeOf(part, `/stock/${key}`),
      hint: 'leave it out, or ask of the surface what needs the operation',
    }),
  )
}
