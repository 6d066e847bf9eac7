import { CLOSEST_SET_UP } from '../handbook/process-limits.ts'
import type { Millimetre } from '../units.ts'

/** One surface of one piece as it came back from hardening, and the operation that is to finish it. */
export type InHand = {
  readonly kind: 'outside' | 'bore'
  /** Of all places, the gauge's uncertainty taken off the least and added to the most. */
  readonly least: Millimetre
  readonly most: Millimetre
  /** Axis off straight, with the height of odd lobes, which no diameter shows. */
  readonly bow: Millimetre
  /** Radial, as the set-up is planned. */
  readonly eccentricity: Millimetre
  /** Layer and roughness that must go, a side. */
  readonly toRemove: Millimetre
  /** Certified least depth, and what must be left of it with all that a later operation takes; absent where no depth is asked. */
  readonly case?: { readonly certified: Millimetre; readonly wanted: Millimetre }
  readonly lower: Millimetre
  readonly upper: Millimetre
  readonly guard: Millimetre
}

export type PieceVerdict =
  | 'grind as planned'
  | 'part of the limits only'
  | 'set true'
  | 'cannot clean up'
  | 'case too thin'
  | 'too oval or bowed for its case'

export type PieceWindow = {
  /** Sizes that clean up and keep the case; absent where none does. Rounded inward to a micrometre. */
  readonly from?: Millimetre
  readonly to?: Millimetre
  /** The same unrounded: from over to where there is none. */
  readonly exact: { readonly from: Millimetre; readonly to: Millimetre }
  /** Radial eccentricity that it bears, by what sets each bound. */
  readonly bears: {
    readonly clean: Millimetre
    readonly case?: Millimetre
    readonly both?: Millimetre
    readonly most: Millimetre
  }
  readonly verdict: PieceVerdict
  /** Narrower than a grinder holds. */
  readonly narrow: boolean
}

/** A grinder holds no less on diameter. Estimate. */
const HELD: Millimetre = 0.006

/**
 * Sizes to which a piece can be finished so that it cleans up everywhere and keeps its case, and the eccentricity it bears: derived
 * from the least and the most that comes off at the worst place.
 */
export function pieceWindow(piece: InHand): PieceWindow {
  const { kind, least, most, bow, eccentricity: e, toRemove: r, lower, upper, guard } = piece
  const spare = piece.case ? piece.case.certified - piece.case.wanted : Number.POSITIVE_INFINITY
  const outside = kind === 'outside'
  const exact = outside
    ? {
        from: Math.max(lower + guard, most + 2 * e + bow - 2 * spare),
        to: Math.min(upper - guard, least - 2 * e - bow - 2 * r),
      }
    : {
        from: Math.max(lower + guard, most + 2 * e + bow + 2 * r),
        to: Math.min(upper - guard, least - 2 * e - bow + 2 * spare),
      }
  const clean = (outside ? least - lower - guard : upper - guard - most) / 2 - bow / 2 - r
  const held = spare - (outside ? most - upper + guard : lower + guard - least) / 2 - bow / 2
  const both = (spare - r) / 2 - (most - least) / 4 - bow / 2
  const bears = Math.min(clean, held, both)
  const whole = exact.from <= lower + guard + 1e-9 && exact.to >= upper - guard - 1e-9
  const empty = exact.from > exact.to + 1e-9
  const binding =
    bears === clean ? 'cannot clean up' : bears === held ? 'case too thin' : 'too oval or bowed for its case'
  return {
    ...(!empty && { from: Math.ceil(exact.from * 1e3 - 1e-6) / 1e3, to: Math.floor(exact.to * 1e3 + 1e-6) / 1e3 }),
    exact,
    bears: { clean, ...(piece.case && { case: held, both }), most: bears },
    verdict: empty
      ? bears >= CLOSEST_SET_UP - 1e-9
        ? 'set true'
        : binding
      : whole
        ? 'grind as planned'
        : 'part of the limits only',
    narrow: !empty && !whole && exact.to - exact.from < HELD - 1e-9,
  }
}

/** Least and most that comes off a side, ground to that size. */
export const takenAt = (piece: InHand, size: Millimetre): { readonly least: Millimetre; readonly most: Millimetre } => {
  const { kind, least, most, bow, eccentricity } = piece
  const [low, high] = kind === 'outside' ? [least - size, most - size] : [size - most, size - least]
  return { least: low / 2 - eccentricity - bow / 2, most: high / 2 + eccentricity + bow / 2 }
}

/** Classes by the most in steps of 0.02 mm. Common practice, no source. */
const CLASS: Millimetre = 0.02

export type GrindingTurn = { readonly serial: string; readonly inHand: InHand; readonly window: PieceWindow }

/**
 * Pieces in the order to grind them: most stock first, which bears an error, by classes and in a class by serial; those that need
 * truing up as one lot, and those with a narrow window last, when the machine has settled. Lost ones are left out.
 */
export function grindingOrder<T extends GrindingTurn>(pieces: readonly T[]): readonly T[] {
  const lot = ({ window }: T): number =>
    window.verdict === 'grind as planned' ? 0 : window.verdict === 'set true' ? 1 : window.narrow ? 3 : 2
  const stock = ({ inHand }: T): number =>
    inHand.kind === 'outside' ? Math.floor(inHand.most / CLASS) : -Math.ceil(inHand.least / CLASS)
  return pieces
    .filter(({ window }) => window.from !== undefined || window.verdict === 'set true')
    .toSorted(
      (one, other) =>
        lot(one) - lot(other) ||
        stock(other) - stock(one) ||
        one.serial.localeCompare(other.serial, 'en', { numeric: true }),
    )
}
