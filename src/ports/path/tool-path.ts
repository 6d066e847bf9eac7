import type { Degree, Millimetre } from '../../units.ts'
import type { Flat } from './closed-line.ts'

/** A place of the cutter's tip centre in the set-up's machine frame. */
export type TipPlace = Flat & { readonly z: Millimetre }

/** Is told every straight move of a cut in turn: its end, its share of the cut's feed, and whether nothing is cut on it. */
export type Visit = (at: TipPlace, share: number, clear: boolean) => void

/** What becomes of the piece inside: it stays whole and is taken out by hand, or there is none and all is cut away. */
export type Slug = 'kept' | 'cut away'

/** How a cutter goes in one cut of a window: all that its path needs beside the window itself. */
export type CutShape =
  | {
      /** A level place for the drill on a slope; or all the way through where there is no drill. */
      readonly kind: 'flat' | 'wind down'
      readonly cutter: Millimetre
      readonly hole: Millimetre
      readonly ramp: Degree
    }
  | {
      readonly kind: 'drill'
      readonly cutter: Millimetre
      /** First and last stretch at a share of the feed. */
      readonly slowIn: { readonly length: Millimetre; readonly share: number }
      readonly slowOut: { readonly length: Millimetre; readonly share: number }
    }
  | {
      /** One path: the last `throughLevels` of its `levels` are the cut through. */
      readonly kind: 'rough' | 'cut through'
      readonly cutter: Millimetre
      readonly wallStock: Millimetre
      readonly slug: Slug
      readonly levels: number
      readonly throughLevels: number
      /** Of the feed, straight down. */
      readonly downShare: number
      /** Of the feed, over what is cut already: as quick as is careful. */
      readonly clearShare: number
      /** Down from level to level on a ramp along the way itself; absent where it goes down in the entry hole. */
      readonly down?: { readonly angle: Degree; readonly share: number }
    }
  | (AlongWall & {
      /** The spring pass goes the whole way again. */
      readonly kind: 'finish' | 'spring'
      /** Radius that a cutter too large for the corners leaves in them for the next one; absent where it reaches them. */
      readonly rounded?: Millimetre
    })
  | (AlongWall & InCorners & { readonly kind: 'finish corners' | 'spring corners' })
  | (AlongWall &
      InCorners & {
        readonly kind: 'clear corners'
        /** Stock that each of its ways along the wall leaves, the first the most. */
        readonly stocks: readonly Millimetre[]
      })

type AlongWall = {
  readonly cutter: Millimetre
  readonly levels: number
  readonly downShare: number
  readonly clearShare: number
  /** Radius of the arcs on which it comes to the wall and leaves it; 0 where none has room: then straight. */
  readonly arc: Millimetre
}

type InCorners = {
  /** What a larger cutter left in the corners: its diameter, and the radius that it rounded them by. */
  readonly after: Millimetre
  readonly rounded: Millimetre
  /** Side of the window, in machine X, whose edge times the port: it is passed without leaving the wall. */
  readonly timing: TimingSide
}

export type TimingSide = '+X' | '-X'

/** The way of one cut: rapid over `entry` and down to `from`, then at feed. */
export type CutPath = {
  readonly entry: Flat
  readonly from: Millimetre
  readonly follow: (visit: Visit) => void
}
