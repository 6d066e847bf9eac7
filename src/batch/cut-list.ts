import { barMass, blankLength, blankPitch, blanksFromBar, offcutLength } from '../handbook/bar-cutting.ts'
import { fromHandbook, known, type Told, told, worked } from '../known.ts'
import { habit } from '../shop/habit.ts'
import type { Shop } from '../shop/shop.ts'
import type { Kilogram, Millimetre } from '../units.ts'
import { type Notebook, reckoned } from '../working.ts'

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

/** Diameter and density, g/cm³. */
type Bar = { readonly d: Told<Millimetre>; readonly rho: Told }

const ON_LAST = worked('blanks from the last bar')
const ROUGH_TURNED = worked('longest part as rough turned')

/** What to set at the saw, and how many bars that takes. No pieces from a bar when the blank is longer than the bar allows. */
export function cutList({
  length,
  start,
  bar: { d, rho },
  shop,
  notebook,
}: {
  readonly length: Millimetre
  readonly start: number
  readonly bar: Bar
  readonly shop: Pick<Shop, 'habits' | 'set'>
  readonly notebook: Notebook
}): CutList {
  const about = { about: 'bar' }
  const [k, a] = [habit(shop, 'sawKerf', 'mm'), habit(shop, 'facingAllowance', 'mm')]
  const [L, r] = [habit(shop, 'barLength', 'mm'), habit(shop, 'barRemnant', 'mm')]
  const t = known(SAWN_LENGTH_TOLERANCE, 'mm', fromHandbook('common practice, no source'))
  const L_b = reckoned(notebook, blankLength, { L: known(length, 'mm', ROUGH_TURNED), a, t }, about)
  const p = reckoned(notebook, blankPitch, { L_b, t, k }, about)
  const piecesPerBar = Math.max(0, notebook.use(blanksFromBar, { L, f: k, r, p }, about))
  const bars = piecesPerBar === 0 ? 0 : Math.ceil(start / piecesPerBar)
  const onLast = piecesPerBar === 0 ? 0 : start - (bars - 1) * piecesPerBar
  return {
    blankLength: L_b.value,
    lower: L_b.value - SAWN_LENGTH_TOLERANCE / 2,
    upper: L_b.value + SAWN_LENGTH_TOLERANCE / 2,
    pitch: p.value,
    piecesPerBar,
    bars,
    barLength: L.value,
    offcut: notebook.use(offcutLength, { L, f: k, p, ...told(ON_LAST, { n: onLast }) }, about),
    blankMass: notebook.use(barMass, { d, L: L_b, rho }, { about: 'blank' }),
    mass: bars * notebook.use(barMass, { d, L, rho }, about),
  }
}
