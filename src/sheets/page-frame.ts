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
  /** What to know of this paper before it is used: that it is a copy, or what it replaces. */
  readonly note?: string
}

export type SheetTitle = {
  /** ISO 7200: what kind of document this is. */
  readonly documentType: string
  /** The one thing that the page is about, 20 pt in the outer top corner. */
  readonly corner: string
  readonly heading: string
}

/** The head: which part, what to do, and the number by which a stack is thumbed. */
export function headItems({
  block: { identificationNumber, revision, title, note },
  title: { corner, heading },
  sheet,
  measure,
  tag,
}: {
  readonly block: TitleBlock
  readonly title: SheetTitle
  readonly sheet: Sheet
  readonly measure: Measure
  readonly tag?: Tag | undefined
}): readonly Item[] {
  const tagged = tag && { tag }
  const { left, right, top } = sheet
  const part = `${identificationNumber} rev ${revision}`
  const big = measure(corner, TYPE.page, true)
  const room = right - left - big - LINE_HEIGHT
  const shortened = (text: string, bold: boolean) => cut({ text, room, size: TYPE.text, bold, measure })
  return [
    text({ x: left, y: top + BASELINE, text: `${shortened(heading, true)} `, size: TYPE.text, bold: true, tagged }),
    text({
      x: left,
      y: top + lines(1) + BASELINE,
      text: `${shortened(`${[part, title, ...(note === undefined ? [] : [note])].join(' · ')}`, note !== undefined)} `,
      size: TYPE.text,
      bold: note !== undefined,
      tagged,
    }),
    text({ x: right - big, y: top + lines(1) + BASELINE, text: corner, size: TYPE.page, bold: true, tagged }),
  ]
}

/** The foot: the title block, two lines. */
export function footItems({
  block,
  title: { documentType },
  numbers: { set, sheet: number, of },
  sheet,
  measure,
}: {
  readonly block: TitleBlock
  readonly title: SheetTitle
  readonly numbers: { readonly set: string; readonly sheet: number; readonly of: number }
  readonly sheet: Sheet
  readonly measure: Measure
}): readonly Item[] {
  const column = (sheet.right - sheet.left) / 12
  const first = sheet.footTop + lines(1) + BASELINE
  const second = first + LINE_HEIGHT
  const cell = ({
    from,
    span,
    y,
    label,
    value,
  }: {
    readonly from: number
    readonly span: number
    readonly y: Point
    readonly label: string
    readonly value: string
  }): readonly Item[] => {
    const name = label === '' ? '' : `${label} `
    const at = sheet.left + from * column
    const wide = measure(name, TYPE.table)
    const room = span * column - wide - 3
    return [
      ...(name === '' ? [] : [text({ x: at, y, text: name.trimEnd(), size: TYPE.table, bold: false })]),
      text({
        x: at + wide,
        y,
        text: cut({ text: value, room, size: TYPE.table, bold: true, measure }),
        size: TYPE.table,
        bold: true,
      }),
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
    ...cell({ from: 0, span: 4, y: first, label: 'Legal owner', value: block.legalOwner }),
    ...cell({
      from: 4,
      span: 3,
      y: first,
      label: 'Part',
      value: `${block.identificationNumber} rev ${block.revision}`,
    }),
    ...cell({ from: 7, span: 2.5, y: first, label: 'Title', value: block.title }),
    ...cell({ from: 9.5, span: 2.5, y: first, label: set, value: `${number} of ${of}` }),
    ...cell({ from: 0, span: 3, y: second, label: '', value: documentType }),
    ...cell({ from: 3, span: 2, y: second, label: 'Batch', value: block.batch }),
    ...cell({ from: 5, span: 2, y: second, label: 'Issued', value: block.dateOfIssue }),
    ...cell({ from: 7, span: 2.5, y: second, label: 'Creator', value: block.creator }),
    ...cell({ from: 9.5, span: 2.5, y: second, label: 'Fingerprint', value: block.fingerprint }),
  ]
}

function text({
  x,
  y,
  text,
  size,
  bold,
  tagged,
}: {
  readonly x: Point
  readonly y: Point
  readonly text: string
  readonly size: Point
  readonly bold: boolean
  readonly tagged?: { readonly tag: Tag } | undefined
}): Item {
  return { kind: 'text', x, y, text, size, bold, ...tagged }
}

/** The cell alone is cut; the whole text stands in the part file. */
function cut({
  text,
  room,
  size,
  bold,
  measure,
}: {
  readonly text: string
  readonly room: Point
  readonly size: Point
  readonly bold: boolean
  readonly measure: Measure
}): string {
  if (measure(text, size, bold) <= room) return text
  let short = text
  while (short !== '' && measure(`${short}…`, size, bold) > room) short = short.slice(0, -1)
  return `${short.trimEnd()}…`
}
