import { PROMISED } from '../handbook/cost.ts'
import { MONDAY_TO_FRIDAY } from '../shop/working-days.ts'
import type { CalendarEntry, CalendarSource, Delivery, VisitDates } from './calendar.ts'
import { endsOf, firstWith } from './chances.ts'
import { type DayNumber, dateOf, dayNumber } from './day-number.ts'
import type { Task } from './task.ts'
import { tasksOf } from './tasks-of.ts'
import { between, onOrAfter, openOn } from './working-day.ts'

export type CalendarPlan = { readonly calendar: readonly CalendarEntry[]; readonly delivery: Delivery }

type Placed = { readonly task: Task; readonly from: DayNumber; readonly to: DayNumber }

/** The dates of a batch: as it usually goes, its ends, and the day that can be promised. A function of what it is given alone. */
export function planCalendar(source: CalendarSource): CalendarPlan {
  const open = openOn(source.working ?? MONDAY_TO_FRIDAY)
  const begin = onOrAfter(dayNumber(source.begins), open)
  const tasks = tasksOf(source)
  const usual = placed(tasks, begin, 'usual')
  const end = (which: 'least' | 'usual' | 'most') => lastOf(placed(tasks, begin, which), begin)
  const days = (day: DayNumber) => between(begin, day, open)
  const promise = firstWith(endsOf(tasks, begin), PROMISED)
  const visits = source.orders.flatMap(order => visitOf(order, usual))
  const wait = longestOf(source, usual, visits)
  return {
    calendar: source.operations.flatMap(({ number }) => entryOf(number, source, usual, visits)),
    delivery: {
      begins: dateOf(begin),
      days: { least: days(end('least')), usual: days(end('usual')), most: days(end('most')) },
      ends: { least: dateOf(end('least')), usual: dateOf(end('usual')), most: dateOf(end('most')) },
      promise: { date: dateOf(promise.day), days: days(promise.day), chance: promise.chance },
      visits,
      ...(wait && { longestWait: wait }),
    },
  }
}

function placed(tasks: readonly Task[], begin: DayNumber, which: 'least' | 'usual' | 'most'): readonly Placed[] {
  let ended = begin - 1
  return tasks.map(task => {
    const at = task.place(ended, Math.ceil(task.length[which] - 1e-9))
    ended = at.to
    return { task, ...at }
  })
}

const lastOf = (all: readonly Placed[], begin: DayNumber): DayNumber => all.at(-1)?.to ?? begin

function visitOf({ number, firm }: CalendarSource['orders'][number], usual: readonly Placed[]): readonly VisitDates[] {
  const [out, work, back] = usual.filter(({ task }) => task.order === number)
  if (!out || !work || !back) return []
  const [sent, received, ready, home] = [out.from, out.to, work.to, back.to].map(dateOf)
  return sent && received && ready && home ? [{ order: number, firm, sent, received, ready, back: home }] : []
}

/** An operation outside lasts from the day that the pieces leave to the day that they are back. */
function entryOf(
  number: number,
  { orders }: CalendarSource,
  usual: readonly Placed[],
  visits: readonly VisitDates[],
): readonly CalendarEntry[] {
  const order = orders.find(({ operations }) => operations.includes(number))
  const visit = visits.find(one => one.order === order?.number)
  if (visit) return [{ operation: number, from: visit.sent, to: visit.back }]
  const own = usual.find(({ task }) => task.operations.includes(number))
  return own ? [{ operation: number, from: dateOf(own.from), to: dateOf(own.to) }] : []
}

/** The visit that takes longest, and what would bring the end of the batch nearest. */
function longestOf(
  source: CalendarSource,
  usual: readonly Placed[],
  visits: readonly VisitDates[],
): Delivery['longestWait'] {
  const spans = visits.map(visit => ({ visit, days: dayNumber(visit.back) - dayNumber(visit.sent) + 1 }))
  const longest = spans.reduce<(typeof spans)[number] | undefined>(
    (best, one) => (best && best.days >= one.days ? best : one),
    undefined,
  )
  if (!longest) return undefined
  const { order, firm, sent, back } = longest.visit
  const shorter = shortening(source, firm, usual)
  return { order, firm, from: sent, to: back, days: longest.days, ...(shorter && { shorter }) }
}

function shortening(
  source: CalendarSource,
  firm: string,
  usual: readonly Placed[],
): { readonly by: string; readonly saves: number } | undefined {
  const end = usual.at(-1)?.to ?? 0
  const changed = (change: (one: CalendarSource['firms'][number]) => CalendarSource['firms'][number]) => ({
    ...source,
    firms: source.firms.map(one => (one.name === firm ? change(one) : one)),
  })
  const open = openOn(source.working ?? MONDAY_TO_FRIDAY)
  const endOf = (other: CalendarSource): DayNumber => {
    const begin = onOrAfter(dayNumber(other.begins), open)
    return lastOf(placed(tasksOf(other), begin, 'usual'), begin)
  }
  const tried = [
    { by: 'bringing and fetching the pieces ourselves, on any day', with: changed(({ rounds: _, ...one }) => one) },
    { by: 'agreeing a load for the day after they come', with: changed(({ loads: _, ...one }) => one) },
    {
      by: 'agreeing that they are worked on through the closed days',
      with: changed(({ working, ...one }) => ({ ...one, ...(working && { working: { ...working, closed: [] } }) })),
    },
  ].map(({ by, with: other }) => ({ by, saves: end - endOf(other) }))
  const best = tried.toSorted((a, b) => b.saves - a.saves)[0]
  return best && best.saves > 0 ? best : undefined
}
