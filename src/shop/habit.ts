import { type Known, known } from '../known.ts'
import type { Quantity, Unit } from '../units.ts'
import { habitKey } from './habit-key.ts'
import { setting } from './origin.ts'
import type { Habits, Shop } from './shop.ts'

/** The habits that are a figure in the unit. */
type HabitIn<U extends Unit> = {
  [key in keyof Habits]-?: Habits[key] extends Quantity<U> ? key : never
}[keyof Habits]

/** A habit of the works with where it comes from: its own shop file, or built in. */
export const habit = <U extends Unit>(shop: Pick<Shop, 'habits' | 'set'>, key: HabitIn<U>, unit: U): Known<U> => {
  const value: Quantity<U> = Number(shop.habits[key])
  return known(value, unit, setting(shop, 'habits', habitKey(key)))
}
