import type { Firm, Price, PriceOf } from '../shop/firm.ts'
import { present } from './open-document.ts'
import { readContact, readWorking, weekdaysOf } from './read-contact.ts'
import { noneTwice, processesOf } from './read-shop-lists.ts'
import type { View } from './view.ts'

const DAYS = { from: 0, upTo: 1000 }
/** Where only the ends are said, the usual lies a third of the way up. Common practice, no source. */
const USUAL = 1 / 3
const RANGE = /^(\d+)\s*(?:to|-|–)\s*(\d+)(?:\s*(?:working\s+)?(?:d|days))?$/
const CALENDAR = /^(\d+)(?:\s*(?:to|-|–)\s*(\d+))?\s+calendar days?$/

export function readFirms(root: View): readonly Firm[] {
  const firms = root.each('firms').flatMap(view => {
    const name = view.text('name')
    const lead = readLeadTime(view)
    if (name === undefined || lead === undefined) return []
    const own = present({
      carriage: view.quantity('carriage', 'days', DAYS),
      rounds: weekdaysOf(view, 'rounds'),
      loads: weekdaysOf(view, 'loads'),
      carriageCharge: moneyOf(view, 'carriage-charge'),
    })
    const prices = readPrices(view)
    return [
      {
        name,
        processes: processesOf(view),
        ...lead,
        ...readContact(view),
        ...readWorking(view),
        ...own,
        ...(prices.length > 0 && { prices }),
      },
    ]
  })
  noneTwice(root.each('firms'), 'name')
  return firms
}

type Lead = Pick<Firm, 'leadTime' | 'leadTimeLeast' | 'leadTimeMost' | 'counts'>

function readLeadTime(view: View): Lead | undefined {
  const written = view.raw('lead-time')
  const text = typeof written === 'string' ? written.trim() : ''
  const inCalendar = CALENDAR.exec(text)
  const counts = inCalendar ? ({ counts: 'calendar days' } as const) : {}
  const [, from, to] = inCalendar ?? RANGE.exec(text) ?? []
  if (from === undefined) {
    const leadTime = view.quantity('lead-time', 'days', DAYS)
    return leadTime === undefined ? undefined : { leadTime }
  }
  const [least, most] = [Number(from), Number(to ?? from)]
  if (least > most || most > DAYS.upTo) {
    const message = `lead-time from ${least} to ${most} days: the first must be the less, and the last not over ${DAYS.upTo}`
    view.report({ code: 'input/out-of-range', message }, 'lead-time')
    return undefined
  }
  if (to === undefined) return { leadTime: least, ...counts }
  const usual = Math.ceil(least + USUAL * (most - least))
  return { leadTime: usual, leadTimeLeast: least, leadTimeMost: most, ...counts }
}

const PRICE = ['minimum', 'lot', 'each', 'per-kg'] as const

/** Those by process first: the first that has a process holds. */
function readPrices(view: View): readonly PriceOf[] {
  const byProcess = view.each('prices').map(one => ({ processes: processesOf(one), ...priceOf(one) }))
  const own = PRICE.some(key => view.has(key)) ? [{ processes: processesOf(view), ...priceOf(view) }] : []
  return [...byProcess, ...own]
}

const priceOf = (view: View): Price => ({
  minimum: moneyOf(view, 'minimum') ?? 0,
  lot: moneyOf(view, 'lot') ?? 0,
  each: moneyOf(view, 'each') ?? 0,
  perKg: moneyOf(view, 'per-kg') ?? 0,
})

/** A plain number: the money is the works' own, and the schema has seen to its range. */
export function moneyOf(view: View, key: string): number | undefined {
  const value = view.raw(key)
  return typeof value === 'number' && Number.isFinite(value) ? value : undefined
}
