import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { CalendarSource } from '../../src/calendar/calendar.ts'
import { endsOf, firstWith, wholeDays } from '../../src/calendar/chances.ts'
import { dateOf, dayNumber, weekdayOf } from '../../src/calendar/day-number.ts'
import { planCalendar } from '../../src/calendar/plan-calendar.ts'
import type { Task } from '../../src/calendar/task.ts'
import { tasksOf } from '../../src/calendar/tasks-of.ts'
import { onOrAfter, openOn, workingDaysAfter } from '../../src/calendar/working-day.ts'
import type { Firm } from '../../src/shop/firm.ts'
import { MONDAY_TO_FRIDAY } from '../../src/shop/working-days.ts'

const WORKS = { ...MONDAY_TO_FRIDAY, closed: [{ from: '2026-12-24', to: '2027-01-01' }] }
const open = openOn(WORKS)

describe('days', () => {
  it('have the numbers and names that the built-in calendar of the language gives them', () => {
    fc.assert(
      fc.property(fc.integer({ min: -100_000, max: 100_000 }), number => {
        const date = new Date(number * 86_400_000)
        expect(dateOf(number)).toBe(date.toISOString().slice(0, 10))
        expect(dayNumber(dateOf(number))).toBe(number)
        expect(weekdayOf(number)).toBe(date.toUTCString().slice(0, 3))
      }),
    )
  })

  it('of work go round week-ends and closed days: five after 2026-12-18 (worked by hand)', () => {
    expect(dateOf(workingDaysAfter(dayNumber('2026-12-18'), 5, open))).toBe('2027-01-05')
  })
})

const operation = { number: 10, name: 'Nitride', workCentre: 'Quillfen', time: { setup: 0, each: 0, batch: 0 } }
/** One visit alone, from the day that the pieces are at the firm. */
function readyFrom(received: string, firm: Partial<Firm> & { readonly leadTime: number }): string {
  const source: CalendarSource = {
    operations: [operation],
    orders: [{ number: 1, operations: [10], firm: 'Quillfen', leadTime: firm.leadTime }],
    firms: [{ name: 'Quillfen', processes: ['nitride'], ...firm }],
    machines: [],
    working: WORKS,
    begins: received,
  }
  return planCalendar(source).delivery.visits[0]?.ready ?? ''
}

describe('what a firm takes', () => {
  it('is in its own working days from the day after it has them', () => {
    const closed = [{ from: '2026-12-21', to: '2027-01-01' }]
    const lead = { leadTime: 10, leadTimeLeast: 10, leadTimeMost: 10 }
    expect(readyFrom('2026-12-15', { ...lead, working: { ...MONDAY_TO_FRIDAY, closed } })).toBe('2027-01-12')
    expect(readyFrom('2026-12-15', lead)).toBe('2026-12-29')
  })

  it('is in days of the calendar where it says so, and then goes on to a day when both are open', () => {
    expect(readyFrom('2026-12-14', { leadTime: 14, counts: 'calendar days' })).toBe('2027-01-04')
  })

  it('waits for the day of its load, which is the first of them', () => {
    // 2026-11-30 is a Monday; the load after is that of Wednesday, and three days of work end on Friday.
    expect(readyFrom('2026-11-30', { leadTime: 3, loads: ['Wed'] })).toBe('2026-12-04')
  })
})

/** soft 3 to 5, carry 1, nitride 8 to 12, back 1, check 1, carry 1, grind 6 to 10, back 1 to 2, final 1 to 2: working days. */
const CHAIN: readonly Task[] = [
  [3, 5],
  [1, 1],
  [8, 12],
  [1, 1],
  [1, 1],
  [1, 1],
  [6, 10],
  [1, 2],
  [1, 2],
].map(([least = 0, most = 0]) => ({
  operations: [],
  what: 'work',
  length: { least, usual: least + (most - least) / 3, most },
  place: (ended, days) => {
    const from = onOrAfter(ended + 1, open)
    return { from, to: workingDaysAfter(from, days - 1, open) }
  },
}))

