import type { Millimetre } from '../../units.ts'
import type { Flat } from './offset-loops.ts'

/** A place of the cutter's tip centre in the set-up's machine frame. */
export type TipPlace = Flat & { readonly z: Millimetre }

/** One way round at feed, closed: ends where it begins. */
export type Pass = readonly TipPlace[]

export type ToolPath = {
  readonly cutter: Millimetre
  /** Where the cutter goes down in the drilled hole, and from how high it feeds. */
  readonly entry: Flat
  readonly feedFrom: Millimetre
  readonly drill: { readonly diameter: Millimetre; readonly to: Millimetre }
  readonly rough: readonly Pass[]
  readonly finish: readonly Pass[]
  /** The last finishing pass once more, at no depth. */
  readonly spring: Pass
  /** What becomes of the piece inside: cut away whole, or kept by a skin until the finishing pass frees it. */
  readonly slug: 'cleared' | 'kept'
  /** Lowest place of the tip. */
  readonly deepest: Millimetre
}
