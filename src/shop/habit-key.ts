import type { Habits, Shop } from './shop.ts'

/** How the shop file writes a habit: `finishTurningTolerance` is `finish-turning-tolerance`. */
export const habitKey = (habit: string): string => habit.replace(/[A-Z]/g, letter => `-${letter.toLowerCase()}`)

/** Whether the shop file itself gives the habit: without it the figure is the built-in one, common practice. */
export const setByShop = ({ set }: Pick<Shop, 'set'>, habit: keyof Habits): boolean =>
  set.has(`/habits/${habitKey(habit)}`)
