import type { Batch, MaterialNeed } from '../batch/batch.ts'
import type { OperationTime, Step } from '../cutting/step.ts'
import type { OutsideOrder } from '../orders/order.ts'
import type { Operation } from '../route/operation.ts'
import type { Shop } from '../shop/shop.ts'

/** What the cost is reckoned from. */
export type CostSource = Pick<Shop, 'firms' | 'habits' | 'money' | 'set'> & {
  readonly operations: readonly (Pick<Operation, 'number' | 'name' | 'process' | 'place' | 'workCentre'> & {
    readonly time: OperationTime
    readonly steps: readonly Pick<Step, 'tool' | 'time' | 'wear'>[]
  })[]
  readonly orders: readonly Pick<OutsideOrder, 'number' | 'title' | 'operations' | 'firm' | 'mass' | 'pieces'>[]
  readonly batch: Pick<Batch, 'quantity' | 'start'>
  readonly material: Pick<MaterialNeed, 'grade' | 'blankMass'>
}

export type CostKind =
  | 'set-up'
  | 'run'
  | 'gauging'
  | 'cutters'
  | 'material'
  | 'hardening'
  | 'plating'
  | 'finishing'
  | 'carriage'

export type CostItem = {
  readonly what: string
  readonly kind: CostKind
  /** Of a visit. */
  readonly order?: number
  readonly least: number
  readonly usual: number
  readonly most: number
}

/** In the money of the works, for the whole batch, but for `each`. Overhead outside the rates, design, a first fixture and profit are not in it. */
export type Cost = {
  readonly currency: string
  /** A good piece wanted. */
  readonly each: { readonly least: number; readonly usual: number; readonly most: number }
  /** Nine times in ten it lies between: items that spread by themselves. */
  readonly likely: { readonly least: number; readonly most: number }
  readonly batch: { readonly least: number; readonly usual: number; readonly most: number }
  /** A good piece of all that are expected to be good. */
  readonly eachExpected: number
  /** What goes into pieces that are lost on the way, part of the whole. */
  readonly scrap: number
  readonly items: readonly CostItem[]
  /** The items that spread widest, widest first. */
  readonly drivenBy: readonly string[]
}
