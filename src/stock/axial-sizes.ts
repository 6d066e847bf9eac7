import type { Band } from '../band.ts'
import { stretchedDepth } from '../hardening/growth.ts'
import { between, type DrawnSize, type Limits, middleOf, type Spread, toleranceOf } from '../limits.ts'
import type { Part } from '../part/part.ts'
import type { AxialLocator } from '../route/operation.ts'
import type { Shop } from '../shop/shop.ts'
import type { Millimetre } from '../units.ts'
import { type AxialGrowth, growthOfDepth, type Looks } from './axial-growth.ts'
import type { SolvedChain } from './solve-chain.ts'

/** A step between two diameters: the band that ends there, and which way its face looks. */
export type Step = { readonly band: Band; readonly looks: Looks }

export type AxialSizes = {
  readonly softLength: Limits
  readonly hardenedLength: Limits
  readonly finishedLength: Limits
  /** By the band that ends there. */
  readonly softDepth: ReadonlyMap<string, Limits>
  readonly finishedDepth: ReadonlyMap<string, Limits>
  /** How far the soft top face stands above the finished one, seen from mid length; growth lifts it further. */
  readonly topStock: Millimetre
  readonly growth: AxialGrowth
  /** Of either end, seen from mid length. */
  readonly endGrowth: Millimetre
  readonly steps: readonly Step[]
  /** The face that the top face is ground from, where it is ground. */
  readonly locator?: AxialLocator
}

/** The stock above the finished top face, seen from a depth: what stands lower than mid length sinks further from it. */
export function topStockAt({ topStock, finishedLength, growth }: AxialSizes, depth: Millimetre): Millimetre {
  const { stretch, sections } = growth
  const below = stretchedDepth(sections, depth) - stretchedDepth(sections, finishedLength.nominal) / 2
  return topStock - ((stretch.least + stretch.most) / 2) * below
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
 * deeper by what comes off it; hardening lifts every treated face, and moves each by the stretch times its depth. A range of
 * growth that reaches further to one side moves the turner's limits, so that the drawing's are met in the middle.
 */
export function axialSizes(part: Part, shop: Shop, top: SolvedChain | undefined, growth: AxialGrowth): AxialSizes {
  const steps = stepsOf(part)
  const locator = top?.chain.finishes[0]?.operation.axialLocator
  const stock = (top?.stocks[0] ?? 0) / 2
  const byLength = top !== undefined && locator?.face === 'bottom'
  const byDepthOf = (band: Band): boolean => locator?.face === 'shoulder' && locator.band === band.name
  const grown = (looks: Looks, { nominal }: { readonly nominal: Millimetre }) => growthOfDepth(growth, looks, nominal)
  const { habits } = shop
  // Of the length that the top face is ground to, the middle of the growth less the nominal that its stock is reckoned with.
  const located = top && grown('down', top.chain.final)
  const offCentre = located ? (located.least + located.most) / 2 - located.nominal : 0
  /** As wide as turning holds; where nothing is ground after, never wider than growth leaves of what is asked. */
  const before = (after: DrawnSize, looks: Looks): Limits => {
    const { least, most } = grown(looks, after)
    const middle = middleOf(after) + stock + offCentre - (least + most) / 2
    const room = top ? habits.faceTurningTolerance : Math.max(0, toleranceOf(after) - (most - least))
    const half = Math.min(habits.faceTurningTolerance, room) / 2
    return between(middle - half, middle + half)
  }
  const softLength = byLength ? top.soft : before(part.length, 'down')
  const softDepth = new Map(
    steps.map(({ band, looks }) => [band.name, top && byDepthOf(band) ? top.soft : before(band.to, looks)]),
  )
  const along: Spread = grown('down', part.length)
  const endGrowth = along.nominal / 2
  return {
    softLength,
    hardenedLength: {
      nominal: softLength.nominal + along.nominal,
      lower: softLength.lower + along.least,
      upper: softLength.upper + along.most,
    },
    finishedLength: byLength ? top.chain.final : part.length,
    softDepth,
    finishedDepth: new Map(steps.map(({ band }) => [band.name, top && byDepthOf(band) ? top.chain.final : band.to])),
    // What is milled aims at the middle of the growth, as what is turned does.
    topStock: stock + offCentre - (along.least + along.most) / 4,
    growth,
    endGrowth,
    steps,
    ...(locator && { locator }),
  }
}
