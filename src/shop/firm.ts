import type { Process } from '../process.ts'
import type { Day } from '../units.ts'
import type { Weekday, WorkingDays } from './working-days.ts'

/** Where to write to and whom to ring. What is not known is a blank on paper. */
export type Contact = {
  readonly address?: string
  readonly telephone?: string
  readonly email?: string
  readonly person?: string
}

/** What a firm asks, in the money of the shop file. */
export type Price = {
  /** The least that a lot costs. */
  readonly minimum: number
  /** For the lot, whatever is in it. */
  readonly lot: number
  readonly each: number
  readonly perKg: number
}

export type PriceOf = Price & { readonly processes: readonly Process[] }

export type Firm = {
  readonly name: string
  readonly processes: readonly Process[]
  /** What it usually takes; the ends where the works has said them. */
  readonly leadTime: Day
  readonly leadTimeLeast?: Day
  readonly leadTimeMost?: Day
  /** Whose days they are. Left out, the firm's own working days. */
  readonly counts?: 'working days' | 'calendar days'
  readonly contact?: Contact
  /** The firm's own week and holidays. Left out, Monday to Friday. */
  readonly working?: WorkingDays
  /** Working days of ours on the road, each way. Left out, 1. */
  readonly carriage?: Day
  /** Days on which it collects and brings. Left out, we bring and collect on any day. */
  readonly rounds?: readonly Weekday[]
  /** Days on which it starts a load. Left out, any of its working days. */
  readonly loads?: readonly Weekday[]
  /** For there and back. */
  readonly carriageCharge?: number
  /** The first that has the process. */
  readonly prices?: readonly PriceOf[]
}