describe('a promise', () => {
  const begin = dayNumber('2026-11-25')
  const ends = endsOf(CHAIN, begin)
  const chanceBy = (days: number): number => {
    const last = workingDaysAfter(begin - 1, days, open)
    return [...ends].filter(([day]) => day <= last).reduce((sum, [, chance]) => sum + chance, 0)
  }

  it('is the first day that holds nine times in ten, by every way that the chain can go (worked apart from this program)', () => {
    expect(chanceBy(30)).toBeCloseTo(0.3848, 4)
    expect(chanceBy(32)).toBeCloseTo(0.8781, 4)
    expect(dateOf(firstWith(ends, 0.9).day)).toBe('2027-01-19')
    expect(dateOf(workingDaysAfter(begin - 1, 33, open))).toBe('2027-01-19')
  })

  it('lies between the ends of the chain, 2027-01-05 and 2027-01-21', () => {
    const days = [...ends.keys()].toSorted((a, b) => a - b)
    // The least has no chance of its own: each length is rounded up.
    expect(dateOf(workingDaysAfter(begin - 1, 23, open))).toBe('2027-01-05')
    expect(days[0]).toBeGreaterThan(dayNumber('2027-01-05'))
    expect(dateOf(days.at(-1) ?? 0)).toBe('2027-01-21')
  })

  it('has chances that make one', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 30, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (a, w) => {
          const sum = wholeDays({ least: a, usual: a + w / 3, most: a + w }).reduce(
            (all, { chance }) => all + chance,
            0,
          )
          expect(sum).toBeCloseTo(1, 9)
        },
      ),
    )
  })
})

describe('the chain of a batch', () => {
  const time = { setup: 60, each: 0, batch: 60 }
  const source: CalendarSource = {
    operations: [
      { number: 10, name: 'Rough turn', workCentre: 'lathe', time },
      { number: 20, name: 'Finish turn', workCentre: 'lathe', time },
      { number: 30, name: 'Nitride', workCentre: 'Quillfen', time: operation.time },
      { number: 40, name: 'Check', workCentre: 'bench', time },
    ],
    orders: [{ number: 1, operations: [30], firm: 'Quillfen', leadTime: 5 }],
    firms: [{ name: 'Quillfen', processes: ['nitride'], leadTime: 5, rounds: ['Tue'] }],
    machines: [],
    begins: '2026-12-05',
  }

  it('takes what follows on at one work centre as one task, begins on a working day, and follows the rounds', () => {
    expect(tasksOf(source).map(({ what }) => what)).toEqual(['work', 'out', 'firm', 'back', 'work'])
    const { calendar, delivery } = planCalendar(source)
    // Saturday 5th goes on to Monday 7th; the round is Tuesday 8th; five days from the 9th end on the 15th, a Tuesday: next round 22nd.
    expect(calendar).toEqual([
      { operation: 10, from: '2026-12-07', to: '2026-12-07' },
      { operation: 20, from: '2026-12-07', to: '2026-12-07' },
      { operation: 30, from: '2026-12-08', to: '2026-12-22' },
      { operation: 40, from: '2026-12-23', to: '2026-12-23' },
    ])
    expect(delivery.longestWait?.shorter).toEqual({
      by: 'bringing and fetching the pieces ourselves, on any day',
      saves: 6,
    })
  })

  it('gets no later when a day is opened', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40 }), shut => {
        const closed = dateOf(dayNumber('2026-12-07') + shut)
        const shutOnce = { ...source, working: { ...MONDAY_TO_FRIDAY, closed: [{ from: closed, to: closed }] } }
        const end = (one: CalendarSource) => dayNumber(planCalendar(one).delivery.ends.usual)
        expect(end(shutOnce)).toBeGreaterThanOrEqual(end(source))
      }),
    )
  })
})
