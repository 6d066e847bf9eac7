import { chanceUpTo } from '../handbook/triangular.ts'
import type { DayNumber } from './day-number.ts'
import type { Length, Task, WholeDays } from './task.ts'

/** A length rounded up to whole days, with the chance of each: exact, nothing is drawn. */
export function wholeDays(length: Length): WholeDays {
  const [first, last] = [Math.ceil(length.least - 1e-9), Math.ceil(length.most - 1e-9)]
  return Array.from({ length: last - first + 1 }, (_, index) => {
    const days = first + index
    const below = index === 0 ? 0 : chanceUpTo(days - 1, length)
    return { days, chance: chanceUpTo(days, length) - below }
  }).filter(({ chance }) => chance > 0)
}

/** The chance of ending on each day, carried from date to date: every task falls in a week of its own. */
export function endsOf(tasks: readonly Task[], begin: DayNumber): ReadonlyMap<DayNumber, number> {
  let ends: ReadonlyMap<DayNumber, number> = new Map([[begin - 1, 1]])
  for (const { length, place } of tasks) {
    const next = new Map<DayNumber, number>()
    for (const [ended, before] of ends) {
      for (const { days, chance } of wholeDays(length)) {
        const { to } = place(ended, days)
        next.set(to, (next.get(to) ?? 0) + before * chance)
      }
    }
    ends = next
  }
  return ends
}

/** The first day on which it is done with the chance asked for, and that chance. */
export function firstWith(
  ends: ReadonlyMap<DayNumber, number>,
  wanted: number,
): { readonly day: DayNumber; readonly chance: number } {
  let chance = 0
  let last = 0
  for (const [day, each] of [...ends].toSorted(([a], [b]) => a - b)) {
    chance += each
    last = day
    if (chance >= wanted - 1e-12) break
  }
  return { day: last, chance: Math.min(1, chance) }
}
