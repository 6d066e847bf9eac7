import type { TurnedSide } from '../feature.ts'
import type { Growth } from '../hardening/growth.ts'
import type { Known } from '../known.ts'
import { known, none } from '../known.ts'
import type { Spread } from '../limits.ts'
import type { Part } from '../part/part.ts'
import type { Operation } from '../route/operation.ts'
import type { Shape } from '../shape.ts'
import type { StockEntry } from '../stock/stock.ts'
import type { Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'

/** What the sizes of a feature as cut rest on. */
export type FeaturesGiven = {
  readonly part: Part
  readonly operations: readonly Operation[]
  readonly entries: readonly StockEntry[]
  /** The part as it is finish turned. */
  readonly turned: Shape
  /** The operation that turns it last. */
  readonly turning: number
  readonly growth?: Growth | undefined
  readonly notebook: Notebook
  readonly report: (finding: {
    code: 'feature/growth-over-tolerance'
    message: string
    hint: string
    path: string
  }) => void
}

const NOTHING: Spread = { least: 0, nominal: 0, most: 0 }

/** Taken off a surface after hardening, per side; off a face in all. A plated layer is no metal of the part. */
export function takenOff({ entries }: FeaturesGiven, surface: string): Spread {
  return entries
    .filter(entry => entry.surface === surface && entry.margin.plating === undefined)
    .map(({ onDiameter: { least, nominal, most } }) => ({ least: least / 2, nominal: nominal / 2, most: most / 2 }))
    .reduce(
      (sum, { least, nominal, most }) => ({
        least: sum.least + Math.max(0, least),
        nominal: sum.nominal + Math.max(0, nominal),
        most: sum.most + Math.max(0, most),
      }),
      NOTHING,
    )
}

/** Growth of a face that is not finished again: of a flank, of the wall of a hole. */
export function faceGrowth({ part, growth }: FeaturesGiven, names: readonly string[]): Spread {
  const masked = part.hardening?.masked ?? []
  return growth && !names.some(name => masked.includes(name)) ? growth.face : NOTHING
}

/** Growth per side of a surface that lies in a band: as much as the band's own. */
export function floorGrowth(given: FeaturesGiven, name: string, side: TurnedSide, band: string): Spread {
  const { part, growth } = given
  if (!growth || part.hardening?.masked.includes(name)) return NOTHING
  return growth.bands.find(one => one.side === side && one.surface === band)?.growth ?? growth[side]
}

/** A figure of the stock or of hardening, as the workings name it. */
export const asKnown = (value: Millimetre, source: string): Known<'mm'> =>
  value === 0 ? none(source) : known(value, 'mm', { from: 'formula', source })

/** Whether the case reaches the feature at all. */
export const outward = (side: TurnedSide): 1 | -1 => (side === 'outside' ? 1 : -1)
