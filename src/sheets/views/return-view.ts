import type { OutsideOrder, Returned } from '../../orders/order.ts'
import type { PaperFigures } from './paper-figures.ts'
import { limitWords, unitWords } from './quantity-words.ts'

/** Columns that leave each cell room to write in, across the sheet. */
const ACROSS = 9

export type ReturnTable = { readonly heads: readonly ReturnHead[]; readonly rows: readonly ReturnRow[] }

/** As it is printed. */
export type ReturnForm = {
  /** Few columns stand beside themselves, with the first pieces and the last. */
  readonly blocks: readonly { readonly heads: readonly ReturnHead[] }[]
  readonly rows: readonly { readonly blocks: readonly ReturnRow[] }[]
}

type ReturnHead = {
  readonly number: string
  readonly name: string
  /** A line each: a pair to judge by is two. */
  readonly limits: readonly string[]
}

type ReturnRow = {
  readonly piece: string
  readonly cells: readonly { readonly measure: boolean }[]
}

/** The form that comes back: a column a reading that the order asks for, a row a piece; what is read once is one row. */
export function returnView({ returns, which, finish }: OutsideOrder, figures: PaperFigures): readonly ReturnTable[] {
  const once = returns.filter(({ of }) => of !== 'piece')
  const each = returns.filter(({ of }) => of === 'piece')
  const most = Math.max(0, ...each.map(({ readings }) => readings))
  const tied = returns.some(({ characteristic }) => characteristic !== undefined)
  const head = (one: Returned): ReturnHead => ({
    // Tied to the drawing where that numbers anything: two rows of numbers on one form would be taken for each other.
    number: tied ? String(one.characteristic ?? '') : String(one.number),
    name: nameOf(
      one,
      finish.some(({ state }) => state === one.state),
      unitWords(one, figures),
    ),
    limits: limitWords(one, figures).split(/\u00a0\/\u00a0| (?=[\d−])/),
  })
  const marks = marksOf(which)
  const all = most === marks.length
  const table = (columns: readonly Returned[], rows: readonly (readonly [string, number])[]): ReturnTable => ({
    heads: columns.map(head),
    rows: rows.map(([piece, index]) => ({
      piece,
      cells: columns.map(({ readings }) => ({ measure: index < readings })),
    })),
  })
  const rows = Array.from({ length: most }, (_, index) => [all ? (marks[index] ?? '') : '', index] as const)
  return [
    ...evenly(once).map(columns => table(columns, [['Read', 0]])),
    ...evenly(each).map(columns => table(columns, rows)),
  ]
}

/** Pieces run on at the head of the next block; where the last is short its rows have nothing to fill in. */
export function returnForm({ heads, rows }: ReturnTable): ReturnForm {
  const most = Math.floor((ACROSS + 1) / (heads.length + 1))
  const down = Math.ceil(rows.length / Math.max(1, most))
  const blocks = Math.ceil(rows.length / Math.max(1, down))
  const none: ReturnRow = { piece: NO_PIECE, cells: heads.map(() => ({ measure: false })) }
  return {
    blocks: Array.from({ length: blocks }, () => ({ heads })),
    rows: Array.from({ length: down }, (_, row) => ({
      blocks: Array.from({ length: blocks }, (_, at) => rows[at * down + row] ?? none),
    })),
  }
}

const NO_PIECE = '\u00a0'

/** What is written on each piece that is judged. Where only some are measured, which is known when they are marked. */
const marksOf = (which: OutsideOrder['which']): readonly string[] =>
  which.flatMap(({ from, to }) =>
    from === undefined || to === undefined
      ? []
      : Array.from({ length: to - from + 1 }, (_, index) => String(from + index)),
  )

/** No table wider than the sheet, and none of a few columns beside a full one. */
function evenly<T>(all: readonly T[]): readonly (readonly T[])[] {
  const tables = Math.ceil(all.length / ACROSS)
  const size = Math.ceil(all.length / Math.max(1, tables))
  return Array.from({ length: tables }, (_, index) => all.slice(index * size, (index + 1) * size))
}

/** `bore Ø, before, mm`; of a coupon or a load, said so. As it goes back, a size needs no more words. */
const nameOf = ({ label, state, of }: Returned, goesBack: boolean, unit: string): string =>
  [
    label,
    ...(state === undefined || goesBack ? [] : [state]),
    ...(of === 'piece' ? [] : [`of the ${of}`]),
    ...(unit === '' ? [] : [unit]),
  ].join(', ')
