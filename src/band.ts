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
