import type { Contact } from '../shop/firm.ts'
import type { ClosedDays, Weekday, WorkingDays } from '../shop/working-days.ts'
import { MONDAY_TO_FRIDAY } from '../shop/working-days.ts'
import { isDate } from './date.ts'
import { present } from './open-document.ts'
import type { View } from './view.ts'

/** Where to write to and whom to ring; nothing where the file says none of it. */
export function readContact(view: View | undefined): { readonly contact?: Contact } {
  const contact = present({
    address: view?.text('address'),
    telephone: view?.text('telephone'),
    email: view?.text('e-mail'),
    person: view?.text('contact'),
  })
  return Object.keys(contact).length > 0 ? { contact } : {}
}

/** Week and holidays; nothing where the file says neither. */
export function readWorking(view: View | undefined): { readonly working?: WorkingDays } {
  if (!view?.has('days') && !view?.has('closed')) return {}
  const days = weekdaysOf(view, 'days') ?? MONDAY_TO_FRIDAY.days
  return { working: { days, closed: readClosed(view) } }
}

/** The schema knows the days of the week. */
export const weekdaysOf = (view: View, key: string): readonly Weekday[] | undefined =>
  view.has(key) ? (view.texts(key) as readonly Weekday[]) : undefined

const A_DAY_OR_TWO = /^(\S+?)(?:\s+to\s+(\S+))?$/

function readClosed(view: View): readonly ClosedDays[] {
  return view.texts('closed').flatMap(written => {
    const [, from = '', to = from] = A_DAY_OR_TWO.exec(written) ?? []
    if (!isDate(from) || !isDate(to)) {
      const message = `closed "${written}" cannot be read`
      view.report(
        { code: 'input/unreadable', message, hint: 'wanted: 2026-12-24, or 2026-12-24 to 2027-01-01' },
        'closed',
      )
      return []
    }
    if (from > to) {
      view.report(
        { code: 'input/out-of-range', message: `closed from ${from} to ${to}: the first must be the earlier` },
        'closed',
      )
      return []
    }
    return [{ from, to }]
  })
}
