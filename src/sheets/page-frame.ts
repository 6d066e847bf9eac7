import { LINE, type Measure, type Point } from '../pictures/picture.ts'
import type { Item, Tag } from './display-list.ts'
import { BASELINE, LINE_HEIGHT, lines, type Sheet, TYPE } from './theme.ts'

/** What stands in the title block of every sheet. Field names: ISO 7200. */
export type TitleBlock = {
  readonly legalOwner: string
  readonly identificationNumber: string
  readonly revision: string
  readonly title: string
  readonly batch: string
  readonly dateOfIssue: string
  readonly creator: string
  readonly fingerprint: string
}

export type SheetTitle = {
  /** ISO 7200: what kind of document this is. */
  readonly documentType: string
  /** The one thing that the page is about, 20 pt in the outer top corner. */
  readonly corner: string
  readonly heading: string
}

/** The head: which part, what to do, and the number by which a stack is thumbed. */
export function headItems(
  { identificationNumber, revision, title }: TitleBlock,
  { corner, heading }: SheetTitle,
  sheet: Sheet,
  measure: Measure,
  tag?: Tag,
): readonly Item[] {
  const tagged = tag && { tag }
  const { left, right, top } = sheet
  const part = `${identificationNumber} rev ${revision}`
  const big = measure(corner, TYPE.page, true)
  const room = right - left - big - LINE_HEIGHT
  const shortened = (text: string, bold: boolean) => cut(text, room, TYPE.text, bold, measure)
  return [
    text(left, top + BASELINE, `${shortened(heading, true)} `, TYPE.text, true, tagged),
    text(left, top + lines(1) + BASELINE, `${shortened(`${part} · ${title}`, false)} `, TYPE.text, false, tagged),
    text(right - big, top + lines(1) + BASELINE, corner, TYPE.page, true, tagged),
  ]
}

/** The foot: the title block, two lines. */
export function footItems(
  block: TitleBlock,
  { documentType }: SheetTitle,
  { sheet: number, of }: { readonly sheet: number; readonly of: number },
  sheet: Sheet,
  measure: Measure,
): readonly Item[] {
  const column = (sheet.right - sheet.left) / 12
  const first = sheet.footTop + lines(1) + BASELINE
  const second = first + LINE_HEIGHT
  const cell = (from: number, span: number, y: Point, label: string, value: string): readonly Item[] => {
    const name = label === '' ? '' : `${label} `
    const at = sheet.left + from * column
    const wide = measure(name, TYPE.table)
    const room = span * column - wide - 3
    return [
      ...(name === '' ? [] : [text(at, y, name.trimEnd(), TYPE.table, false)]),
      text(at + wide, y, cut(value, room, TYPE.table, true, measure), TYPE.table, true),
    ]
  }
  return [
    {
      kind: 'rule',
      x: sheet.left,
      y: sheet.footTop + lines(0.75),
      dx: sheet.right - sheet.left,
      dy: 0,
      width: LINE.outline,
      grey: 0,
    },
    ...cell(0, 4, first, 'Legal owner', block.legalOwner),
    ...cell(4, 3, first, 'Part', `${block.identificationNumber} rev ${block.revision}`),
    ...cell(7, 3, first, 'Title', block.title),
    ...cell(10, 2, first, 'Sheet', `${number} of ${of}`),
    ...cell(0, 3, second, '', documentType),
    ...cell(3, 2, second, 'Batch', block.batch),
    ...cell(5, 2, second, 'Issued', block.dateOfIssue),
    ...cell(7, 2.5, second, 'Creator', block.creator),
    ...cell(9.5, 2.5, second, 'Fingerprint', block.fingerprint),
  ]
}

function text(x: Point, y: Point, text: string, size: Point, bold: boolean, tagged?: { readonly tag: Tag }): Item {
  return { kind: 'text', x, y, text, size, bold, ...tagged }
}

/** The cell alone is cut; the whole text stands in the part file. */
function cut(text: string, room: Point, size: Point, bold: boolean, measure: Measure): string {
  if (measure(text, size, bold) <= room) return text
  let short = text
  while (short !== '' && measure(`${short}…`, size, bold) > room) short = short.slice(0, -1)
  return `${short.trimEnd()}…`
}
