import { BUILT_IN_GAUGES } from './built-in-gauges.ts'
import { BUILT_IN_FIRMS, BUILT_IN_HABITS } from './built-in-habits.ts'
import { BUILT_IN_FIXTURE, BUILT_IN_MACHINES } from './built-in-machines.ts'
import { BUILT_IN_TOOLS } from './built-in-tools.ts'
import type { Shop } from './shop.ts'

/** The works that a plan is made for when there is no shop file. A shop file lays its own values over it. */
export const BUILT_IN_SHOP: Shop = {
  name: 'built-in shop',
  fixture: BUILT_IN_FIXTURE,
  machines: BUILT_IN_MACHINES,
  tools: BUILT_IN_TOOLS,
  gauges: BUILT_IN_GAUGES,
  firms: BUILT_IN_FIRMS,
  measured: [],
  habits: BUILT_IN_HABITS,
  reached: [],
  set: new Set(),
  places: new Map(),
  file: 'built-in shop',
}
