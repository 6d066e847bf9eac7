import { describe, expect, it } from 'vitest'
import type { CostSource } from '../../src/cost/cost.ts'
import { planCost } from '../../src/cost/plan-cost.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Money } from '../../src/shop/shop.ts'
import { demo, OXMERE, planOf } from '../orders/planned-orders.ts'
import { demoPlan } from '../sheets/demo-packet.ts'

type Operation = CostSource['operations'][number]

const inHouse = (
  number: number,
  [process, workCentre]: readonly [Operation['process'], string],
  [setup, each]: readonly [number, number],
): Operation => ({
  number,
  name: process,
  process,
  place: 'house',
  workCentre,
  time: { setup, each, batch: setup + 16 * each },
  // What wears comes to 85 for 16 pieces.
  steps: process === 'mill' ? [{ tool: 'end mill', time: 10 }] : [],
})
const outside = (number: number, process: Operation['process'], workCentre: string): Operation => ({
  ...inHouse(number, [process, workCentre], [0, 0]),
  place: 'outside',
})

const NO_MINIMUM = { minimum: 0, lot: 0, each: 0, perKg: 0 }

/** 12 wanted, 16 started, reckoned by hand: set-up/each min, rate, yield. */
const MONEY: Money = {
  currency: '',
  rates: { lathe: 62, mill: 70, bench: 45, 'inspection bench': 48 },
  bars: { steel: 2.6 },
  cutters: { 'end mill': { price: 85 / 15.84, life: 10 } },
}

const WORKED: CostSource = {
  operations: [
    inHouse(10, ['turn', 'lathe'], [45, 14]),
    inHouse(20, ['mill', 'mill'], [60, 38]),
    inHouse(30, ['deburr', 'bench'], [5, 6]),
    outside(40, 'nitride', 'hardener'),
    outside(50, 'grind', 'grinder'),
    inHouse(60, ['inspect', 'inspection bench'], [15, 9]),
  ],
  orders: [
    { number: 1, title: 'Nitride', operations: [40], firm: 'hardener', mass: { each: 0.36, all: 5.76 }, pieces: 16 },
    { number: 2, title: 'Grind', operations: [50], firm: 'grinder', mass: { each: 0.36, all: 5.76 }, pieces: 16 },
  ],
  firms: [
    {
      name: 'hardener',
      processes: ['nitride'],
      leadTime: 10,
      carriageCharge: 20,
      prices: [{ processes: ['nitride'], ...NO_MINIMUM, minimum: 180, perKg: 6.5 }],
    },
    {
      name: 'grinder',
      processes: ['grind'],
      leadTime: 8,
      carriageCharge: 20,
      prices: [{ processes: ['grind'], ...NO_MINIMUM, lot: 90, each: 22 }],
    },
  ],
  habits: { ...BUILT_IN_SHOP.habits, yields: { turn: 0.99, mill: 0.97, nitride: 0.98 } },
  money: MONEY,
  set: new Set(),
  batch: { quantity: 12, start: 16 },
  material: { grade: 'steel', blankMass: 2.33 },
}

describe('a batch of 12 liners reckoned by hand', () => {
  const { cost, prices } = planCost(WORKED)
  const usual = (...kinds: readonly string[]) =>
    cost?.items.filter(({ kind }) => kinds.includes(kind)).reduce((sum, item) => sum + item.usual, 0)

  it('costs 2066.71, 172.23 a good piece', () => {
    expect(usual('set-up')).toBeCloseTo(132.25, 2)
    expect(usual('run', 'gauging')).toBeCloseTo(1111.26, 2)
    expect(usual('hardening')).toBe(180)
    expect(usual('finishing')).toBeCloseTo(421.27, 2)
    expect(usual('material')).toBeCloseTo(96.93, 2)
    expect(cost?.batch.usual).toBeCloseTo(2066.71, 2)
    expect(cost?.each.usual).toBeCloseTo(172.23, 2)
    expect(cost?.eachExpected).toBeCloseTo(137.25, 2)
  })

  it('costs 151.14 at least and 221.92 at most, likely 166.7 to 196.8', () => {
    expect(cost?.each.least).toBeCloseTo(151.14, 2)
    expect(cost?.each.most).toBeCloseTo(221.92, 2)
    const { least = 0, most = 0 } = cost?.likely ?? {}
    expect(least).toBeCloseTo(166.7, 1)
    expect(most).toBeCloseTo(196.8, 1)
    // Mean and standard deviation, worked apart from this program.
    expect((least + most) / 2).toBeCloseTo(181.76, 2)
    expect((most - least) / 2 / 1.645).toBeCloseTo(9.15, 2)
  })

  it.each([
    [6, 9, 226.0],
    [12, 16, 172.23],
    [24, 30, 145.34],
    [48, 56, 127.66],
  ])(
    'for %i wanted and %i started a good piece costs %f (reckoned by hand, the tools by the pieces started)',
    (quantity, start, each) => {
      const of = (one: Operation): Operation => ({
        ...one,
        time: { ...one.time, batch: one.time.setup + start * one.time.each },
      })
      const orders = WORKED.orders.map(order => ({ ...order, mass: { each: 0.36, all: 0.36 * start }, pieces: start }))
      const { cost } = planCost({
        ...WORKED,
        operations: WORKED.operations.map(of),
        orders,
        batch: { quantity, start },
      })
      expect(cost?.each.usual).toBeCloseTo(each, 2)
    },
  )

  it('names what spreads widest first', () => {
    expect(cost?.drivenBy[0]).toBe('machining and bench')
  })

  it('has on the orders the price of the pieces that go', () => {
    // 5.76 kg at 6.50 are 37.44, under the minimum; 90 and 16 at 22.
    expect(prices.get(1)?.amount).toBe(180)
    expect(prices.get(2)?.amount).toBe(442)
    expect(prices.get(1)?.because).toEqual(['nitride: 6.5 a kg, not under 180'])
  })
})

