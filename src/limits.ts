import type { Micrometre, Millimetre } from './units.ts'

/** A size to hold: what the drawing calls it and the two limits. */
export type Limits = {
  readonly nominal: Millimetre
  readonly lower: Millimetre
  readonly upper: Millimetre
}

/** A size as the part file has it, with the text it was written as (`48 H6`, `92 ±0.05`). */
export type DrawnSize = Limits & { readonly written: string }

/** Width of the tolerance. */
export const toleranceOf = (size: Limits): Millimetre => size.upper - size.lower
/** Middle of the tolerance: where a set-up aims. */
export const middleOf = (size: Limits): Millimetre => (size.upper + size.lower) / 2
/** Both limits moved by the same amount. */
export const shifted = (size: Limits, by: Millimetre): Limits => ({
  nominal: size.nominal + by,
  lower: size.lower + by,
  upper: size.upper + by,
})
/** Limits from the two ends, nominal in the middle. */
export const between = (lower: Millimetre, upper: Millimetre): Limits => ({
  nominal: (lower + upper) / 2,
  lower,
  upper,
})

export type Roughness = Micrometre

/** A figure that is not known to a point. */
export type Spread = {
  readonly least: Millimetre
  readonly nominal: Millimetre
  readonly most: Millimetre
}
