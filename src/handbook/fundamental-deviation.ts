import type { Micrometre } from '../units.ts'
import type { NominalRange } from './nominal-range.ts'

/**
 * Fundamental deviations of shafts, µm, by nominal size, mm: the upper one (es) of f and g, the lower one (ei) of k, m, n
 * and p. That of h is nought, and js lies evenly about nought. `k` is that of IT4 to IT7; in any other grade it is nought.
 * From six public tables that cite ISO 286-1, which agree; tables that put f and g a row out were left aside.
 */
export const SHAFT_DEVIATIONS = {
  source: 'ISO 286-1:1988, fundamental deviations, from public reprints',
  rows: [
    { over: 0, upTo: 3, f: -6, g: -2, k: 0, m: 2, n: 4, p: 6 },
    { over: 3, upTo: 6, f: -10, g: -4, k: 1, m: 4, n: 8, p: 12 },
    { over: 6, upTo: 10, f: -13, g: -5, k: 1, m: 6, n: 10, p: 15 },
    { over: 10, upTo: 18, f: -16, g: -6, k: 1, m: 7, n: 12, p: 18 },
    { over: 18, upTo: 30, f: -20, g: -7, k: 2, m: 8, n: 15, p: 22 },
    { over: 30, upTo: 50, f: -25, g: -9, k: 2, m: 9, n: 17, p: 26 },
    { over: 50, upTo: 80, f: -30, g: -10, k: 2, m: 11, n: 20, p: 32 },
    { over: 80, upTo: 120, f: -36, g: -12, k: 3, m: 13, n: 23, p: 37 },
    { over: 120, upTo: 180, f: -43, g: -14, k: 3, m: 15, n: 27, p: 43 },
    { over: 180, upTo: 250, f: -50, g: -15, k: 4, m: 17, n: 31, p: 50 },
  ],
} as const

export type ShaftLetter = 'f' | 'g' | 'h' | 'js' | 'k' | 'm' | 'n' | 'p'
export type HoleLetter = 'F' | 'G' | 'H' | 'JS' | 'K' | 'M' | 'N' | 'P'
export type DeviationRow = NominalRange & {
  readonly [letter in Exclude<ShaftLetter, 'h' | 'js'>]: Micrometre
}
