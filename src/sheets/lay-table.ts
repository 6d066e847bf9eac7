import { onPaper, type Point } from '../pictures/picture.ts'
import { columnWidths } from './column-widths.ts'
import type { Item, Tag } from './display-list.ts'
import { type Align, lineItems } from './lay-text.ts'
import type { Layout } from './layout-context.ts'
import { type Element, elements, has, styled } from './markup.ts'
import { type InlineText, inlineText, type Line } from './set-lines.ts'
import { type Slice, untagged } from './slice.ts'
import { CELL_GAP, LINE_HEIGHT, ROW_GREY, TYPE, WRITE } from './theme.ts'

/** Cells are inset so that the rounded outlines of neighbours do not run into each other. */
type Cell = { readonly element: Element; readonly text: InlineText; readonly align: Align; readonly writes: boolean }

/** A row of one cell with `colspan` goes on with the row above it, over all columns. */
const goesOn = ([first, second]: readonly Cell[]): boolean =>
  second === undefined && first?.element.attributes['colspan'] !== undefined

/** A table, a slice a row; the head is the first slice and stands over the rows again on every page. */
export function layTable(table: Element, width: Point, layout: Layout, parent: Tag | undefined): readonly Slice[] {
  const tag: Tag = { type: 'Table', ...(parent && { parent }) }
  const [headRows, bodyRows] = ['thead', 'tbody'].map(name =>
    elements(table)
      .filter(part => part.name === name)
      .flatMap(part => elements(part).map(row => elements(row).map(cell => cellOf(cell, name === 'thead', layout)))),
  )
  const rows = [...(headRows ?? []), ...(bodyRows ?? [])].filter(row => !goesOn(row))
  const count = Math.max(0, ...rows.map(row => row.length))
  const needs = Array.from({ length: count }, (_, index) => {
    const cells = rows.flatMap(row => row[index] ?? [])
    const fixed = cells.map(({ element }) => styled(element, 'width')).find(given => given !== undefined)
    const writes = cells.some(cell => cell.writes)
    const least = Math.max(writes ? WRITE.width : 0, ...cells.map(({ text }) => text.least))
    const most = Math.max(least, ...cells.map(({ text }) => text.most))
    return { least, most, writes, ...(fixed !== undefined && { fixed: Math.max(onPaper(fixed), least) }) }
  })
  const widths = columnWidths(needs, width, CELL_GAP, !has(table, 'tight'))
  const across = widths.reduce((sum, each) => sum + each, 0) + CELL_GAP * (widths.length - 1)

  const heads = (headRows ?? []).map(row => laid(row, widths, across, { tag, type: 'TH', last: true, columns: count }))
  const head = heads.flat().reduce<Slice | undefined>(
    (above, row) => ({
      height: (above?.height ?? 0) + row.height,
      gap: 0,
      keep: true,
      items: [...(above?.items ?? []), ...row.items.map(item => ({ ...item, y: item.y + (above?.height ?? 0) }))],
    }),
    undefined,
  )
  // A row leaves room for the head of its table and a heading above that.
  const room = layout.bodyHeight - 3 * LINE_HEIGHT - (head?.height ?? 0)
  const body = (bodyRows ?? []).flatMap((row, index) => {
    const style = { tag, type: 'TD', last: false, room, open: goesOn(bodyRows?.[index + 1] ?? []) } as const
    return laid(row, goesOn(row) ? [across] : widths, across, { ...style, columns: count })
  })
  if (head === undefined) return body
  // A head that leaves no room for its rows is said once.
  if (head.height > layout.bodyHeight / 2) return [head, ...body]
  const again: Slice = { ...head, items: untagged(head.items) }
  return [head, ...body.map(slice => ({ ...slice, head: again }))]
}

function cellOf(element: Element, inHead: boolean, layout: Layout): Cell {
  const writes = has(element, 'write') && !inHead
  const size = has(element, 'size') ? TYPE.text : TYPE.table
  const bold = inHead || has(element, 'size')
  const align = has(element, 'num') ? 'right' : has(element, 'mid') ? 'middle' : 'left'
  return { element, text: inlineText(element.children, { size, bold }, layout.measure), align, writes }
}

type RowStyle = {
  readonly tag: Tag
  readonly type: 'TH' | 'TD'
  readonly last: boolean
  /** Of the table. */
  readonly columns: number
  readonly room?: Point
  /** The next row goes on with this one: no rule between them, and no page end. */
  readonly open?: boolean
}

/** A row as one slice; one that is taller than a page is cut between its lines. */
function laid(
  row: readonly Cell[],
  widths: readonly Point[],
  across: Point,
  { tag: table, type, last, columns, room = Number.POSITIVE_INFINITY, open = false }: RowStyle,
): readonly Slice[] {
  const cells: Tag[] = []
  const tag: Tag = { type: 'TR', parent: table, cells }
  const set = row.map(({ text }, index) => text.lines(widths[index] ?? 0))
  const most = Math.max(1, ...set.map(lines => lines.length))
  const fits = Number.isFinite(room) ? Math.max(1, Math.floor(room / LINE_HEIGHT)) : most
  const whole = goesOn(row)
  const tags = row.map(({ element }): Tag => {
    const head = type === 'TH' || element.name === 'th'
    const scope = head && { scope: type === 'TH' ? ('Column' as const) : ('Row' as const) }
    return { type: head ? 'TH' : 'TD', parent: tag, ...scope, ...(whole && { columns }) }
  })
  cells.push(...tags)
  while (!whole && cells.length < columns) cells.push({ type: 'TD', parent: tag })
  const slices: Slice[] = []
  for (let from = 0; from < most; from += fits) {
    const lines = Math.min(fits, most - from)
    const writes = row.some(cell => cell.writes)
    const height = Math.max(lines * LINE_HEIGHT, writes ? WRITE.height : 0)
    const items: Item[] = []
    let x = 0
    row.forEach((cell, index) => {
      const width = widths[index] ?? 0
      const text = (set[index] ?? []).slice(from, from + lines)
      items.push(...cellItems(cell, text, { x, width, height, writes }, tags[index] ?? tag))
      x += width + CELL_GAP
    })
    const rule = {
      kind: 'rule',
      x: 0,
      y: height,
      dx: across,
      dy: 0,
      width: onPaper(0.25),
      grey: last ? 0 : ROW_GREY,
    } as const
    slices.push({ height, gap: 0, items: open ? items : [...items, rule], ...(open && { keep: true }) })
  }
  return slices
}

/** In a row that is written in, a text of fewer lines stands half way down, where the pencil will. */
type Room = { readonly x: Point; readonly width: Point; readonly height: Point; readonly writes: boolean }

function cellItems(cell: Cell, lines: readonly Line[], { x, width, height, writes }: Room, tag: Tag): readonly Item[] {
  const inset = cell.writes ? onPaper(1) : 0
  const down = writes ? (height - lines.length * LINE_HEIGHT) / 2 : 0
  const text = lines.flatMap((line, index) =>
    lineItems({
      line,
      width: width - 2 * inset,
      align: cell.align,
      tag,
      at: { x: x + inset, y: down + index * LINE_HEIGHT },
    }),
  )
  return cell.writes ? [{ kind: 'cell', x, y: 0, width, height }, ...text] : text
}
