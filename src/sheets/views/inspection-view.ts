import type { Characteristic } from '../../inspection/characteristic.ts'
import type { Plan } from '../../plan/plan.ts'
import { type CheckRow, checkRow } from './check-rows.ts'
import type { PaperFigures } from './paper-figures.ts'

/** Columns of pieces that stand beside the limits, each wide enough to write in. */
const PIECES_ACROSS = 5

/** A row a characteristic, a column a piece; more pieces than stand side by side go into further tables. */
export type InspectionView = {
  readonly tables: readonly {
    /** Piece numbers; nothing where a column is not needed. */
    readonly pieces: readonly string[]
    readonly rows: readonly (CheckRow & {
      /** One for each column: whether this piece is to be measured for it. */
      readonly cells: readonly { readonly measure: boolean }[]
    })[]
  }[]
}

/** Pieces 1 to 5, 6 to 10 …; only what is still to measure is in the later tables. */
export function inspectionView(
  plan: Plan,
  characteristics: readonly Characteristic[],
  figures: PaperFigures,
): InspectionView {
  const most = Math.max(0, ...characteristics.map(({ sample }) => sample))
  const tables = Array.from({ length: Math.ceil(most / PIECES_ACROSS) }, (_, index) => {
    const first = index * PIECES_ACROSS
    const columns = Array.from({ length: PIECES_ACROSS }, (_, index) => first + index + 1)
    return {
      pieces: columns.map(piece => (piece <= most ? String(piece) : '')),
      rows: characteristics
        .filter(({ sample }) => sample > first)
        .map(characteristic => ({
          ...checkRow(plan, characteristic, figures),
          // Said once, with the first pieces.
          ...(index > 0 && { remark: '' }),
          cells: columns.map(piece => ({ measure: piece <= characteristic.sample })),
        })),
    }
  })
  return { tables }
}
