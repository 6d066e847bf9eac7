import type { OutsideOrder, Party } from '../orders/order.ts'
import { onPaper, type Point } from '../pictures/picture.ts'
import type { Plan } from '../plan/plan.ts'
import { Refusal } from '../refusal.ts'
import { barsOf } from './barcodes.ts'
import { type Item, moved, type Tag } from './display-list.ts'
import type { LaidDocument } from './lay-out-document.ts'
import { paragraph } from './lay-text.ts'
import { paintPdf } from './paint-pdf.ts'
import { pieceNames } from './piece-names.ts'
import type { PrintOptions } from './print-document.ts'
import { inlineText } from './set-lines.ts'
import { stacked } from './slice.ts'
import { type Paper, sheetOf, TYPE } from './theme.ts'
import { titleBlock } from './title-block.ts'
import type { Typeface } from './typeface.ts'
import { codeOf } from './views/route-card-view.ts'

/** A sheet of labels, all alike and in the middle of it. Millimetres; the pitch is from one label to the next. */
export type LabelGrid = {
  readonly width: number
  readonly height: number
  readonly pitch: { readonly across: number; readonly down: number }
}

/** One label: what is read from afar, a line in bold, smaller lines, and the code. */
type Label = {
  readonly mark: string
  readonly bold: string
  readonly lines: readonly string[]
  readonly code: string
}

/** A tag for each piece that is started, then a label for the box of each visit to a firm. */
export async function labels(
  plan: Plan,
  grid: LabelGrid,
  { paper, typeface, tagged = true }: Pick<PrintOptions, 'typeface' | 'tagged'> & { readonly paper: Paper },
): Promise<Uint8Array> {
  return await paintPdf(layOutLabels(plan, grid, { paper, typeface }), typeface, { tagged })
}

/** Sheets of labels have no head and no foot: all of a page belongs to the labels. */
export function layOutLabels(
  plan: Plan,
  grid: LabelGrid,
  { paper, typeface }: { readonly paper: Paper; readonly typeface: Pick<Typeface, 'measure'> },
): LaidDocument {
  const sheet = sheetOf(paper)
  const places = placesOf(grid, sheet)
  const all = [...pieceTags(plan), ...plan.orders.map(order => boxLabel(plan, order))]
  const items = all.map((label, index) => {
    const place = places[index % places.length] ?? { x: 0, y: 0 }
    return moved(labelItems(label, grid, typeface), place.x, place.y)
  })
  const pages = Array.from({ length: Math.ceil(items.length / places.length) }, (_, page) =>
    items.slice(page * places.length, (page + 1) * places.length).flat(),
  )
  const section = {
    documentType: 'Labels',
    corner: plan.part.number,
    heading: 'Labels',
    names: ['labels'],
    nodes: [],
    pictures: new Map(),
    from: 1,
    to: pages.length,
  }
  return { sheet, paper, block: titleBlock(plan), set: 'Labels', sheets: [section], pages }
}

/** Left top corners, row by row. */
function placesOf(
  { width, height, pitch }: LabelGrid,
  page: { readonly width: Point; readonly height: Point },
): readonly { readonly x: Point; readonly y: Point }[] {
  const fitting = (room: Point, one: number, next: number): number =>
    Math.floor((room - onPaper(one)) / onPaper(next) + 1)
  const across = fitting(page.width, width, pitch.across)
  const down = fitting(page.height, height, pitch.down)
  if (across < 1 || down < 1) throw new Refusal(`a label of ${width} x ${height} mm is larger than the sheet`)
  const left = (page.width - onPaper((across - 1) * pitch.across + width)) / 2
  const top = (page.height - onPaper((down - 1) * pitch.down + height)) / 2
  return Array.from({ length: across * down }, (_, index) => ({
    x: left + onPaper((index % across) * pitch.across),
    y: top + onPaper(Math.floor(index / across) * pitch.down),
  }))
}

/** Printers and label sheets are a millimetre or two off each other. */
const INSET = onPaper(2)

function labelItems(
  { mark, bold, lines, code }: Label,
  { width, height }: LabelGrid,
  { measure }: Pick<Typeface, 'measure'>,
): readonly Item[] {
  const section: Tag = { type: 'Sect' }
  const bars = barsOf('datamatrix', code)
  const left = INSET + bars.width
  const room = onPaper(width) - left - INSET
  const set = (text: string, size: Point, heavy: boolean) => {
    const { least, lines } = inlineText([text], { size, bold: heavy }, measure)
    if (least > room) throw tooSmall({ width, height }, text)
    return paragraph(lines(room), room, { type: 'P', parent: section })
  }
  const text = stacked([
    ...set(mark, TYPE.page, true),
    ...set(bold, TYPE.text, true),
    ...lines.flatMap(line => set(line, TYPE.table, false)),
  ])
  if (Math.max(text.height, bars.height) > onPaper(height) - 2 * INSET) throw tooSmall({ width, height }, bold)
  const figure: Tag = { type: 'Figure', alternative: `code: ${code}`, parent: section }
  return [{ kind: 'bars', x: INSET, y: INSET, bars, tag: figure }, ...moved(text.items, left, INSET)]
}

const tooSmall = ({ width, height }: Pick<LabelGrid, 'width' | 'height'>, text: string): Refusal =>
  new Refusal(`a label of ${width} x ${height} mm is too small for "${text}" and its code; choose a larger one`)

function pieceTags(plan: Plan): readonly Label[] {
  const { part, batch, material } = plan
  const heat = batch.heat === undefined ? '' : `, heat ${batch.heat}`
  return pieceNames(plan).map(piece => ({
    mark: piece,
    bold: `${part.number} rev ${part.revision}`,
    lines: [`batch ${batch.number}`, `${material.grade}${heat}`],
    code: codeOf([part.number, part.revision, batch.number, piece]),
  }))
}

/** Who opens the box, and whom to ring. */
function boxLabel(plan: Plan, { reference, from, to, pieces, part, batch, operations }: OutsideOrder): Label {
  return {
    mark: `${pieces} pieces`,
    bold: `Order ${reference}`,
    lines: [
      `${part.number} rev ${part.revision}, batch ${batch}`,
      `To ${partyWords(to)}`,
      `From ${[partyWords(from), from.telephone].filter(text => text !== undefined).join(', ')}`,
    ],
    code: codeOf([plan.part.number, plan.part.revision, plan.batch.number, operations.join('+')]),
  }
}

const partyWords = ({ name, address }: Party): string => [name, address].filter(text => text !== undefined).join(', ')
