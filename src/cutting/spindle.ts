import { cuttingSpeed, spindleSpeed } from '../handbook/turning.ts'
import { type Told, told, worked } from '../known.ts'
import type { Machine } from '../shop/shop.ts'
import type { MetrePerMinute, Millimetre, SpindleSpeed } from '../units.ts'
import type { About, Notebook } from '../working.ts'
import { figure } from './figure.ts'

export type Spindle = {
  readonly spindleSpeed: SpindleSpeed
  readonly cuttingSpeed: MetrePerMinute
  readonly limitedBy?: string
}

/** What a machine and its chuck turn, and up to where the jaws still hold. */
type Limits = Pick<Machine, 'speedLimit' | 'chuckLimit'> & { readonly gripLimit?: SpindleSpeed | undefined }

/** The speed wanted at a diameter, as far as the machine and the chuck turn. */
export function spindleFor({
  machine,
  wanted,
  diameter: D,
  notebook,
  about,
}: {
  readonly machine: Limits
  readonly wanted: Told<MetrePerMinute>
  readonly diameter: Told<Millimetre>
  readonly notebook: Notebook
  readonly about: About
}): Spindle {
  const n = notebook.use(spindleSpeed, { vc: wanted, D }, about)
  const limits = [
    { limit: machine.speedLimit, name: 'spindle speed limit' },
    { limit: machine.chuckLimit, name: 'chuck speed limit' },
    { limit: machine.gripLimit, name: 'pull of the jaws: at most' },
  ].flatMap(({ limit, name }) => (limit === undefined ? [] : [{ limit, name }]))
  const lowest = limits.toSorted((a, b) => a.limit - b.limit)[0]
  if (!lowest || lowest.limit >= n) return { spindleSpeed: n, cuttingSpeed: wanted.value }
  return {
    spindleSpeed: lowest.limit,
    cuttingSpeed: notebook.use(cuttingSpeed, { ...told(worked(lowest.name), { n: lowest.limit }), D }, about),
    limitedBy: `${lowest.name} ${figure(lowest.limit)} rpm`,
  }
}
