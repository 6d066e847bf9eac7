import type { Band } from '../band.ts'
import type { Spread } from '../limits.ts'
import { between, type Limits, middleOf, toleranceOf } from '../limits.ts'
import type { Part } from '../part/part.ts'
import type { AxialLocator } from '../route/operation.ts'
import type { Shop } from '../shop/shop.ts'
import type { Millimetre } from '../units.ts'
import type { SolvedChain } from './solve-chain.ts'

/** A step between two diameters: the band that ends there, and which way its face looks. */
export type Step = { readonly band: Band; readonly looks: 'up' | 'down' }

export type AxialSizes = {
  readonly softLength: Limits
  readonly hardenedLength: Limits
  readonly finishedLength: Limits
  /** By the band that ends there. */
  readonly softDepth: ReadonlyMap<string, Limits>
  readonly finishedDepth: ReadonlyMap<string, Limits>
  /** How far the soft top face stands above the finished one; growth lifts it further. */
  readonly topStock: Millimetre
  readonly growth: Spread
  readonly steps: readonly Step[]
  /** The face that the top face is ground from, where it is ground. */
  readonly locator?: AxialLocator
}

/** The steps of outside and bore, from the top down. A bore step looks up where the bore above is the larger. */
function stepsOf({ outside, bore }: Pick<Part, 'outside' | 'bore'>): readonly Step[] {
  const steps = (bands: readonly Band[], largerAbove: Step['looks'], smallerAbove: Step['looks']): readonly Step[] =>
    bands.slice(0, -1).map((band, index) => {
      const below = bands[index + 1]
      return { band, looks: below && below.size.nominal < band.size.nominal ? largerAbove : smallerAbove }
    })
  return [...steps(outside, 'down', 'up'), ...steps(bore, 'up', 'down')]
}

/**
 * Lengths and depths worked backward from the drawing. When the top face is ground after hardening every depth is turned
 * deeper by what comes off it; hardening adds its growth at each end and at each step.
 */
export function axialSizes(part: Part, shop: Shop, top: SolvedChain | undefined, growth: Spread): AxialSizes {
  const steps = stepsOf(part)
  const locator = top?.chain.finishes[0]?.operation.axialLocator
  const stock = (top?.stocks[0] ?? 0) / 2
  const own = top?.growth ?? growth
  const byLength = top !== undefined && locator?.face === 'bottom'
  const byDepthOf = (band: Band): boolean => locator?.face === 'shoulder' && locator.band === band.name
  const { habits } = shop
  /** Middle moved by the stock and the growth at both ends; as wide as turning holds, never wider than what is asked. */
  const before = (after: Limits, bothEnds: boolean): Limits => {
    const middle = middleOf(after) + stock - (bothEnds ? 2 * own.nominal : 0)
    const spread = top || !bothEnds ? 0 : 2 * (own.most - own.least)
    const room = top ? habits.faceTurningTolerance : Math.max(0, toleranceOf(after) - spread)
    const half = Math.min(habits.faceTurningTolerance, room) / 2
    return between(middle - half, middle + half)
  }
  const softLength = byLength ? top.soft : before(part.length, true)
  const softDepth = new Map(
    steps.map(({ band, looks }) => [band.name, top && byDepthOf(band) ? top.soft : before(band.to, looks === 'down')]),
  )
  return {
    softLength,
    hardenedLength: {
      nominal: softLength.nominal + 2 * own.nominal,
      lower: softLength.lower + 2 * own.least,
      upper: softLength.upper + 2 * own.most,
    },
    finishedLength: byLength ? top.chain.final : part.length,
    softDepth,
    finishedDepth: new Map(steps.map(({ band }) => [band.name, top && byDepthOf(band) ? top.chain.final : band.to])),
    topStock: stock - own.nominal,
    growth: own,
    steps,
    ...(locator && { locator }),
  }
}
