import type { CasePlan } from '../hardening/case-plan.ts'
import type { StockEntry } from '../stock/stock.ts'
import type { Quantity, Standing } from './order.ts'
import type { OrderSource } from './order-source.ts'
import { hardness, length } from './quantity.ts'

export const AS_HARDENED = 'as hardened'
const FINISHED = 'finished'

export const isNitrided = ({ order }: CasePlan): boolean => order?.term === 'NHD'
const termOf = ({ order }: CasePlan): string => order?.term ?? 'depth'

/** The depth ordered: as treated, before any finishing. */
export const depthOrdered = (planned: CasePlan, standing: Standing): Quantity =>
  length(standing, `case depth ${termOf(planned)}`, planned.ordered, {
    state: AS_HARDENED,
    places: 2,
    written: standing === 'asked' ? 'plus' : 'range',
  })

/** Of the case, what must stay where most comes off. */
export const depthLeft = (planned: CasePlan, standing: Standing): Quantity =>
  length(standing, `case depth ${termOf(planned)}`, { least: planned.asked }, { state: FINISHED, places: 2 })

/** What is held to on the coupon; nothing where the drawing asks no hardness. */
export function surfaceAsked({ order }: CasePlan): Quantity | undefined {
  if (order?.surfaceLeast === undefined) return undefined
  return hardness(order.surfaceLoad)('asked', 'surface hardness', { least: order.surfaceLeast }, { state: AS_HARDENED })
}

/** What the plan reckons with. */
export const surfaceExpected = ({ surfaceHardness, order }: CasePlan, standing: Standing = 'expected'): Quantity =>
  hardness(order?.surfaceLoad ?? 'HV1')(
    standing,
    'surface hardness',
    { value: surfaceHardness },
    { state: AS_HARDENED },
  )

/** Read with the load that the case left bears. */
export function surfaceLeft({ order, testLoad }: CasePlan, standing: Standing): Quantity | undefined {
  if (order?.hardness === undefined) return undefined
  return hardness(testLoad)(standing, 'surface hardness', { least: order.hardness }, { state: FINISHED })
}

/** The first cut after hardening on each surface: what the hardener's distortion eats into. */
export const firstCuts = ({ stock }: Pick<OrderSource, 'stock'>): readonly StockEntry[] =>
  stock.filter((entry, index) => stock.findIndex(({ surface }) => surface === entry.surface) === index)
