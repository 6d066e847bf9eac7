import {
  asDrawn,
  inwardLimits,
  length,
  outwardLimits,
  plusBetween,
  roundedDown,
  roundedUp,
  type Units,
  unitOf,
} from '../../figures.ts'
import type { Limits } from '../../limits.ts'
import type { Written } from '../../place.ts'

/** Figures as a sheet prints them, in the units that it was asked for. */
export type PaperFigures = {
  /** Head of a column of lengths. */
  readonly unit: 'mm' | 'in'
  readonly length: (millimetre: number, places?: number) => string
  /** A size as the drawing writes it, its millimetres marked on a sheet in inches. */
  readonly drawn: (written: string) => string
  /** Both limits, never printed outside themselves: the lower is rounded up and the upper down. */
  readonly limits: (size: Pick<Limits, 'lower' | 'upper'>, order: Order, places: number) => string
  /** Both limits of what comes in, never printed inside themselves. */
  readonly outward: (size: Pick<Limits, 'lower' | 'upper'>, order: Order, places: number) => string
  readonly notOver: (millimetre: number, places: number) => string
  readonly notUnder: (millimetre: number, places: number) => string
  /** An upper tolerance on the lower of two ends as they are written. */
  readonly plus: (millimetre: number, low: string, high: string) => string
}

/** Which limit is met first while metal goes: the smaller of a hole, the larger of a shaft. */
export type Order = Written

export function paperFigures(units: Units): PaperFigures {
  return {
    unit: unitOf(units),
    length: (millimetre, places) => length(millimetre, units, places),
    drawn: written => asDrawn(written, units),
    limits: ({ lower, upper }, order, places) => inOrder(inwardLimits(lower, upper, places, units), order),
    outward: ({ lower, upper }, order, places) => inOrder(outwardLimits(lower, upper, places, units), order),
    notOver: (millimetre, places) => roundedDown(millimetre, places, units),
    notUnder: (millimetre, places) => roundedUp(millimetre, places, units),
    plus: (millimetre, low, high) => plusBetween(millimetre, low, high, units),
  }
}

const inOrder = ([low, high]: readonly [string, string], order: Order): string =>
  order === 'hole' ? pair(low, high) : pair(high, low)

/** Two limits stay on one line. */
export const pair = (first: string, second: string): string => `${first}\u00a0/\u00a0${second}`

/** A dash where there is no figure: an empty cell might be taken for one to fill in. */
export const DASH = '–'
