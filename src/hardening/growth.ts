import type { KnownSpread, Origin } from '../known.ts'
import type { Spread } from '../limits.ts'
import type { Millimetre } from '../units.ts'

/** A share of a length, or a stress in MPa, with its range. */
export type ShareSpread = { readonly [end in keyof Spread]: number } & Origin

/** One band of one side. */
export type BandGrowth = {
  readonly surface: string
  readonly side: 'outside' | 'bore'
  /** Neither masked by its own name nor with its side. */
  readonly takesCase: boolean
  /** Per side, positive where metal grows; over the whole band. */
  readonly growth: KnownSpread
  /** How far the wall moves outward, its share in that. */
  readonly wallMoves: Spread
}

/** A length of one wall, and how much it stretches along for what the whole part does on the mean. */
export type StretchedSection = { readonly to: Millimetre; readonly share: number }

/**
 * What hardening does to the sizes of a part: every band by its own wall, every face, and the metal between. `outside` and
 * `bore` are those of the longest band of the side.
 */
export type Growth = {
  readonly outside: KnownSpread
  readonly bore: KnownSpread
  readonly bands: readonly BandGrowth[]
  /** Of a treated face, out of the metal. */
  readonly face: KnownSpread
  /** Mean stretch along the part, a share of its length. */
  readonly along: ShareSpread
  readonly sections: readonly StretchedSection[]
}

/**
 * A depth below the top face as far as it stretches: the length of mean stretch that moves as much. A share is that of its
 * section, so a thick flange counts for less than a thin skirt.
 */
export function stretchedDepth(sections: readonly StretchedSection[], depth: Millimetre): Millimetre {
  let from = 0
  let reached = 0
  for (const [index, { to, share }] of sections.entries()) {
    const end = index === sections.length - 1 ? depth : Math.min(to, depth)
    if (end <= from) break
    reached += (end - from) * share
    from = end
  }
  return sections.length === 0 ? depth : reached
}
