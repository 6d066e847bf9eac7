import type { DrawnSize, Roughness } from './limits.ts'
import type { Millimetre } from './units.ts'

/** What a drawing asks of a surface beyond its size. Geometrical tolerances are zone widths, mm. */
export type Surface = {
  readonly roughness?: Roughness
  readonly cylindricity?: Millimetre
  readonly roundness?: Millimetre
  readonly runout?: Millimetre
  readonly flatness?: Millimetre
  readonly perpendicularity?: Millimetre
}

/** One diameter of the outside or the bore, over a stretch of the length. Depths count from the finished top face. */
export type Band = Surface & {
  readonly name: string
  readonly size: DrawnSize
  /** Depth at which the band begins: 0, or the `to` of the band above. */
  readonly from: Millimetre
  readonly to: DrawnSize
  /** Bore only: how much smaller on diameter the bore is at the top of the band than at its bottom. */
  readonly taper?: Millimetre
  /** Pointer into the part file, for findings: `/body/outside/0`. */
  readonly path: string
}

/** A stretch of the length: a drawn band ends at a toleranced depth, a band of a shape at a plain one. */
export type Stretch = { readonly from: Millimetre; readonly to: Millimetre | DrawnSize }

/** Depth at which a band ends, in the middle of what the drawing allows. */
const endOf = ({ to }: Stretch): Millimetre => (typeof to === 'number' ? to : to.nominal)

/**
 * The band at a depth: a band reaches from its upper end down to its lower one and not with it, so that a depth at a
 * shoulder is in the band below; the last takes its own end too. Nothing above the first band or below the last.
 */
export function bandAt<B extends Stretch>(bands: readonly B[], depth: Millimetre): B | undefined {
  const [first, last] = [bands[0], bands.at(-1)]
  if (!first || !last || depth < first.from || depth > endOf(last)) return undefined
  return nearestBandAt(bands, depth)
}

/** The same for a part that stands proud of its bands by stock on its faces: beyond the ends, the band that is nearest. */
export const nearestBandAt = <B extends Stretch>(bands: readonly B[], depth: Millimetre): B | undefined =>
  bands.find(band => depth < endOf(band)) ?? bands.at(-1)

/** Whether two stretches share more than an end. */
export const overlap = (one: Stretch, other: Stretch): boolean =>
  one.from < endOf(other) - TOUCHING && other.from < endOf(one) - TOUCHING

/** Ends that are the same but for how numbers are held, mm. */
const TOUCHING: Millimetre = 1e-9
