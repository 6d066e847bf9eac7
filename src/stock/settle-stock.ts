import { type DepthBounds, depthAtFirst } from '../hardening/case-depth.ts'
import type { Growth } from '../hardening/growth.ts'
import { growthFor, type PlannedCase, planCase } from '../hardening/plan-case.ts'
import { type Removal, worstOf } from '../hardening/removal.ts'
import { usualDepthOf } from '../hardening/usual-depth.ts'
import type { KnownSpread } from '../known.ts'
import type { Part } from '../part/part.ts'
import { takesCase } from '../part/takes-case.ts'
import type { Shop } from '../shop/shop.ts'
import type { Millimetre } from '../units.ts'
import { type Notebook, SCRATCH } from '../working.ts'
import { type AxialGrowth, axialGrowth, growthAtEnds, NO_AXIAL_GROWTH } from './axial-growth.ts'
import { leastStocks, stepOf } from './choose-stock.ts'
import type { FinishChain } from './finish-chain.ts'
import { NO_GROWTH, type SolvedChain, type Stocks, solveChain } from './solve-chain.ts'
import { type Cut, cutsOf, removalOf } from './stock-entries.ts'

export type SettledStock = {
  readonly chains: readonly SolvedChain[]
  readonly growth: Growth
  readonly planned: PlannedCase
  /** Depth that every margin is judged on: the case as ordered, or the deepest that may be where more is wanted. */
  readonly orderedLeast: Millimetre
  readonly wall: Millimetre
}

/** Above this a nitrided surface burns and cracks in grinding, on diameter. Source: common practice, no source. */
export const HEAVY_STOCK = 0.25
const ROUNDS = 20
/** Clean-up to spare at the worst place beyond which more stock only costs wheel and furnace time: common practice, no source. */
const SPARE = 0.01

/**
 * Stock, growth and case order hang together: more stock wants a deeper case, a deeper case grows more, and growth moves
 * the stock. The order is rounded up to steps, so a few rounds settle it. Then what the order has to spare is shared
 * between clean-up and case. A stock that the part file fixes is laid over that, and the case ordered for what it takes.
 */
export function settleStock({
  part,
  shop,
  chains,
  wall,
  chosen = chooseStock(part, shop, chains, wall),
  orderStands = false,
}: {
  readonly part: Part
  readonly shop: Shop
  readonly chains: readonly FinishChain[]
  readonly wall: Millimetre
  readonly chosen?: ChosenStock | undefined
  /** The planner's own order is kept, so that margins can be read against the stock. */
  readonly orderStands?: boolean
}): SettledStock {
  if (!chains.some(chain => chain.finishes.some(({ fixed }) => fixed))) return chosen
  // Ordered for what is taken, no deeper than is usual: else any stock would be met by a deeper case, and none called deep.
  const usual = usualDepthOf(part)
  const between = orderStands
    ? { least: chosen.orderedLeast, most: chosen.orderedLeast }
    : usual && { least: 0, most: Math.max(chosen.orderedLeast, usual.most) }
  let { growth } = chosen
  let settled = chosen
  for (let round = 0; round < ROUNDS; round++) {
    const along = growthsOf(SCRATCH, part, growth)
    const stocks = chains.map((chain, at) => {
      const least = leastStocks(SCRATCH, chain, along.of(chain), shop.habits.stockStep)
      return chain.finishes.map(
        ({ fixed }, index) => fixed?.value ?? Math.max(chosen.stocks[at]?.[index] ?? 0, least[index] ?? 0),
      )
    })
    settled = evaluate({ part, shop, chains, growth, stocks, wall, between })
    if (sameGrowth(growth, settled.growth)) break
    growth = settled.growth
  }
  return settled
}

/** What the planner chooses when the part file leaves every stock open. */
export function chooseStock(part: Part, shop: Shop, chains: readonly FinishChain[], wall: Millimetre): ChosenStock {
  const step = shop.habits.stockStep
  let growth: Growth = growthFor(part, shop, depthAtFirst(part))
  let settled: ChosenStock | undefined
  for (let round = 0; round < ROUNDS; round++) {
    const along = growthsOf(SCRATCH, part, growth)
    const stocks = chains.map(chain => leastStocks(SCRATCH, chain, along.of(chain), step))
    const next = evaluate({ part, shop, chains, growth, stocks, wall })
    const same = settled !== undefined && sameGrowth(growth, next.growth)
    settled = next
    growth = next.growth
    if (same) break
  }
  const least = settled ?? evaluate({ part, shop, chains, growth, stocks: chains.map(() => []), wall })
  return balanced({ part, shop, chains, least, wall })
}

export type ChosenStock = SettledStock & {
  readonly cuts: readonly (readonly Cut[])[]
  readonly stocks: readonly Stocks[]
}

