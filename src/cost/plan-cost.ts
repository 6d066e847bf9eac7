import { barCost, COST_SPREAD, outsideCost, runCost, setUpCost } from '../handbook/cost.ts'
import { fromShop, told, worked } from '../known.ts'
import { HARDENING_PROCESSES } from '../process.ts'
import type { PriceOf } from '../shop/firm.ts'
import type { Money } from '../shop/shop.ts'
import { type Notebook, openNotebook, type Working } from '../working.ts'
import type { Cost, CostItem, CostKind, CostSource } from './cost.ts'
import { ROUTE, TIMES } from './cost-origins.ts'
import { cuttersOf } from './cutters-worn.ts'
import { type Entering, summed } from './summed-cost.ts'

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
  const material = barItem({ source, money, notebook, missing })
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
function enteringOf({ operations, batch, habits }: CostSource): Entering {
  const entering = new Map<number | 'end', number>()
  let pieces: number = batch.start
  for (const { number, process } of operations) {
    entering.set(number, pieces)
    pieces *= habits.yields[process] ?? 1
  }
  return entering.set('end', pieces)
}

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
    sums.cutters += cuttersOf({ steps, money, pieces, notebook, operation: number })
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

function barItem({
  source: { material, batch },
  money,
  notebook,
  missing,
}: {
  readonly source: CostSource
  readonly money: Money
  readonly notebook: Notebook
  readonly missing: string[]
}): CostItem | undefined {
  const price = priceIn(money.bars, material.grade)
  if (price === undefined) {
    missing.push(`bar-prices: ${material.grade}`)
    return undefined
  }
  const usual = notebook.use(
    barCost,
    {
      ...told(worked('pieces to start'), { N: batch.start }),
      ...told(worked('mass of a blank'), { m: material.blankMass }),
      ...told(fromShop(`bar-prices/${material.grade}`), { P: price }),
    },
    { about: `bar, ${material.grade}` },
  )
  return spread('material', `bar, ${material.grade}`, usual)
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
