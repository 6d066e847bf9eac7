import type { Band } from '../band.ts'
import type { Part } from '../part/part.ts'
import type { Millimetre } from '../units.ts'

/** What a bore may be wider than where the piston or its seat runs, on diameter, and still be run in. Common practice, no source. */
const RELIEVED: Millimetre = 0.3
/** A recess up to this wide is cut once, after the bands beside it. Common practice, no source. */
const NARROW: Millimetre = 6

/** A band of the bore that stands back from the running one: a recess for a gasket, for water, a relief at the end. Nothing runs in it. */
export function isRecess({ bore }: Pick<Part, 'bore'>, { size }: Band): boolean {
  const least = Math.min(...bore.map(band => band.size.nominal))
  return size.nominal > least + RELIEVED
}

/** A narrow band cut into those beside it: never roughed with them. */
export function isNarrowRecess(part: Pick<Part, 'outside' | 'bore'>, name: string): boolean {
  return [part.outside, part.bore].some((bands, side) => {
    const index = bands.findIndex(band => band.name === name)
    const band = bands[index]
    if (!band || bands.length < 2 || band.to.nominal - band.from > NARROW) return false
    const into = side === 0 ? 1 : -1
    const beside = [bands[index - 1], bands[index + 1]].filter(one => one !== undefined)
    return (
      beside.every(({ size }) => into * (size.nominal - band.size.nominal) > 0) && (side === 1 || beside.length === 2)
    )
  })
}

/** The band beside a narrow recess that is roughed for it: the nearer to its own size. */
export function roughedWith(part: Pick<Part, 'outside' | 'bore'>, name: string): string | undefined {
  if (!isNarrowRecess(part, name)) return undefined
  const bands = part.bore.some(band => band.name === name) ? part.bore : part.outside
  const index = bands.findIndex(band => band.name === name)
  const own = bands[index]?.size.nominal ?? 0
  return [bands[index - 1], bands[index + 1]]
    .filter(band => band !== undefined)
    .toSorted((a, b) => Math.abs(a.size.nominal - own) - Math.abs(b.size.nominal - own))[0]?.name
}
