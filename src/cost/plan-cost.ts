import { COST_SPREAD, NINETY_PERCENT, outsideCost, runCost, setUpCost } from '../handbook/cost.ts'
import { triangularMean, triangularVariance } from '../handbook/triangular.ts'
import { fromShop, told, worked } from '../known.ts'
import { HARDENING_PROCESSES } from '../process.ts'
import type { PriceOf } from '../shop/firm.ts'
import type { Money } from '../shop/shop.ts'
import { type Notebook, openNotebook, type Working } from '../working.ts'
import type { Cost, CostItem, CostKind, CostSource } from './cost.ts'

export type CostPlan = {
  readonly cost?: Cost
  /** Prices of the visits, for the pieces that go: by the number of the order. */
  readonly prices: ReadonlyMap<
    number,
    { readonly currency: string; readonly amount: number; readonly because: readonly string[] }
  >
  /** What has no price: nothing is costed without it. */
  readonly missing: readonly string[]
  readonly workings: readonly Working[]
}

/** What a batch costs: nothing where the works gives no price, or not all of them. */
export function planCost(source: CostSource): CostPlan {
  const { money } = source
  if (!money) return { prices: new Map(), missing: ['rates', 'bar-prices'], workings: [] }
  const notebook = openNotebook()
  const missing: string[] = []
  const entering = enteringOf(source)
  const house = houseItems({ source, money, entering, notebook, missing })
  const visits = source.orders.map(order => visitOf({ source, order, entering, notebook, missing }))
  const material = barItem(source, money, missing)
  const items = [
    ...house,
    ...(material ? [material] : []),
    ...visits.flatMap(({ item }) => (item ? [item] : [])),
    ...carriageOf(source),
  ]
  const prices = new Map(
    visits.flatMap(({ order, amount, because }) =>
      amount === undefined ? [] : [[order, { currency: money.currency, amount, because }] as const],
    ),
  )
  const { workings } = notebook
  if (missing.length > 0) return { prices, missing: [...new Set(missing)], workings: [] }
  return { cost: summed(source, money, items, entering), prices, missing, workings }
}

/** Pieces expected to come to each operation, and to be good at the end. */
function enteringOf({ operations, batch, habits }: CostSource): ReadonlyMap<number | 'end', number> {
  const entering = new Map<number | 'end', number>()
  let pieces: number = batch.start
  for (const { number, process } of operations) {
    entering.set(number, pieces)
    pieces *= habits.yields[process] ?? 1
  }
  return entering.set('end', pieces)
}

type Entering = ReturnType<typeof enteringOf>

const ROUTE = worked('pieces expected to come to the operation, by the yields of those before')
const TIMES = worked('times of the steps')

function houseItems({
  source: { operations },
  money,
  entering,
  notebook,
  missing,
}: {
  readonly source: CostSource
  readonly money: Money
  readonly entering: Entering
  readonly notebook: Notebook
  readonly missing: string[]
}): readonly CostItem[] {
  const sums = { 'set-up': 0, run: 0, gauging: 0, cutters: 0 }
  for (const { number, name, place, workCentre, process, time, steps } of operations) {
    if (place === 'outside') continue
    const rate = priceIn(money.rates, workCentre)
    if (rate === undefined) {
      missing.push(`rates: ${workCentre}`)
      continue
    }
    const about = { operation: number, about: name }
    const R = told(fromShop(`rates/${workCentre}`), { R_h: rate })
    const pieces = entering.get(number) ?? 0
    sums['set-up'] += notebook.use(setUpCost, { ...told(TIMES, { t_s: time.setup }), ...R }, about)
    const run = { ...told(ROUTE, { N_i: pieces }), ...told(TIMES, { t_1: time.each }), ...R }
    sums[process === 'inspect' ? 'gauging' : 'run'] += notebook.use(runCost, run, about)
    for (const step of steps) {
      const cutter = Object.hasOwn(money.cutters, step.tool) ? money.cutters[step.tool] : undefined
      if (cutter) sums.cutters += ((pieces * step.time) / cutter.life) * cutter.price
    }
  }
  return (['set-up', 'run', 'gauging', 'cutters'] as const)
    .filter(kind => sums[kind] > 0)
    .map(kind =>
      spread(kind, kind === 'set-up' ? 'setting up' : kind === 'run' ? 'machining and bench' : kind, sums[kind]),
    )
}

const priceIn = (prices: Readonly<Record<string, number>>, name: string): number | undefined =>
  Object.hasOwn(prices, name) ? prices[name] : undefined

const spread = (kind: CostKind, what: string, usual: number, order?: number): CostItem => ({
  what,
  kind,
  ...(order !== undefined && { order }),
  least: usual * COST_SPREAD[kind][0],
  usual,
  most: usual * COST_SPREAD[kind][1],
})

function barItem({ material, batch }: CostSource, money: Money, missing: string[]): CostItem | undefined {
  const price = priceIn(money.bars, material.grade)
  if (price === undefined) {
    missing.push(`bar-prices: ${material.grade}`)
    return undefined
  }
  return spread('material', `bar, ${material.grade}`, batch.start * material.blankMass * price)
}

