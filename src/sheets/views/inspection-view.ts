import type { Characteristic } from '../../inspection/characteristic.ts'
import type { Plan } from '../../plan/plan.ts'
import { type CheckRow, checkRow } from './check-rows.ts'
import type { PaperFigures } from './paper-figures.ts'

/** Columns of pieces that stand beside the limits on a page, each wide enough to write in. */
export const PIECES_ACROSS = 6

export type InspectionView = {
  /** Piece numbers of this sheet. */
  readonly pieces: readonly string[]
  readonly rows: readonly (CheckRow & {
    /** One for each piece: whether this piece is to be measured for it. */
    readonly cells: readonly { readonly measure: boolean }[]
  })[]
}

/** Rows of one stage in sheets of columns: pieces 1 to 6, 7 to 12 …; only what is still to measure is on the later ones. */
export function inspectionViews(
  plan: Plan,
  characteristics: readonly Characteristic[],
  figures: PaperFigures,
): readonly InspectionView[] {
  const most = Math.max(0, ...characteristics.map(({ sample }) => sample))
  const sheets = Math.ceil(most / PIECES_ACROSS)
  return Array.from({ length: sheets }, (_, sheet) => {
    const first = sheet * PIECES_ACROSS
    const columns = Array.from({ length: PIECES_ACROSS }, (_, index) => first + index + 1)
    return {
      pieces: columns.map(piece => (piece <= most ? String(piece) : '')),
      rows: characteristics
        .filter(({ sample }) => sample > first)
        .map(characteristic => ({
          ...checkRow(plan, characteristic, figures),
          cells: columns.map(piece => ({ measure: piece <= characteristic.sample })),
        })),
    }
  })
}

export const piecesWritten = ({ pieces }: InspectionView): string => {
  const real = pieces.filter(piece => piece !== '')
  return real.length > 1 ? `pieces ${real[0]} to ${real.at(-1)}` : `piece ${real[0] ?? ''}`
}
