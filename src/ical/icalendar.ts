import { dateOf, dayNumber } from '../calendar/day-number.ts'
import type { Plan } from '../plan/plan.ts'
import { asText, contentLine } from './content-line.ts'
import { OUR_SPACE, uuid5 } from './uuid-5.ts'

/** Counted from here, so that a later issue has a higher number and nothing needs to be remembered. */
const FIRST = '2020-01-01'

/** The dates of a batch as a calendar file, a whole-day event an operation. Nothing where the plan has no dates. */
export function icalendar({ part, batch, operations, calendar = [], orders, date, program }: Plan): string | undefined {
  if (calendar.length === 0) return undefined
  const sequence = dayNumber(date) - dayNumber(FIRST)
  const events = calendar.flatMap(({ operation: number, from, to }) => {
    const operation = operations.find(one => one.number === number)
    const order = orders.find(one => one.operations.includes(number))
    const where = order ? order.firm : operation?.workCentre
    return [
      'BEGIN:VEVENT',
      `UID:${uuid5(`${part.number}/${batch.number}/${number}`, OUR_SPACE)}`,
      `DTSTAMP:${basic(date)}T000000Z`,
      `DTSTART;VALUE=DATE:${basic(from)}`,
      // The day after the last.
      `DTEND;VALUE=DATE:${basic(dateOf(dayNumber(to) + 1))}`,
      `SEQUENCE:${sequence}`,
      `SUMMARY:${asText(`${number} ${operation?.name}, ${where}, batch ${batch.number}`)}`,
      ...(order
        ? [
            `DESCRIPTION:${asText(`Order ${order.reference}: ${order.pieces} pieces. Not back by the last day, ring ${order.to.telephone ?? order.firm}.`)}`,
          ]
        : []),
      'STATUS:CONFIRMED',
      'TRANSP:TRANSPARENT',
      'END:VEVENT',
    ]
  })
  return [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    `PRODID:-//${asText(program)}//batch calendar//EN`,
    ...events,
    'END:VCALENDAR',
  ]
    .map(contentLine)
    .join('')
}

const basic = (date: string): string => date.replaceAll('-', '')
