import { readFileSync } from 'node:fs'
import type { OrderPoint, OutsideOrder, Quantity } from '../../src/orders/order.ts'
import { readPart } from '../../src/part/read-part.ts'
import { readShop } from '../../src/part/read-shop.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import type { Plan } from '../../src/plan/plan.ts'
import type { Shop } from '../../src/shop/shop.ts'

const fileOf = (name: string): string => readFileSync(`parts/${name}`, 'utf8')

function oxmere(): Shop {
  const { shop } = readShop(fileOf('shop.yaml'), 'parts/shop.yaml')
  if (!shop) throw new Error('the works does not read')
  return shop
}

export const OXMERE: Shop = oxmere()

/** The same works without a grinder or a lap of its own: most of a part goes out. */
export const NO_GRINDERS: Shop = {
  ...OXMERE,
  machines: OXMERE.machines.filter(({ processes }) => !processes.some(one => one === 'grind' || one === 'lap')),
}

export function planOf(text: string, shop: Shop = OXMERE): Plan {
  const { part, findings } = readPart(text, 'part.yaml')
  if (!part) throw new Error(findings.map(({ message }) => message).join('; '))
  const issue = { date: '2026-11-25', fingerprint: '0123456789ab', program: 'linerwright' }
  const { plan, findings: found } = makePlan({
    part,
    shop,
    batch: { number: '2631', quantity: 12, heat: '7745A' },
    issue,
  })
  if (!plan) throw new Error(`does not plan: ${found.map(({ message }) => message).join('; ')}`)
  return plan
}

/** A demo part, with lines of its file changed where a case wants another. */
export function demo(name: string, ...changes: readonly (readonly [string, string])[]): string {
  return changes.reduce(
    (text, [from, to]) => {
      if (!text.includes(from)) throw new Error(`${name} has no "${from}"`)
      return text.replace(from, to)
    },
    fileOf(`${name}.yaml`),
  )
}

const CASE = 'process: gas nitriding'
const BUSH = `part: {number: T-9, title: Bush, revision: A, kind: sleeve}
material: {grade: 42CrMo4, hardness: 290 HV, temper: 640}
body:
  length: 40 ±0.1
  outside: {size: 50 h7, Ra: 0.8, roundness: 0.01, name: seat}
  bore: {size: 40 H7, Ra: 0.4, cylindricity: 0.01}
hardening: {process: plasma nitriding, hardness: min 500 HV, depth: min 0.15}`
const INDUCTION = [
  ['16MnCr5, hardness: 180 HV', '42CrMo4, hardness: 280 HV, temper: 640'],
  ['carburising, hardness: min 650 HV, depth: min 0.4', 'induction hardening, hardness: min 550 HV, depth: min 0.8'],
] as const

/** Every part of the demo, and parts that nobody prepared the words for. */
export const PLANS: readonly (readonly [string, Plan])[] = [
  ...['OX-098-21', 'OX-098-30', 'OX-098-31', 'OX-098-34', 'OX-105-02', 'OX-112-03', 'OX-131-07'].map(
    name => [name, planOf(demo(name))] as const,
  ),
  ['a liner that all goes out', planOf(demo('OX-098-21'), NO_GRINDERS)],
  ['a pin that all goes out', planOf(demo('OX-098-34'), NO_GRINDERS)],
  ['a liner with its flange masked', planOf(demo('OX-098-21', [CASE, `masked: [flange], ${CASE}`]))],
  ['a sleeve from a salt bath', planOf(demo('OX-131-07', [CASE, 'process: salt-bath nitriding']))],
  ['a plasma-nitrided bush', planOf(BUSH)],
  ['a pin hardened by induction', planOf(demo('OX-098-34', ...INDUCTION))],
  [
    'a chromed liner',
    planOf(demo('OX-105-02', ['process: nickel silicon carbide', 'process: hard chrome, hardness: min 900 HV'])),
  ],
]

export const ORDERS: readonly (readonly [string, OutsideOrder, Plan])[] = PLANS.flatMap(([name, plan]) =>
  plan.orders.map(order => [`${name}: ${order.title}`, order, plan] as const),
)

/** What an order says of figures, wherever it says it: sizes that come and go, and points. */
export const quantitiesOf = ({ arrives, finish, points }: OutsideOrder): readonly Quantity[] => [
  ...arrives,
  ...finish,
  ...points.flatMap(({ quantities }) => quantities),
]

export const sentencesOf = ({ points }: OutsideOrder): readonly string[] => points.flatMap(({ text }) => text)

/** The order that holds an operation of this purpose. */
export function orderFor(plan: Plan, purpose: string): OutsideOrder {
  const number = plan.operations.find(operation => operation.purpose === purpose)?.number
  const order = plan.orders.find(({ operations }) => number !== undefined && operations.includes(number))
  if (!order) throw new Error(`no order for ${purpose}`)
  return order
}

export function pointOf({ points }: OutsideOrder, title: string): OrderPoint {
  const point = points.find(one => one.title === title)
  if (!point) throw new Error(`no point ${title} among ${points.map(one => one.title).join(', ')}`)
  return point
}

/** A quantity by what it is of and in which state. */
export function quantityOf(order: OutsideOrder, label: string, state?: string): Quantity {
  const found = quantitiesOf(order).find(one => one.label === label && one.state === state)
  if (!found) throw new Error(`no ${label}, ${state ?? ''} in ${order.title}`)
  return found
}
