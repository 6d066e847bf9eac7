import type { Shape } from '../shape.ts'
import type { Millimetre } from '../units.ts'

/** A stretch of one diameter that an operation changes. */
export type BandCut = {
  readonly feature: string
  readonly kind: 'outside' | 'bore'
  readonly from: Millimetre
  readonly to: Millimetre
  readonly length: Millimetre
  /** Depths of its ends below the finished top face. */
  readonly top: Millimetre
  readonly bottom: Millimetre
}

export type FaceCut = {
  readonly feature: 'top' | 'bottom'
  readonly stock: Millimetre
  readonly outside: Millimetre
  /** 0 where the part is solid. */
  readonly bore: Millimetre
}

/** Under this nothing is cut: sizes that an operation leaves alone. */
const NOTHING: Millimetre = 1e-6

/** What an operation takes off the outside: from the greatest diameter that stood over each band. */
export const outsideCuts = (before: Shape, after: Shape): readonly BandCut[] =>
  after.outside.flatMap(band => {
    const from = Math.max(...before.outside.filter(old => overlaps(old, band)).map(({ diameter }) => diameter))
    return from - band.diameter > NOTHING ? [bandCut('outside', band, from)] : []
  })

/** What an operation takes out of the bore, from a solid part too: then from the hole drilled through it. */
export const boreCuts = (before: Shape, after: Shape, drilled: Millimetre = 0): readonly BandCut[] =>
  after.bore.flatMap(band => {
    const old = before.bore.filter(stretch => overlaps(stretch, band)).map(({ diameter }) => diameter)
    const from = old.length > 0 ? Math.min(...old) : drilled
    return band.diameter - from > NOTHING ? [bandCut('bore', band, from)] : []
  })

export const faceCuts = (before: Shape, after: Shape): readonly FaceCut[] => {
  const outside = Math.max(...before.outside.map(({ diameter }) => diameter))
  const bore = before.bore.length > 0 ? Math.min(...before.bore.map(({ diameter }) => diameter)) : 0
  const faces = [
    { feature: 'top', stock: after.top - before.top, outside, bore },
    { feature: 'bottom', stock: before.bottom - after.bottom, outside, bore },
  ] as const
  return faces.filter(({ stock }) => stock > NOTHING)
}

type Stretch = { readonly from: Millimetre; readonly to: Millimetre }

/** More than touching: a shoulder moved by a facing cut is not a band over it. */
const overlaps = (a: Stretch, b: Stretch): boolean => {
  const shared = Math.min(a.to, b.to) - Math.max(a.from, b.from)
  return shared > 0.5 * Math.min(a.to - a.from, b.to - b.from)
}

const bandCut = (
  kind: BandCut['kind'],
  { name, from: top, to: bottom, diameter }: Shape['outside'][number],
  from: Millimetre,
): BandCut => ({ feature: name, kind, from, to: diameter, length: bottom - top, top, bottom })
