import type { OutsideOrder, Returned } from '../../orders/order.ts'
import type { PaperFigures } from './paper-figures.ts'
import { limitWords, unitWords } from './quantity-words.ts'

/** Columns to write in that stand beside the limits. */
const ACROSS = 5

/** The form that comes back: a row a reading that the order asks for, a column a piece. */
export type ReturnView = {
  readonly tables: readonly {
    /** Heads of the columns; nothing where one is not needed. */
    readonly columns: readonly string[]
    readonly rows: readonly {
      readonly number: string
      readonly name: string
      readonly unit: string
      readonly gauge: string
      readonly limits: string
      readonly cells: readonly { readonly measure: boolean }[]
    }[]
  }[]
}

/** Load and coupon first, then pieces 1 to 5, 6 to 10 …; only what is still to measure is in the later tables. */
export function returnView({ returns, pieces, finish }: OutsideOrder, figures: PaperFigures): ReturnView {
  const once = returns.filter(({ of }) => of !== 'piece')
  const each = returns.filter(({ of }) => of === 'piece')
  const most = Math.max(0, ...each.map(({ readings }) => readings))
  // Which pieces are marked is known when they are.
  const head = most < pieces ? 'Marked' : 'Piece'
  const tied = returns.some(({ characteristic }) => characteristic !== undefined)
  const row = (one: Returned, cells: readonly boolean[]) => ({
    // Tied to the drawing where that numbers anything: two rows of numbers on one form would be taken for each other.
    number: tied ? String(one.characteristic ?? '') : String(one.number),
    name: nameOf(
      one,
      finish.some(({ state }) => state === one.state),
    ),
    unit: unitWords(one, figures),
    gauge: one.gauge ?? '',
    limits: limitWords(one, figures),
    cells: cells.map(measure => ({ measure })),
  })
  const tables = Array.from({ length: Math.ceil(most / ACROSS) }, (_, index) => {
    const columns = Array.from({ length: ACROSS }, (_, column) => index * ACROSS + column + 1)
    return {
      columns: columns.map(piece => (piece <= most ? `${head} ${piece}` : '')),
      rows: each
        .filter(({ readings }) => readings > index * ACROSS)
        .map(one =>
          row(
            one,
            columns.map(piece => piece <= one.readings),
          ),
        ),
    }
  })
  const single = [true, ...Array.from({ length: ACROSS - 1 }, () => false)]
  return {
    tables: [
      ...(once.length === 0
        ? []
        : [{ columns: single.map(write => (write ? 'Read' : '')), rows: once.map(one => row(one, single)) }]),
      ...tables,
    ],
  }
}

/** `bore Ø, before`; of a coupon or a load, said so. As it goes back, a size needs no more words. */
const nameOf = ({ label, state, of }: Returned, goesBack: boolean): string =>
  [label, ...(state === undefined || goesBack ? [] : [state]), ...(of === 'piece' ? [] : [`of the ${of}`])].join(', ')
