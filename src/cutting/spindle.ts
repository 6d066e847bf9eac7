import { cuttingSpeed, spindleSpeed } from '../handbook/turning.ts'
import type { Machine } from '../shop/shop.ts'
import type { MetrePerMinute, Millimetre, SpindleSpeed } from '../units.ts'
import type { About, Notebook } from '../working.ts'

export type Spindle = {
  readonly spindleSpeed: SpindleSpeed
  readonly cuttingSpeed: MetrePerMinute
  readonly limitedBy?: string
}

/** The speed wanted at a diameter, as far as the machine and the chuck turn. */
export function spindleFor(
  machine: Machine,
  wanted: MetrePerMinute,
  diameter: Millimetre,
  notebook: Notebook,
  about: About,
): Spindle {
  const n = notebook.use(spindleSpeed, { vc: wanted, D: diameter }, about)
  const limits = [
    { limit: machine.speedLimit, name: 'spindle speed limit' },
    { limit: machine.chuckLimit, name: 'chuck speed limit' },
  ].flatMap(({ limit, name }) => (limit === undefined ? [] : [{ limit, name }]))
  const lowest = limits.toSorted((a, b) => a.limit - b.limit)[0]
  if (!lowest || lowest.limit >= n) return { spindleSpeed: n, cuttingSpeed: wanted }
  return {
    spindleSpeed: lowest.limit,
    cuttingSpeed: notebook.use(cuttingSpeed, { n: lowest.limit, D: diameter }, about),
    limitedBy: `${lowest.name} ${lowest.limit} rpm`,
  }
}
