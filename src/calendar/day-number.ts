import type { Weekday } from '../shop/working-days.ts'

/** Days since 1970-01-01, by the Gregorian calendar. */
export type DayNumber = number

/** Of an era of 400 years, counted from 1 March so that a leap day comes last. */
const ERA = 146_097

/**
 * Number of a date, YYYY-MM-DD.
 *
 * Source: the Gregorian rule; counting from 1 March makes the lengths of the months (153 m + 2) / 5.
 *
 * @example dayNumber('2026-12-24') // 20811
 */
export function dayNumber(date: string): DayNumber {
  const [year = 1970, month = 1, day = 1] = date.split('-').map(Number)
  const y = month <= 2 ? year - 1 : year
  const era = Math.floor(y / 400)
  const ofEra = y - era * 400
  const ofYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1
  return era * ERA + ofEra * 365 + Math.floor(ofEra / 4) - Math.floor(ofEra / 100) + ofYear - 719_468
}

/** The date of a number, YYYY-MM-DD. */
export function dateOf(number: DayNumber): string {
  const since = number + 719_468
  const era = Math.floor(since / ERA)
  const inEra = since - era * ERA
  const ofEra = Math.floor(
    (inEra - Math.floor(inEra / 1460) + Math.floor(inEra / 36_524) - Math.floor(inEra / 146_096)) / 365,
  )
  const ofYear = inEra - (365 * ofEra + Math.floor(ofEra / 4) - Math.floor(ofEra / 100))
  const m = Math.floor((5 * ofYear + 2) / 153)
  const day = ofYear - Math.floor((153 * m + 2) / 5) + 1
  const month = m < 10 ? m + 3 : m - 9
  const year = ofEra + era * 400 + (month <= 2 ? 1 : 0)
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`
}

const WEEK: readonly Weekday[] = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun']

/** 1970-01-01 was a Thursday. */
export const weekdayOf = (number: DayNumber): Weekday => WEEK[(((number + 3) % 7) + 7) % 7] ?? 'Mon'
