import type { CasePlan } from '../hardening/case-plan.ts'
import type { PlacedLadder, PlacedSize } from '../inspection/size-places.ts'
import type { PlatingPlan } from '../plating/plating-plan.ts'
import type { Operation } from '../route/operation.ts'
import type { StockEntry } from '../stock/stock.ts'

/** One numbered point of an order, a sentence a line. */
export type OrderField = { readonly label: string; readonly text: readonly string[] }

/** How the paper writes lengths: millimetres or inches, limits in the order in which they are met. */
export type OrderFigures = {
  readonly unit: string
  readonly length: (millimetre: number, places?: number) => string
  readonly limits: (
    size: { readonly lower: number; readonly upper: number },
    order: 'hole' | 'shaft',
    places: number,
  ) => string
}

/** What of the plan an order is written from. A whole plan will do. */
export type OrderSource = {
  readonly part: { readonly number: string; readonly title: string; readonly revision: string }
  readonly batch: { readonly number: string; readonly start: number; readonly heat?: string }
  readonly material: { readonly grade: string }
  readonly ladders: readonly PlacedLadder[]
  readonly stock: readonly StockEntry[]
  readonly case?: CasePlan
  readonly plating?: PlatingPlan
  readonly ports: readonly unknown[]
  readonly inspection: {
    readonly characteristics: readonly {
      readonly name: string
      readonly operation: number
      readonly lower?: number
      readonly upper?: number
      readonly unit: string
    }[]
  }
}

export type OrderedOperation = Operation & { readonly sizes: readonly PlacedSize[] }

/** Limits of each surface, or of those named, as it stands when the operation begins. */
export function arrivingSizes(
  { ladders }: OrderSource,
  number: number,
  figures: OrderFigures,
  named?: readonly string[],
): readonly string[] {
  const wanted = named ? ladders.filter(({ surface }) => named.includes(surface)) : ladders
  return wanted.flatMap(({ surface, kind, states }) => {
    const state = states.findLast(({ operation }) => operation < number)
    if (!state) return []
    const limits = figures.limits(state, kind === 'bore' ? 'hole' : 'shaft', state.places)
    return [`${kind === 'face' ? `length over the ${surface}` : `${surface} Ø`} ${limits} ${figures.unit}`]
  })
}

/** The first cut after hardening on each surface: what the hardener's distortion eats into. */
export const firstCuts = ({ stock }: OrderSource): readonly StockEntry[] =>
  stock.filter((entry, index) => stock.findIndex(({ surface }) => surface === entry.surface) === index)

export const identity = ({ part, batch }: OrderSource): readonly string[] => [
  `${part.number} ${part.title}, drawing revision ${part.revision}.`,
  `Batch ${batch.number}, ${batch.start} pieces. ${batch.heat === undefined ? 'Heat number as marked on the pieces.' : `Heat ${batch.heat}.`}`,
]

/** `a`, `a and b`, `a, b and c`. */
export function listed(items: readonly string[]): string {
  const last = items.at(-1) ?? ''
  return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} and ${last}`
}

export const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`
