import { chiSquare, chiSquareApartBelow, fRatio, quantileOf } from '../handbook/chi-square.ts'
import type { Degree, Millimetre } from '../units.ts'
import { meanOf } from './learnt-growth.ts'

/** Ovality of the pieces of a load, as found after hardening. */
export type LearntOvality = {
  readonly pieces: number
  /** Of each of the two components. */
  readonly sigma: Millimetre
  /** 95 % of pieces lie below; with 95 % confidence below; the next piece; all of so many more. */
  readonly most: Millimetre
  readonly surely: Millimetre
  readonly next: Millimetre
  readonly all: Millimetre
  /** Where the pieces lean one way: how they stood can be designed out. */
  readonly leans?: {
    readonly by: Millimetre
    readonly at: Degree
    readonly F: number
    readonly most: Millimetre
    readonly all: Millimetre
  }
}

/** Rayleigh: share q of the lengths of a vector of two normal components lies below this many sigma. */
const rayleigh = (q: number): number => Math.sqrt(-2 * Math.log(1 - q))

/** From ovalities alone, no direction known: their components are normal with one spread. Range: one piece or more. */
export function ovalityFromLengths(ovalities: readonly Millimetre[], more: number): LearntOvality {
  const n = ovalities.length
  const squares = ovalities.reduce((sum, value) => sum + value ** 2, 0)
  const sigma = Math.sqrt(squares / (2 * n))
  const next = (q: number) => Math.sqrt(squares * (q ** (-1 / n) - 1))
  return {
    pieces: n,
    sigma,
    most: rayleigh(0.95) * sigma,
    surely: rayleigh(0.95) * Math.sqrt(squares / chiSquare(0.05, 2 * n)),
    next: next(0.05),
    all: next(0.05 / more),
  }
}

/** From two directions only, 90° apart: the difference is one component of the oval, and the oval is 1.25 times what was read. */
export function ovalityFromTwo(differences: readonly Millimetre[]): {
  readonly sigma: Millimetre
  readonly asRead: Millimetre
  readonly most: Millimetre
} {
  const sigma = Math.sqrt(differences.reduce((sum, value) => sum + value ** 2, 0) / differences.length)
  return { sigma, asRead: 1.959963985 * sigma, most: rayleigh(0.95) * sigma }
}

/** From the vectors, which show whether the pieces lean one way. Range: two pieces or more. */
export function ovalityFromVectors(
  vectors: readonly { readonly a: Millimetre; readonly c: Millimetre }[],
  more: number,
): LearntOvality {
  const lengths = vectors.map(({ a, c }) => Math.hypot(a, c))
  const plain = ovalityFromLengths(lengths, more)
  const n = vectors.length
  if (n < 2) return plain
  const [a, c] = [meanOf(vectors.map(vector => vector.a)), meanOf(vectors.map(vector => vector.c))]
  const by = Math.hypot(a, c)
  const squares = vectors.reduce((sum, vector) => sum + (vector.a - a) ** 2 + (vector.c - c) ** 2, 0)
  const sigma = Math.sqrt(squares / (2 * (n - 1)))
  const F = (n * by ** 2) / (2 * sigma ** 2)
  if (F <= fRatio(0.95, 2, 2 * n - 2)) return plain
  const at = ((Math.atan2(c, a) / 2) * 180) / Math.PI
  return {
    ...plain,
    sigma,
    leans: {
      by,
      at: at < 0 ? at + 180 : at,
      F,
      most: leaningMost(by, sigma, 0.95),
      all: by + sigma * Math.sqrt(2 * (1 + 1 / n) * fRatio(1 - 0.05 / more, 2, 2 * n - 2)),
    },
  }
}

/** Rice: share q of the lengths of a vector lies below this, its mean being `by` long. */
export const leaningMost = (by: Millimetre, sigma: Millimetre, q: number): Millimetre =>
  sigma * Math.sqrt(quantileOf(x => chiSquareApartBelow(x, 2, (by / sigma) ** 2), q))

/** An oval shorter than this many times the repeatability of one reading may be noise alone: 95 % of what noise shows. */
export const NOT_SEEN = 3.5
