/** By ISO 8601 the week begins on Monday. */
const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const
export type Weekday = (typeof WEEKDAYS)[number]

/** Both days belong to it. YYYY-MM-DD. */
export type ClosedDays = { readonly from: string; readonly to: string }

/** The days on which a works or a firm works. The program knows no country: whoever is closed says when. */
export type WorkingDays = { readonly days: readonly Weekday[]; readonly closed: readonly ClosedDays[] }

/** Where nothing else is said. */
export const MONDAY_TO_FRIDAY: WorkingDays = { days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri'], closed: [] }
