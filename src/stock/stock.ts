import type { Figure } from '../known.ts'
import type { Limits, Spread } from '../limits.ts'
import type { SurfaceKind } from '../place.ts'
import type { Shape } from '../shape.ts'
import type { Millimetre, Vickers } from '../units.ts'
import type { Bears, Eats } from './margin-words.ts'
import type { Release } from './release.ts'

/**
 * Marginal: between what serves and what does not by less than the gauge can tell, or short only where a part grows least by a
 * range that nobody has measured.
 */
export type Verdict = 'ok' | 'marginal' | 'thin' | 'deep' | 'impossible'

/**
 * One finishing operation on one surface after hardening. For a face `perSide` is what comes off it, and `onDiameter` is
 * twice that, so that the two stand in the same ratio everywhere.
 */
export type StockEntry = {
  readonly surface: string
  readonly kind: SurfaceKind
  readonly operation: number
  readonly onDiameter: {
    readonly least: Millimetre
    readonly nominal: Millimetre
    readonly most: Millimetre
  }
  /** At the worst place: less, and plus, eccentricity and form error. */
  readonly perSide: {
    readonly least: Millimetre
    readonly most: Millimetre
    readonly needed: Millimetre
  }
  readonly margin: {
    readonly cleanUp: Millimetre
    readonly case?: Millimetre
    /** Honing of a plated bore: the least plating left beyond the least asked. */
    readonly plating?: Millimetre
  }
  /** Expected where most comes off, up to and with this operation, and the band of the models. */
  readonly hardnessAtFinish?: Vickers
  readonly hardnessBand?: { readonly low: Vickers; readonly high: Vickers }
  /** What the margin that fails first bears of each input alone; nothing where it has failed. */
  readonly bears?: Bears
  /** What becomes of the finished surface when the case of the other side is ground away. */
  readonly afterwards?: Omit<Release, 'surface'>
  /** What asks for most stock. */
  readonly eats?: Eats
  readonly verdict: Verdict
  /** What the per-side figures are made of. */
  readonly eccentricity: Millimetre
  readonly form: Millimetre
  /** What can be told of it in the work, a side, by the gauge of the size that it leaves and its expanded uncertainty. */
  readonly told: { readonly value: Millimetre; readonly gauge?: string; readonly uncertainty?: Millimetre }
  /** Of the stock on diameter: half widths about the middle, and what nearly all pieces have. */
  readonly spread?: {
    readonly worstCase: Millimetre
    readonly rootSumSquare: Millimetre
    readonly nearlyAll: NearlyAll
  }
  /** The figures it stands on, as they were used. */
  readonly basis?: readonly Figure[]
  /** What knowing the growth from a measured first article would save: stock on diameter, and case. */
  readonly firstArticle?: { readonly stock: Millimetre; readonly case?: Millimetre }
  /** For one piece, and for one or more in the batch. */
  readonly chance?: { readonly piece: StockChance; readonly batch?: StockChance }
}

/** The range that a share of all pieces lies in, as much left out on one side as on the other. */
export type NearlyAll = { readonly share: number; readonly least: Millimetre; readonly most: Millimetre }

export type StockChance = { readonly notCleanedUp: number; readonly tooLittleCase?: number }

/** The size ladder of one surface: its limits after every operation that changes it. */
export type Ladder = {
  readonly surface: string
  readonly kind: SurfaceKind
  readonly states: readonly (Limits & {
    readonly operation: number
    readonly name: string
    /** What the operation takes, per side, where it takes anything. */
    readonly taken?: { readonly least: Millimetre; readonly most: Millimetre }
    /** Least case below the surface as this operation leaves it, at the worst place. */
    readonly caseLeft?: Millimetre
  })[]
}

/** The part as the ports are milled into it. */
export type AsMilled = {
  /** Bore diameter at the middle of its tolerance at that operation. */
  readonly boreDiameter: Millimetre
  /** Outside diameter of the band each port breaks through is found from `shape`. */
  readonly shape: Shape
  /** How far the top face then stands above the finished one, seen from mid length. */
  readonly topStock: Millimetre
  /** The same seen from this depth of the finished part; absent where hardening stretches nothing between the faces. */
  readonly topStockAt?: (depth: Millimetre) => Millimetre
  /** A side, of the windows' own walls in hardening; absent where they are not treated. */
  readonly wallGrowth?: Spread
}
