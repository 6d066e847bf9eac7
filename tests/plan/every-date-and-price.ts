import type { Plan } from '../../src/plan/plan.ts'
import type { EveryField } from './every-field-of.ts'

type Made = Required<Pick<Plan, 'cost' | 'unpriced' | 'calendar' | 'delivery'>>

/** What a batch costs and when it is done, every field filled. */
export const EVERY_DATE_AND_PRICE: EveryField<Made> = {
  cost: {
    currency: 'crowns',
    each: { least: 151, usual: 172, most: 222 },
    likely: { least: 167, most: 197 },
    batch: { least: 1813, usual: 2067, most: 2663 },
    eachExpected: 137,
    scrap: 120,
    items: [{ what: 'Nitride, Quillfen Hardening', kind: 'hardening', order: 2, least: 180, usual: 180, most: 216 }],
    drivenBy: ['machining and bench'],
  },
  unpriced: ['rates: lathe'],
  calendar: [{ operation: 110, from: '2026-12-07', to: '2026-12-21' }],
  delivery: {
    begins: '2026-12-07',
    days: { least: 23, usual: 30, most: 35 },
    ends: { least: '2027-01-05', usual: '2027-01-14', most: '2027-01-21' },
    promise: { date: '2027-01-19', days: 33, chance: 0.97 },
    visits: [
      {
        order: 2,
        firm: 'Quillfen Hardening',
        sent: '2026-12-07',
        received: '2026-12-07',
        ready: '2026-12-18',
        back: '2026-12-21',
      },
    ],
    longestWait: {
      order: 2,
      firm: 'Quillfen Hardening',
      from: '2026-12-07',
      to: '2026-12-21',
      days: 15,
      shorter: { by: 'agreeing a load for the day after they come', saves: 2 },
    },
  },
}
