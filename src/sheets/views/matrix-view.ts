import type { Characteristic } from '../../inspection/characteristic.ts'
import type { Plan } from '../../plan/plan.ts'
import { pieceNames } from '../piece-names.ts'
import { type CheckRow, checkRow } from './check-rows.ts'
import { DASH, type PaperFigures } from './paper-figures.ts'

/** Pieces down, characteristics across: a column is a gauge that is picked up once, a lost piece one line struck out. */
export type MatrixView = {
  /** Few columns stand beside themselves, with the first pieces and the last. */
  readonly blocks: readonly { readonly columns: readonly MatrixColumn[] }[]
  readonly rows: readonly { readonly pieces: readonly MatrixPiece[] }[]
  /** Read on the coupon of the load, in the foot. */
  readonly coupon: readonly CheckRow[]
}

type MatrixColumn = {
  readonly number: string
  readonly name: string
  readonly unit: string
  readonly operation: string
  /** The two limits to judge by, below each other. */
  readonly low: string
  readonly high: string
}

type MatrixPiece = {
  readonly piece: string
  readonly cells: readonly { readonly measure: boolean; readonly number: string; readonly piece: string }[]
}

/** Columns that stand beside each other across either paper, each wide enough to write in. */
export const MATRIX_COLUMNS = 14

export function matrixView(
  plan: Plan,
  { columns, coupon }: { readonly columns: readonly Characteristic[]; readonly coupon: readonly Characteristic[] },
  figures: PaperFigures,
): MatrixView {
  // The set-up piece and the coupon are not delivered.
  const measured = pieceNames(plan).filter(name => /^\d/.test(name))
  const most = Math.max(0, ...columns.map(({ sample }) => sample))
  const heads = columns.map((one): MatrixColumn => {
    const { number, name, unit, operation, accept, limits } = checkRow(plan, one, figures)
    const [low = '', high = ''] = (accept === DASH ? limits : accept).split('\u00a0/\u00a0')
    return { number, name: short(name), unit, operation, low, high }
  })
  const pieces = measured.slice(0, most).map((piece, index) => ({
    piece,
    cells: columns.map(({ sample, number }) => ({ measure: index < sample, number: String(number), piece })),
  }))
  const beside = Math.max(1, Math.floor(MATRIX_COLUMNS / Math.max(1, columns.length)))
  const down = Math.ceil(pieces.length / beside)
  const blocks = Math.ceil(pieces.length / Math.max(1, down))
  const none = {
    piece: '',
    cells: columns.map(({ number }) => ({ measure: false, number: String(number), piece: '' })),
  }
  return {
    blocks: Array.from({ length: blocks }, () => ({ columns: heads })),
    rows: Array.from({ length: down }, (_, row) => ({
      pieces: Array.from({ length: blocks }, (_, at) => pieces[at * down + row] ?? none),
    })),
    coupon: coupon.map(one => checkRow(plan, one, figures)),
  }
}

/** In a narrow column; the list of characteristics has the whole name. */
const short = (name: string): string => name.replace(/ diameter$/, ' Ø').replace(/, (?:finished|as returned)$/, '')