function evaluate({
  part,
  shop,
  chains,
  growth,
  stocks,
  wall,
  between,
}: {
  readonly part: Part
  readonly shop: Shop
  readonly chains: readonly FinishChain[]
  readonly growth: Growth
  readonly stocks: readonly Stocks[]
  readonly wall: Millimetre
  readonly between?: DepthBounds | undefined
}): ChosenStock {
  const along = growthsOf(SCRATCH, part, growth)
  const solved = chains.map((chain, index) => solveChain(SCRATCH, chain, along.of(chain), stocks[index] ?? []))
  const cuts = solved.map(chain => cutsOf(SCRATCH, chain))
  const removal = removals(chains, cuts)
  const planned = planCase({ part, shop, removal, wall, between })
  const wanted = (worstOf(removal)?.most ?? 0) + (part.hardening?.depth?.least ?? 0)
  const orderedLeast = Math.min(planned.limit?.least ?? wanted, planned.case?.ordered.least ?? wanted)
  return {
    chains: solved,
    growth: planned.case?.growth ?? growthFor(part, shop, orderedLeast),
    planned,
    orderedLeast,
    wall,
    cuts,
    stocks,
  }
}

/** What each surface with a case loses; surfaces without one do not bear on the order. */
const removals = (chains: readonly FinishChain[], cuts: readonly (readonly Cut[])[]): readonly Removal[] =>
  chains.flatMap((chain, index) =>
    chain.cased && chain.finishes.length > 0
      ? [
          {
            surface: chain.surface,
            ...removalOf(cuts[index] ?? []),
            ...(chain.kind === 'face' && { face: true as const }),
          },
        ]
      : [],
  )

const sameStocks = (a: readonly Stocks[], b: readonly Stocks[]): boolean =>
  a.every((stocks, at) => stocks.every((stock, index) => stock === b[at]?.[index]))

const sameGrowth = (a: Growth, b: Growth): boolean =>
  (['outside', 'bore'] as const).every(side =>
    (['least', 'nominal', 'most'] as const).every(end => Math.abs(a[side][end] - b[side][end]) < 1e-9),
  )

/**
 * Raises every stock by whole steps as long as that betters the smaller of its two margins, up to a hundredth to spare,
 * without a deeper order and without a stock that burns.
 */
function balanced({
  part,
  shop,
  chains,
  least,
  wall,
}: {
  readonly part: Part
  readonly shop: Shop
  readonly chains: readonly FinishChain[]
  readonly least: ChosenStock
  readonly wall: Millimetre
}): ChosenStock {
  const { planned, orderedLeast } = least
  const { case: order } = planned
  if (!order) return least
  const { asked } = order
  const deepest = worstOf(removals(chains, least.cuts))?.most ?? 0
  const raised = (room: (chain: FinishChain, cuts: readonly Cut[]) => Millimetre): readonly Stocks[] =>
    chains.map((chain, index) => {
      const stocks = least.stocks[index] ?? []
      const cuts = least.cuts[index] ?? []
      const first = cuts[0]
      if (!chain.cased || !first) return stocks
      const step = stepOf(chain, shop.habits.stockStep)
      const spare = orderedLeast - removalOf(cuts).most - asked - first.cleanUp
      const steps = Math.min(
        spare / step,
        (2 * room(chain, cuts)) / step,
        (HEAVY_STOCK - first.onDiameter.nominal) / step,
        (2 * (SPARE - first.cleanUp)) / step,
      )
      const by = Math.max(0, Math.floor(steps + 1e-6)) * step
      return stocks.map((stock, at) => (at === 0 ? Number((stock + by).toFixed(6)) : stock))
    })
  // First all the room that the order has; where that would order deeper, only up to what is taken most already.
  const rooms = [
    (_: FinishChain, cuts: readonly Cut[]) => orderedLeast - asked - removalOf(cuts).most,
    (_: FinishChain, cuts: readonly Cut[]) => deepest - removalOf(cuts).most,
  ]
  for (const room of rooms) {
    const stocks = raised(room)
    if (sameStocks(stocks, least.stocks)) return least
    const tried = evaluate({ part, shop, chains, growth: least.growth, stocks, wall })
    if (tried.planned.case?.ordered.least === order.ordered.least) return tried
  }
  return least
}

/** Growth of the part as its surfaces meet it. */
export type Growths = {
  /** Per side; of a face, at each end of the length between it and the face that locates it. */
  readonly of: (chain: Pick<FinishChain, 'kind' | 'surface' | 'final'>) => KnownSpread
  readonly axial: AxialGrowth
}

export function growthsOf(notebook: Notebook, part: Part, growth: Growth): Growths {
  const axial = part.hardening ? axialGrowth(growth, takesCase(part, 'face', 'top')) : NO_AXIAL_GROWTH
  const faces = new Map<Millimetre, KnownSpread>()
  const face = (length: Millimetre): KnownSpread => {
    const found = faces.get(length) ?? growthAtEnds(notebook, axial, length)
    faces.set(length, found)
    return found
  }
  return {
    axial,
    of: ({ kind, surface, final }) =>
      kind === 'face'
        ? face(final.nominal)
        : (growth.bands.find(band => band.side === kind && band.surface === surface)?.growth ?? NO_GROWTH),
  }
}
