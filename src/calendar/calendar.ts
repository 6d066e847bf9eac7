import type { OperationTime } from '../cutting/step.ts'
import type { OutsideOrder } from '../orders/order.ts'
import type { Operation } from '../route/operation.ts'
import type { Shop } from '../shop/shop.ts'

/** What the dates are reckoned from. */
export type CalendarSource = Pick<Shop, 'working' | 'hours' | 'machines' | 'firms'> & {
  readonly operations: readonly (Pick<Operation, 'number' | 'name' | 'workCentre'> & { readonly time: OperationTime })[]
  readonly orders: readonly Pick<OutsideOrder, 'number' | 'operations' | 'firm' | 'leadTime'>[]
  /** The day that the first operation is begun on, or the next working day, YYYY-MM-DD. */
  readonly begins: string
}

/** Of an operation: the days on which it is begun and done, both worked on. YYYY-MM-DD. */
export type CalendarEntry = { readonly operation: number; readonly from: string; readonly to: string }

export type VisitDates = {
  readonly order: number
  readonly firm: string
  /** To leave the works. */
  readonly sent: string
  readonly received: string
  readonly ready: string
  /** To be back; not back by then, ring. */
  readonly back: string
}

/** What the entries do not say: when all of it is done, at what chance, and what waits longest. */
export type Delivery = {
  readonly begins: string
  /** Working days of the works. */
  readonly days: { readonly least: number; readonly usual: number; readonly most: number }
  readonly ends: { readonly least: string; readonly usual: string; readonly most: string }
  /** The first day that holds with the chance wanted. */
  readonly promise: { readonly date: string; readonly days: number; readonly chance: number }
  readonly visits: readonly VisitDates[]
  readonly longestWait?: {
    readonly order: number
    readonly firm: string
    readonly from: string
    readonly to: string
    /** Days of the calendar, both ends counted. */
    readonly days: number
    /** What would shorten it most, with the days of the calendar that it saves at the end. */
    readonly shorter?: { readonly by: string; readonly saves: number }
  }
}