/** Each operation of a visit by the price list of its firm, for the pieces expected and for those that the order names. */
function visitOf({
  source,
  order,
  entering,
  notebook,
  missing,
}: {
  readonly source: CostSource
  readonly order: CostSource['orders'][number]
  readonly entering: Entering
  readonly notebook: Notebook
  readonly missing: string[]
}): {
  readonly order: number
  readonly item?: CostItem
  readonly amount?: number
  readonly because: readonly string[]
} {
  const firm = source.firms.find(({ name }) => name === order.firm)
  const priced = source.operations
    .filter(({ number }) => order.operations.includes(number))
    .map(operation => ({
      operation,
      price: firm?.prices?.find(({ processes }) => processes.includes(operation.process)),
    }))
  const [first] = priced
  if (!first || priced.some(({ price }) => price === undefined)) {
    missing.push(`prices of ${order.firm} for ${order.title.toLowerCase()}`)
    return { order: order.number, because: [] }
  }
  const given = (price: PriceOf, pieces: number) => ({
    ...told(fromShop(`firms/${order.firm}`), {
      K_0: price.minimum,
      K_l: price.lot,
      k_1: price.each,
      k_m: price.perKg,
    }),
    ...told(ROUTE, { N_i: pieces }),
    ...told(worked('mass of a piece as it comes'), { m_1: order.mass.each }),
  })
  const total = (cost: (price: PriceOf, operation: CostSource['operations'][number]) => number) =>
    priced.reduce((sum, { price, operation }) => sum + (price ? cost(price, operation) : 0), 0)
  const usual = total((price, { number, name }) =>
    notebook.use(outsideCost, given(price, entering.get(number) ?? 0), { operation: number, about: name }),
  )
  const { process } = first.operation
  const kind =
    HARDENING_PROCESSES.has(process) || process === 'stress-relieve'
      ? 'hardening'
      : process === 'plate'
        ? 'plating'
        : 'finishing'
  return {
    order: order.number,
    item: spread(kind, `${order.title}, ${order.firm}`, usual, order.number),
    amount: total(price => {
      const { K_0, K_l, k_1, k_m, N_i, m_1 } = given(price, order.pieces)
      return Math.max(K_0.value, K_l.value + N_i.value * k_1.value + N_i.value * m_1.value * k_m.value)
    }),
    because: priced.flatMap(({ operation: { name }, price }) => (price ? [`${name}: ${termsOf(price)}`] : [])),
  }
}

/** `45 the lot, 11 each, not under 180`. */
const termsOf = ({ minimum, lot, each, perKg }: PriceOf): string =>
  [
    ...(lot > 0 ? [`${lot} the lot`] : []),
    ...(each > 0 ? [`${each} each`] : []),
    ...(perKg > 0 ? [`${perKg} a kg`] : []),
    ...(minimum > 0 ? [`not under ${minimum}`] : []),
  ].join(', ')

function carriageOf({ firms, orders }: CostSource): readonly CostItem[] {
  const charged = orders.reduce(
    (sum, { firm }) => sum + (firms.find(({ name }) => name === firm)?.carriageCharge ?? 0),
    0,
  )
  return charged > 0 ? [spread('carriage', 'carriage there and back', charged)] : []
}

/** Items that spread by themselves: the times of cutting and of gauging are misjudged by the same hand, and spread as one. */
function apart(items: readonly CostItem[]): readonly Pick<CostItem, 'least' | 'usual' | 'most'>[] {
  const isTime = ({ kind }: CostItem): boolean => kind === 'run' || kind === 'gauging'
  const times = items.filter(isTime)
  const sum = (end: 'least' | 'usual' | 'most') => times.reduce((total, item) => total + item[end], 0)
  return [
    ...items.filter(item => !isTime(item)),
    ...(times.length > 0 ? [{ least: sum('least'), usual: sum('usual'), most: sum('most') }] : []),
  ]
}

/** How many items are named as those that drive it. */
const DRIVERS = 3

function summed(
  { batch: { quantity, start } }: CostSource,
  money: Money,
  items: readonly CostItem[],
  entering: Entering,
): Cost {
  const sum = (end: 'least' | 'usual' | 'most') => items.reduce((total, item) => total + item[end], 0)
  const batch = { least: sum('least'), usual: sum('usual'), most: sum('most') }
  const ends = apart(items).map(({ least, usual, most }) => ({ a: least, c: usual, b: most }))
  const mean = ends.reduce((total, one) => total + triangularMean.value(one), 0)
  const sd = Math.sqrt(ends.reduce((total, one) => total + triangularVariance.value(one), 0))
  const good = entering.get('end') ?? start
  return {
    currency: money.currency,
    each: { least: batch.least / quantity, usual: batch.usual / quantity, most: batch.most / quantity },
    likely: { least: (mean - NINETY_PERCENT * sd) / quantity, most: (mean + NINETY_PERCENT * sd) / quantity },
    batch,
    eachExpected: batch.usual / good,
    scrap: batch.usual * (1 - good / start),
    items,
    drivenBy: items
      .toSorted((a, b) => b.most - b.least - (a.most - a.least))
      .slice(0, DRIVERS)
      .map(({ what }) => what),
  }
}
