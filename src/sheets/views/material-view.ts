import { mass } from '../../figures.ts'
import type { Plan } from '../../plan/plan.ts'
import type { PaperFigures } from './paper-figures.ts'
import { sizeRows } from './size-rows.ts'

export type MaterialView = {
  readonly unit: string
  readonly grade: string
  readonly supply: string
  readonly barDiameter: string
  readonly barLength: string
  readonly bars: string
  readonly mass: string
  readonly blankMass: string
  readonly blank: string
  readonly pitch: string
  readonly offcut: string
  readonly start: string
  readonly heat: string
  readonly because: readonly string[]
  /** One row a bar, numbered. */
  readonly cuts: readonly { readonly bar: string; readonly upTo: string }[]
  /** Piece numbers, in two columns. */
  readonly left: readonly string[]
  readonly right: readonly string[]
}

export function materialView(plan: Plan, figures: PaperFigures): MaterialView {
  const { material, batch } = plan
  const { length, unit } = figures
  const saw = plan.operations.find(({ purpose }) => purpose === 'saw-blanks')
  const [sawn] = saw ? sizeRows(saw, figures) : []
  const pieces = Array.from({ length: batch.start }, (_, index) => String(index + 1))
  const half = Math.ceil(pieces.length / 2)
  return {
    unit,
    grade: material.grade,
    supply: material.barSupply,
    barDiameter: length(material.barDiameter, 1),
    barLength: length(material.barLength, 0),
    bars: String(material.bars),
    mass: mass(material.mass),
    blankMass: mass(material.blankMass),
    blank: sawn ? sawn.limits : length(material.blankLength, 1),
    pitch: length(material.pitch, 1),
    offcut: length(material.offcut, 0),
    start: String(batch.start),
    heat: batch.heat ?? '',
    because: material.because ?? [],
    cuts: Array.from({ length: material.bars }, (_, index) => ({
      bar: String(index + 1),
      upTo: String(material.piecesPerBar),
    })),
    left: pieces.slice(0, half),
    right: pieces.slice(half),
  }
}
