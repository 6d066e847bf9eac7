import { type QuenchChange, quenchChange, quenchGrowth } from '../handbook/hardening-growth.ts'
import { throughHardened } from '../handbook/through-hardening.ts'
import { fromHandbook, fromPart, type KnownSpread, known, worked } from '../known.ts'
import type { Part } from '../part/part.ts'
import { comesHard } from '../part/takes-case.ts'
import { carburisedShape } from '../route/carburised-quench.ts'
import { shapeInQuench } from '../route/quenched-length.ts'
import type { Notebook } from '../working.ts'
import { boreOf, seatOf, treatedSides } from './case-surfaces.ts'
import { chooseTemper } from './choose-temper.ts'
import type { BandGrowth, Growth } from './growth.ts'

export const quenchedShare = (part: Part): QuenchChange | undefined =>
  part.hardening &&
  quenchChange({
    process: part.hardening.process,
    grade: part.material.grade,
    ...shapeInQuench(part),
    boreHardened: treatedSides(part).bore,
    carburised: carburisedShape(part),
    austenite: chooseTemper(part)?.stabilised ? throughHardened(part.material.grade)?.austenite : undefined,
  })

/** A quenched part changes as a whole, masked or not: where the outside gets larger the bore does too. */
export function quenchedGrowth(notebook: Notebook, part: Part): Growth | undefined {
  const change = quenchedShare(part)
  if (!change) return undefined
  const none: KnownSpread = { least: 0, nominal: 0, most: 0, ...worked('not there') }
  const bands = (['outside', 'bore'] as const).flatMap(side =>
    part[side].map(({ name, size, path }): BandGrowth => {
      const about = { about: `growth of ${name}` }
      const D = known(size.nominal, 'mm', fromPart(path))
      const at = (end: 'least' | 'nominal' | 'most') =>
        notebook.use(quenchGrowth, { c: known(change[side][end], '', fromHandbook(change.source)), D }, about)
      const moves = { least: at('least'), nominal: at('nominal'), most: at('most') }
      const origin = worked(`${quenchGrowth.symbol}, ${quenchGrowth.meaning}`)
      const growth =
        side === 'outside'
          ? { ...moves, ...origin }
          : { least: -moves.most, nominal: -moves.nominal, most: -moves.least, ...origin }
      return { surface: name, side, takesCase: comesHard(part, side, name), growth, wallMoves: moves }
    }),
  )
  const of = (side: BandGrowth['side'], name: string | undefined) =>
    bands.find(band => band.side === side && band.surface === name)?.growth ?? none
  return {
    outside: of('outside', seatOf(part)?.name),
    bore: of('bore', boreOf(part)?.name),
    bands,
    face: { ...none, ...worked('a quenched part grows by its length, not at its faces') },
    along: { ...change.length, ...fromHandbook(change.source) },
    sections: [],
  }
}