describe('the cutters of the demo liner', () => {
  const priced = (life?: number) => {
    const tool = { name: 'end mill 3', life }
    const { money } = OXMERE
    if (!money) throw new Error('no prices')
    const cutters = Object.fromEntries(
      Object.entries(money.cutters).map(([name, { price }]) => [
        name,
        { price, ...(name === tool.name && life !== undefined && { life }) },
      ]),
    )
    return planOf(demo('OX-098-21'), { ...OXMERE, money: { ...money, cutters } })
  }
  const milled = ({ operations }: ReturnType<typeof priced>) =>
    operations.find(({ purpose }) => purpose === 'mill-ports')

  it('cost what the pieces wear out of those that the packet has at hand, a quarter over', () => {
    const plan = priced()
    const steps = milled(plan)?.steps ?? []
    const worn = steps.filter(({ wear }) => wear !== undefined)
    expect(worn.length).toBeGreaterThan(2)
    for (const { wear = 0, wornOut } of worn)
      expect(wornOut).toBe(Math.max(1, Math.ceil(1.25 * plan.batch.start * wear)))
    // What is milled with, by hand: pieces that come to the mill, by what each wears, by the price. Prices of the shop file.
    const price = (tool: string): number =>
      /1\.5/.test(tool) ? 22 : /2(?!\.)/.test(tool) ? 19 : /3/.test(tool) ? 17 : 18
    const pieces = plan.batch.start * 0.99 ** 2
    const mills = worn.reduce((sum, { tool, wear = 0 }) => sum + pieces * wear * price(tool), 0)
    const said = plan.workings
      .filter(({ symbol, about }) => symbol === 'K_c' && about?.startsWith('end mill'))
      .reduce((sum, { value }) => sum + value, 0)
    expect(said / mills).toBeCloseTo(1, 2)
    const all = plan.workings.filter(({ symbol }) => symbol === 'K_c').reduce((sum, { value }) => sum + value, 0)
    expect(plan.cost?.items.find(({ kind }) => kind === 'cutters')?.usual).toBeCloseTo(all, 6)
  })

  it('last the minutes that the works says, on the bench and in the cost', () => {
    const plan = priced(7)
    const own = (milled(plan)?.steps ?? []).filter(({ tool }) => tool === 'end mill 3')
    const minutes = own.reduce((sum, { time }) => sum + time, 0)
    const first = own.find(({ wear }) => wear !== undefined)
    expect(first?.wear).toBeCloseTo(minutes / 7, 9)
    expect(first?.wornOut).toBe(Math.ceil((1.25 * plan.batch.start * minutes) / 7))
    expect(first?.remarks.join()).toContain('at 7 min each')
  })
})

describe('a price that is missing', () => {
  it.each([
    ['a rate', { ...WORKED, money: { ...MONEY, rates: {} } }, 'rates: lathe'],
    ['a bar', { ...WORKED, money: { ...MONEY, bars: {} } }, 'bar-prices: steel'],
    ['a price list', { ...WORKED, firms: [] }, 'prices of hardener for nitride'],
  ])('leaves all of it without a cost: %s', (_, source, missing) => {
    const planned = planCost(source)
    expect(planned.cost).toBeUndefined()
    expect(planned.missing).toContain(missing)
  })
})

describe('the demo works', () => {
  it.each(['OX-098-21', 'OX-098-34', 'OX-105-02', 'OX-131-07'])('has a price for all of %s', number => {
    const { cost, unpriced } = demoPlan(number)
    expect(unpriced).toBeUndefined()
    expect(cost?.items.every(({ least, usual, most }) => least <= usual && usual <= most)).toBe(true)
    expect(cost?.scrap).toBeLessThan(cost?.batch.usual ?? 0)
  })
})
