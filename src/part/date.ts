const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]

/**
 * Whether the text is a day of the calendar, YYYY-MM-DD.
 *
 * Source: ISO 8601, calendar date in extended format; leap years by the Gregorian rule.
 *
 * @example isDate('2028-02-29') // true
 */
export function isDate(text: string): boolean {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text)?.map(Number) ?? []
  if (year === undefined || month === undefined || day === undefined) return false
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0
  const days = month === 2 && leap ? 29 : DAYS[month - 1]
  return days !== undefined && day >= 1 && day <= days
}
