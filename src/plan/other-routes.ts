import type { Finding } from '../finding.ts'
import { hasErrors } from '../finding.ts'
import type { Part } from '../part/part.ts'
import { OPEN_TO_CHOICE } from '../route/needs.ts'
import type { Purpose } from '../route/operation.ts'
import { otherOrders } from '../route/other-orders.ts'
import { planRoute, type Route } from '../route/plan-route.ts'
import { makePlan, type Planned, type PlanRequest } from './make-plan.ts'
import type { Plan } from './plan.ts'

/** A plan beside the one that the trade goes by, and what it differs in. */
export type OtherRoute = {
  readonly plan: Plan
  /** The rule that it gives up; nothing where every rule is kept and only the order differs. */
  readonly givesUp?: string
  readonly figures: RouteFigures
}

/** What routes are held against each other by. */
export type RouteFigures = {
  readonly operations: number
  /** Times that a piece is set down, gripped, clamped or laid in. */
  readonly loads: number
  /** Visits to firms, and the days of all of them one after the other. */
  readonly visits: number
  readonly days: number
  /** In the house, for one piece and for setting all machines once, minutes. */
  readonly each: number
  readonly settingUp: number
  readonly errors: readonly Finding[]
}

/**
 * The next best routes, each planned whole: other orders that every rule allows, and what giving up one rule that asks for an
 * operation would make. Those that plan without an error come first, then those that keep every rule, then fewer visits, then
 * less time.
 */
export function planOtherRoutes(request: PlanRequest, most: number): readonly OtherRoute[] {
  const { part, shop } = request
  const own = planRoute(part, shop)
  const known = new Set([purposesOf(own)])
  const another = (route: Route): boolean => {
    const key = purposesOf(route)
    return route.operations.length > 0 && !known.has(key) && Boolean(known.add(key))
  }
  const ordered = otherOrders(own.operations).flatMap(order =>
    another(planRoute(part, shop, order)) ? routeOf(makePlan({ ...request, order })) : [],
  )
  const given = OPEN_TO_CHOICE.flatMap(rule => {
    const without = waiving(part, rule)
    return another(planRoute(without, shop)) ? routeOf(makePlan({ ...request, part: without }), rule) : []
  })
  return [...ordered, ...given].toSorted(better).slice(0, most)
}

const purposesOf = ({ operations }: Route): string => operations.map(({ purpose }): Purpose => purpose).join(' ')

const waiving = (part: Part, rule: string): Part => ({
  ...part,
  waive: [...part.waive, { rule, because: 'looked at beside the plan', path: '' }],
})

const routeOf = ({ plan }: Planned, givesUp?: string): readonly OtherRoute[] =>
  plan ? [{ plan, figures: routeFigures(plan), ...(givesUp !== undefined && { givesUp }) }] : []

export function routeFigures({ operations, orders, findings }: Plan): RouteFigures {
  const house = operations.filter(({ place }) => place === 'house')
  const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)
  return {
    operations: operations.length,
    loads: sum(operations.map(({ chuckings }) => Math.max(1, chuckings?.length ?? 1))),
    visits: orders.length,
    days: sum(orders.map(({ leadTime }) => leadTime)),
    each: sum(house.map(({ time }) => time.each)),
    settingUp: sum(house.map(({ time }) => time.setup)),
    errors: findings.filter(({ severity }) => severity === 'error'),
  }
}

function better(a: OtherRoute, b: OtherRoute): number {
  const by = (one: OtherRoute): readonly number[] => [
    hasErrors(one.figures.errors) ? 1 : 0,
    one.givesUp === undefined ? 0 : 1,
    one.figures.visits,
    one.figures.each,
  ]
  const [left, right] = [by(a), by(b)]
  const differs = left.findIndex((value, index) => value !== right[index])
  return (left[differs] ?? 0) - (right[differs] ?? 0)
}
