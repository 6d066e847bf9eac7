import type { Contact } from '../shop/firm.ts'
import type { Day, Kilogram } from '../units.ts'

/**
 * How a figure is meant. `asked`: what the firm is held to. `expected`: what the work should give; a reading to report.
 * `planned`: what we reckon with ourselves, for information. `given`: how things are when they come.
 */
export type Standing = 'asked' | 'expected' | 'planned' | 'given'

/** A figure of an order, read alike by machine and paper. Lengths are mm; the paper writes them in the units of its sheet. */
export type Quantity = {
  /** What it is a figure of: `bore Ø`, `case depth`. */
  readonly label: string
  /** The state in which it holds: `on arrival`, `as hardened`, `finished`. */
  readonly state?: string
  readonly standing: Standing
  readonly value?: number
  readonly least?: number
  readonly most?: number
  /** From the least to the most, where it is written as an upper tolerance. */
  readonly plus?: number
  /** `mm`, `µm`, `°C`, `h`; a hardness with its test load, `HV1`; nothing for a count. */
  readonly unit: string
  readonly places: number
  /** How two ends are written: from one to the other, as a depth with its upper tolerance, or as a size of a hole or shaft. */
  readonly written: 'range' | 'plus' | 'hole' | 'shaft'
}

/** One numbered point: a sentence a line, `{0}` standing for the first of its quantities. */
export type OrderPoint = {
  readonly number: number
  readonly title: string
  readonly text: readonly string[]
  readonly quantities: readonly Quantity[]
}

/** A size as the pieces bring it along, as the operation named left it. */
export type Arriving = Quantity & { readonly operation: number; readonly after: string }

/** What an operation of the visit must leave: least and most are what we judge by, inside the drawing's limits. */
export type Finished = Quantity & {
  readonly operation: number
  readonly limits: { readonly least?: number; readonly most?: number }
  /** Its number on the drawing. */
  readonly characteristic?: number
  /** What we shall judge it with, where that is settled. */
  readonly gauge?: string
  readonly pieces: number
  /** Worked over again in the same visit: the firm's own size on the way. */
  readonly onTheWay: boolean
}

/** A reading that the firm writes down and sends back. */
export type Returned = Quantity & {
  readonly number: number
  readonly of: 'piece' | 'coupon' | 'load'
  /** Its number on the drawing, where it stands there. */
  readonly characteristic?: number
  /** How many readings: of all pieces, of those that we mark, or one. */
  readonly readings: number
  /** What we shall judge it with, where that is settled. */
  readonly gauge?: string
}

/** Whoever orders, or is ordered from. What is not known is a blank to fill in. */
export type Party = Contact & { readonly name?: string }

/** Pieces by what is written on them: a run of numbers, or the marks of those that are no pieces of the batch proper. */
export type Marked = {
  readonly from?: number
  readonly to?: number
  readonly marks?: readonly string[]
  readonly what: string
}

/** What goes to a firm with the pieces: one visit, whatever is done there. */
export type OutsideOrder = {
  /** 1, 2, … in the order of the visits. */
  readonly number: number
  /** To be named on the telephone, on slip and invoice. */
  readonly reference: string
  readonly title: string
  readonly firm: string
  readonly from: Party
  readonly to: Party
  readonly operations: readonly number[]
  readonly part: { readonly number: string; readonly title: string; readonly revision: string }
  readonly batch: string
  readonly grade: string
  readonly heat?: string
  readonly pieces: number
  /** Which they are, once they are marked. */
  readonly which: readonly Marked[]
  /** As they come. */
  readonly mass: { readonly each: Kilogram; readonly all: Kilogram }
  readonly arrives: readonly Arriving[]
  readonly finish: readonly Finished[]
  readonly points: readonly OrderPoint[]
  readonly returns: readonly Returned[]
  readonly cautions: readonly string[]
  /** From the day after the firm has them to the day they are ready. */
  readonly leadTime: Day
  /** Whose days those are. */
  readonly counts: 'working days' | 'calendar days'
  /** By the firm's price list, for the pieces that are expected to come to it. */
  readonly price?: { readonly currency: string; readonly amount: number; readonly because: readonly string[] }
  /** To leave our house, and to be back in it, YYYY-MM-DD; without a start date a blank. */
  readonly sent?: string
  readonly due?: string
}
