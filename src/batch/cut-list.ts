import { barMass, blankLength, blankPitch, blanksFromBar, offcutLength } from '../handbook/bar-cutting.ts'
import type { Habits } from '../shop/shop.ts'
import type { Kilogram, Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'

/** Tolerance of a sawn length, common practice, no source. */
export const SAWN_LENGTH_TOLERANCE: Millimetre = 1

export type CutList = {
  readonly blankLength: Millimetre
  readonly lower: Millimetre
  readonly upper: Millimetre
  readonly pitch: Millimetre
  readonly piecesPerBar: number
  readonly bars: number
  readonly barLength: Millimetre
  /** Left of the last bar. */
  readonly offcut: Millimetre
  readonly blankMass: Kilogram
  readonly mass: Kilogram
}

type Cutting = Pick<Habits, 'sawKerf' | 'facingAllowance' | 'barLength' | 'barRemnant'>
type Bar = { readonly diameter: Millimetre; readonly density: number }

/** What to set at the saw, and how many bars that takes. No pieces from a bar when the blank is longer than the bar allows. */
export function cutList({
  length,
  start,
  bar: { diameter: d, density: rho },
  cutting: { sawKerf: k, facingAllowance: a, barLength: L, barRemnant: r },
  notebook,
}: {
  readonly length: Millimetre
  readonly start: number
  readonly bar: Bar
  readonly cutting: Cutting
  readonly notebook: Notebook
}): CutList {
  const about = { about: 'bar' }
  const t = SAWN_LENGTH_TOLERANCE
  const L_b = notebook.use(blankLength, { L: length, a, t }, about)
  const pitch = notebook.use(blankPitch, { L_b, t, k }, about)
  const piecesPerBar = Math.max(0, notebook.use(blanksFromBar, { L, f: k, r, p: pitch }, about))
  const bars = piecesPerBar === 0 ? 0 : Math.ceil(start / piecesPerBar)
  const onLast = piecesPerBar === 0 ? 0 : start - (bars - 1) * piecesPerBar
  return {
    blankLength: L_b,
    lower: L_b - t / 2,
    upper: L_b + t / 2,
    pitch,
    piecesPerBar,
    bars,
    barLength: L,
    offcut: notebook.use(offcutLength, { L, f: k, n: onLast, p: pitch }, about),
    blankMass: notebook.use(barMass, { d, L: L_b, rho }, { about: 'blank' }),
    mass: bars * notebook.use(barMass, { d, L, rho }, about),
  }
}
