import type { Weekday, WorkingDays } from '../shop/working-days.ts'
import { type DayNumber, dayNumber, weekdayOf } from './day-number.ts'

/** Whether a day will do. */
export type Open = (day: DayNumber) => boolean

/** A works that is closed for longer gets no date: its shop file is at fault. */
const LONGEST = 4000

export function openOn({ days, closed }: WorkingDays): Open {
  const ranges = closed.map(({ from, to }) => [dayNumber(from), dayNumber(to)] as const)
  const known = new Map<DayNumber, boolean>()
  return day => {
    const before = known.get(day)
    if (before !== undefined) return before
    const open = days.includes(weekdayOf(day)) && !ranges.some(([from, to]) => day >= from && day <= to)
    known.set(day, open)
    return open
  }
}

export const onDays = (days: readonly Weekday[] | undefined): Open =>
  days === undefined ? () => true : day => days.includes(weekdayOf(day))

/** The day itself, or the next that will do. */
export function onOrAfter(day: DayNumber, open: Open): DayNumber {
  for (let at = day; at < day + LONGEST; at++) if (open(at)) return at
  return day
}

/**
 * The day on which so many working days after a day are over: the last of them. None is the day itself.
 *
 * @example workingDaysAfter(dayNumber('2026-12-18'), 5, open) // 2027-01-05, closed 2026-12-24 to 2027-01-01
 */
export function workingDaysAfter(day: DayNumber, count: number, open: Open): DayNumber {
  let at = day
  for (let left = count; left > 0; left--) at = onOrAfter(at + 1, open)
  return at
}

/** Working days from one to the other, both counted. */
export function between(from: DayNumber, to: DayNumber, open: Open): number {
  let count = 0
  for (let at = from; at <= to; at++) if (open(at)) count++
  return count
}
