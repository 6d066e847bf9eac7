import type { Band } from '../band.ts'
import { bandAt } from '../band.ts'
import type { FaceLoad, ShellBand } from '../handbook/shell-of-bands.ts'
import type { Part } from '../part/part.ts'
import { takesCase } from '../part/takes-case.ts'
import type { Millimetre } from '../units.ts'

/** A length of the part with one outside, one bore and one case. */
export type WallSection = {
  readonly from: Millimetre
  readonly to: Millimetre
  readonly outside: Band
  readonly bore?: Band
  /** Mean radius and wall; of a solid part those of the ring that its section would make rolled out on its skin. */
  readonly R: Millimetre
  readonly t: Millimetre
  readonly treated: { readonly outside: boolean; readonly bore: boolean }
}

/** The part cut wherever its outside or its bore changes. */
export function wallsAlong(part: Part): readonly WallSection[] {
  const ends = [...part.outside, ...part.bore].map(({ to }) => to.nominal)
  const places = [...new Set([0, ...ends])].filter(z => z <= part.length.nominal + 1e-9).toSorted((a, b) => a - b)
  return places.slice(1).flatMap((to, index): readonly WallSection[] => {
    const from = places[index] ?? 0
    const middle = (from + to) / 2
    const outside = bandAt(part.outside, middle)
    const bore = bandAt(part.bore, middle)
    if (!outside || to - from < 1e-9) return []
    const D = outside.size.nominal
    const d = bore?.size.nominal ?? 0
    return [
      {
        from,
        to,
        outside,
        ...(bore && { bore }),
        R: (D + d) / 4,
        t: bore ? (D - d) / 2 : D / 4,
        treated: {
          outside: takesCase(part, 'outside', outside.name),
          bore: bore !== undefined && takesCase(part, 'bore', bore.name),
        },
      },
    ]
  })
}

/** The sections as a shell whose case has a force of one for each mm of its depth. */
export const shellBands = (sections: readonly WallSection[], depth: Millimetre): readonly ShellBand[] =>
  sections.map(({ from, to, R, t, treated }) => {
    const layer = (open: boolean) => (open ? { F: 1, h: depth } : { F: 0, h: 0 })
    return { from, to, R, t, outside: layer(treated.outside), bore: layer(treated.bore) }
  })

/** Treated faces: both ends, and the flanks of every step. A flank belongs to the band that stands out. */
export function faceLoads(part: Part, sections: readonly WallSection[]): readonly FaceLoad[] {
  const masked = new Set(part.hardening?.masked ?? [])
  const [first, last] = [sections[0], sections.at(-1)]
  if (!first || !last) return []
  const end = (name: string, { R, t }: WallSection, at: Millimetre): readonly FaceLoad[] =>
    masked.has(name) ? [] : [{ at, F: 1, height: t, R }]
  const flank = (at: Millimetre, one: Millimetre, other: Millimetre): FaceLoad => ({
    at,
    F: 1,
    height: Math.abs(one - other) / 2,
    R: (one + other) / 4,
  })
  const steps = sections.slice(1).flatMap((section, index): readonly FaceLoad[] => {
    const before = sections[index]
    if (!before) return []
    const [D, Db] = [section.outside.size.nominal, before.outside.size.nominal]
    const [d, db] = [section.bore?.size.nominal ?? 0, before.bore?.size.nominal ?? 0]
    const proud = D > Db ? section : before
    const narrow = d < db ? section : before
    return [
      ...(D !== Db && proud.treated.outside ? [flank(section.from, D, Db)] : []),
      ...(d !== db && narrow.treated.bore ? [flank(section.from, d, db)] : []),
    ]
  })
  return [...end('top', first, first.from), ...steps, ...end('bottom', last, last.to)]
}

/** How many sides of a wall take case. */
export const sidesIn = ({ treated }: WallSection): number => Number(treated.outside) + Number(treated.bore)
