import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { SHAPE } from '../handbook/hardness-profile.ts'
import { endsReach, releaseOf } from '../handbook/shell-of-bands.ts'
import { releasedShare, releaseFlare, releaseMove, SWING_BACK } from '../handbook/wall-stretch.ts'
import { boreOf, seatOf } from '../hardening/case-surfaces.ts'
import { elasticOf, meanCaseStress } from '../hardening/nitriding-growth.ts'
import { fromHandbook, told, worked } from '../known.ts'
import { toleranceOf } from '../limits.ts'
import { type Part, placeOf } from '../part/part.ts'
import type { Shop } from '../shop/shop.ts'
import { type Millimetre, micrometres } from '../units.ts'
import { type Notebook, SCRATCH } from '../working.ts'
import type { SettledStock } from './settle-stock.ts'
import type { SolvedChain } from './solve-chain.ts'
import type { StockEntry } from './stock.ts'

/** What a finished surface does when the case of the other side is ground away: of its radius, outward, at the usual stress. */
export type Release = {
  readonly surface: string
  /** The operation that grinds the other side. */
  readonly operation: number
  readonly middle: Millimetre
  readonly ends: Millimetre
  /** Largest less smallest diameter that it makes of one that was even; by the least and the most stress of the grade. */
  readonly taper: { readonly least: Millimetre; readonly nominal: Millimetre; readonly most: Millimetre }
}

const WALL = worked('wall by its nominal sizes, less what is ground away')

/**
 * The seat is finished before the bore's case is ground, or the bore before the seat's: the force that goes bends what is left.
 * Both must take case, and the one must be done when the other is begun.
 */
export function releases(
  notebook: Notebook,
  part: Part,
  shop: Shop,
  { planned, chains }: SettledStock,
): readonly Release[] {
  const order = planned.case
  const stress = order && meanCaseStress(SCRATCH, part, shop)
  const [seat, hole] = [seatOf(part), boreOf(part)]
  if (!order || !stress || !seat || !hole || order.surfaceHardness - order.coreHardness <= 60) return []
  const of = (kind: 'outside' | 'bore', name: string) =>
    chains.find(({ chain }) => chain.kind === kind && chain.surface === name && chain.cased)
  const [outside, bore] = [of('outside', seat.name), of('bore', hole.name)]
  if (!outside || !bore) return []
  const t = (seat.size.nominal - hole.size.nominal) / 2
  const R = (seat.size.nominal + hole.size.nominal) / 4
  const N = (order.ordered.least + order.ordered.most) / 2
  const elastic = elasticOf(part)
  const length = part.length.nominal
  const short = length < 2 * endsReach({ R, t }, elastic)
  /** Where the ends reach one another the formulas of a long tube do not hold: the shell is solved. */
  const inShort = (F: number, side: 'outside' | 'bore', s: Millimetre) => {
    const left = { R: R - ((side === 'outside' ? 1 : -1) * s) / 2, t: t - s }
    const moved = releaseOf({ side, F, ...left, lever: t / 2, length }, elastic)
    const at = (share: number) => moved[Math.round(share * (moved.length - 1))]?.w ?? 0
    return { middle: at(0.5), ends: at(0), taper: spreadOf([0, ...moved.map(({ w }) => w)]) }
  }
  const after = (done: SolvedChain, ground: SolvedChain): readonly Release[] => {
    const finished = done.chain.finishes.at(-1)?.operation.number
    if (finished === undefined) return []
    const later = ground.chain.finishes.flatMap(({ operation }, index) =>
      operation.number > finished ? [{ number: operation.number, s: (ground.stocks[index] ?? 0) / 2 }] : [],
    )
    const s = later.reduce((sum, cut) => sum + cut.s, 0)
    const [first] = later
    if (!first || s <= 0) return []
    const before = ground.stocks.reduce((sum, stock) => sum + stock / 2, 0) - s
    const profile = { N, H_s: order.surfaceHardness, H_c: order.coreHardness, n: SHAPE.expected }
    const gone = releasedShare({ ...profile, s: before + s }) - releasedShare({ ...profile, s: before })
    const outward = ground === outside ? 1 : -1
    const at = (s_0: number, keep: Notebook) => {
      const F_x = s_0 * N * gone - (s * 2 * s_0 * N) / t
      const left = {
        ...told(fromHandbook('elastic constants of the material'), { nu: elastic.poisson, E: elastic.modulus }),
        ...told(worked('stress of the case, over what is ground away of it'), { F_x }),
        ...told(WALL, { R: R - (outward * s) / 2 }),
      }
      const about = { about: `${done.chain.surface}, once ${ground.chain.surface} is ground` }
      if (short) return inShort(F_x, ground === outside ? 'outside' : 'bore', s)
      const middle = keep.use(releaseMove, { ...left, ...told(WALL, { t: t - s }) }, about)
      const flare = keep.use(releaseFlare, { ...left, ...told(WALL, { t, t_left: t - s }) }, about)
      const ends = middle + outward * flare
      const all = [0, middle, ends, middle - outward * SWING_BACK * flare]
      return { middle, ends, taper: spreadOf(all) }
    }
    const usual = at(stress.nominal, notebook)
    const taper = { least: at(stress.least, SCRATCH).taper, nominal: usual.taper, most: at(stress.most, SCRATCH).taper }
    return [{ surface: done.chain.surface, operation: first.number, middle: usual.middle, ends: usual.ends, taper }]
  }
  return [...after(outside, bore), ...after(bore, outside)]
}

const spreadOf = (moves: readonly Millimetre[]): Millimetre => 2 * (Math.max(...moves) - Math.min(...moves))

/** The entry of the last finish of a surface says what becomes of it afterwards. */
export const withReleases = (entries: readonly StockEntry[], found: readonly Release[]): readonly StockEntry[] =>
  entries.map((entry, index) => {
    const last = !entries.slice(index + 1).some(({ surface }) => surface === entry.surface)
    const release = last ? found.find(({ surface }) => surface === entry.surface) : undefined
    if (!release) return entry
    const { surface: _, ...afterwards } = release
    return { ...entry, afterwards }
  })

/** Where it takes half of the tolerance or more: an order of finishing that answers it. */
export const releaseFindings = (part: Part, { chains }: SettledStock, found: readonly Release[]): readonly Finding[] =>
  found.flatMap(({ surface, operation, middle, ends, taper }) => {
    const solved = chains.find(({ chain }) => chain.surface === surface)
    const tolerance = solved ? toleranceOf(solved.chain.final) : 0
    if (!solved || 2 * taper.nominal <= tolerance) return []
    const micro = (value: Millimetre) => fixed(micrometres(value), 1)
    return [
      {
        severity: taper.nominal > tolerance ? 'error' : 'warning',
        code: 'stock/release',
        message: `${surface} is finished before operation ${operation} grinds the case of the other side away: its radius moves ${micro(middle)} µm in the middle and ${micro(ends)} at the ends, ${micro(taper.nominal)} µm on diameter (${micro(taper.least)} to ${micro(taper.most)} by the stress of the grade) of its ${micro(tolerance)}`,
        at: placeOf(part, solved.chain.path),
        hint: 'grind in this order: faces; outside with 0.01 to 0.02 mm a side left; bore; outside to size; bore honed last',
      },
    ]
  })
