import { LINE, onPaper, type Point } from '../pictures/picture.ts'
import { barsOf } from './barcodes.ts'
import type { Item, Tag } from './display-list.ts'
import { layTable } from './lay-table.ts'
import { type Align, lineItems, paragraph } from './lay-text.ts'
import type { Layout } from './layout-context.ts'
import { type Element, elements, has, isNode, type Node, styled } from './markup.ts'
import { inlineText } from './set-lines.ts'
import { kept, type Slice, stacked, withGap } from './slice.ts'
import { COLUMNS, GUTTER, LINE_HEIGHT, onGrid, TYPE } from './theme.ts'

/** Blocks below each other as strips that no page end cuts. */
export function slicesOf(nodes: readonly Node[], width: Point, layout: Layout, parent?: Tag): readonly Slice[] {
  const blocks = nodes.filter(isNode)
  let above: Element | undefined
  return blocks.flatMap(block => {
    const slices = blockSlices(block, width, layout, parent)
    if (slices.length === 0) return []
    const gap = above ? gapBetween(above, block) : 0
    above = block
    return gap > 0 ? withGap(slices, gap) : slices
  })
}

/** Of one strip: a page with its heading. */
const tallest = ({ bodyHeight }: Layout): Point => bodyHeight - 3 * LINE_HEIGHT

const LOOSE = new Set(['table', 'figure', 'div', 'dl', 'hr'])

/** One clear line round whatever is not running text; none under a heading. */
function gapBetween(above: Element, below: Element): Point {
  if (above.name === 'h2' || above.name === 'h3') return 0
  const loose = below.name.startsWith('h') || LOOSE.has(above.name) || LOOSE.has(below.name)
  return loose ? LINE_HEIGHT : 0
}

function blockSlices(block: Element, width: Point, layout: Layout, parent?: Tag): readonly Slice[] {
  switch (block.name) {
    case 'h2':
    case 'h3':
      return heading(block, width, layout, parent)
    case 'p':
      return textSlices(block, width, layout, { type: 'P', ...(parent && { parent }) })
    case 'ul':
      return listSlices(block, width, layout, parent)
    case 'dl':
      return termSlices(block, width, layout, parent)
    case 'table':
      return layTable(block, width, layout, parent)
    case 'figure':
      return figureSlices(block, width, layout, parent)
    case 'hr':
      return [{ height: LINE_HEIGHT, gap: 0, items: [rule(width, LINE_HEIGHT / 2)] }]
    case 'div':
      return divisionSlices(block, width, layout, parent)
    default:
      throw new Error(`<${block.name}> is no block`)
  }
}

const rule = (dx: Point, y: Point): Item => ({ kind: 'rule', x: 0, y, dx, dy: 0, width: LINE.thin, grey: 0 })

function textSlices(block: Element, width: Point, layout: Layout, tag: Tag): readonly Slice[] {
  const size = has(block, 'small') ? TYPE.table : TYPE.text
  const align: Align = has(block, 'right') ? 'right' : has(block, 'mid') ? 'middle' : 'left'
  const text = inlineText(block.children, { size, bold: false }, layout.measure)
  return paragraph(text.lines(width), width, tag, { align })
}

/** A rule above its whole width: the eye finds the questions of a sheet by them. */
function heading(block: Element, width: Point, layout: Layout, parent?: Tag): readonly Slice[] {
  const top = block.name === 'h2'
  const tag: Tag = { type: top ? 'H2' : 'H3', ...(parent && { parent }) }
  const text = inlineText(block.children, { size: top ? TYPE.text : TYPE.table, bold: true }, layout.measure)
  const slices = kept(paragraph(text.lines(width), width, tag))
  return slices.map((slice, index) => ({
    ...slice,
    keep: true,
    items: top && index === 0 ? [rule(width, 0), ...slice.items] : slice.items,
  }))
}

function listSlices(list: Element, width: Point, layout: Layout, parent?: Tag): readonly Slice[] {
  const caution = has(list, 'caution')
  const indent = onPaper(4)
  const tag: Tag = { type: 'L', ...(parent && { parent }) }
  return elements(list).flatMap(element => {
    const item: Tag = { type: 'LI', parent: tag }
    const body: Tag = { type: 'LBody', parent: item }
    const size = has(list, 'small') ? TYPE.table : TYPE.text
    const text = inlineText(element.children, { size, bold: false }, layout.measure)
    const [first, ...rest] = paragraph(text.lines(width - indent), width, body, { indent })
    if (first === undefined) return []
    const sign = { text: caution ? '!' : '–', style: { size, bold: caution }, x: 0, width: 0 }
    const mark = lineItems({ line: { pieces: [sign], width: 0 }, width, align: 'left', tag: body })
    return [{ ...first, items: [...mark, ...first.items] }, ...rest]
  })
}

/** A space behind the last word: read out, a term and what it is are two words. */
const spaced = (slices: readonly Slice[]): readonly Slice[] =>
  slices.map((slice, index) => ({
    ...slice,
    items:
      index < slices.length - 1
        ? slice.items
        : slice.items.map((item, at) =>
            item.kind === 'text' && at === slice.items.length - 1 ? { ...item, text: `${item.text} ` } : item,
          ),
  }))

/** Terms on the left, what they are on the right; a term and its text share the line. */
function termSlices(list: Element, width: Point, layout: Layout, parent?: Tag): readonly Slice[] {
  const children = elements(list)
  const terms = children.filter(({ name }) => name === 'dt')
  const values = children.filter(({ name }) => name === 'dd')
  const term = (element: Element) => inlineText(element.children, { size: TYPE.table, bold: false }, layout.measure)
  const widest = Math.max(0, ...terms.map(element => term(element).most))
  const left = Math.min(widest, width * 0.4) + onPaper(3)
  return terms.flatMap((element, index) => {
    const value = values[index]
    const tag: Tag = { type: 'P', ...(parent && { parent }) }
    const names = spaced(paragraph(term(element).lines(left - onPaper(3)), left, tag))
    const texts = value
      ? paragraph(
          inlineText(
            value.children,
            { size: has(value, 'small') ? TYPE.table : TYPE.text, bold: false },
            layout.measure,
          ).lines(width - left),
          width,
          tag,
          { indent: left },
        )
      : []
    const both = [stacked(names), stacked(texts)]
    return [
      { height: Math.max(...both.map(({ height }) => height)), gap: 0, items: both.flatMap(({ items }) => items) },
    ]
  })
}

function figureSlices(figure: Element, width: Point, layout: Layout, parent?: Tag): readonly Slice[] {
  const place = (wide: Point): Point =>
    has(figure, 'right') ? width - wide : has(figure, 'mid') ? (width - wide) / 2 : 0
  const text = figure.attributes['data-text']
  if (text !== undefined) {
    const bars = barsOf(figure.attributes['data-code'] === 'datamatrix' ? 'datamatrix' : 'code128', text)
    const tag: Tag = { type: 'Figure', alternative: `code: ${text}`, ...(parent && { parent }) }
    return [{ height: onGrid(bars.height), gap: 0, items: [{ kind: 'bars', x: place(bars.width), y: 0, bars, tag }] }]
  }
  const picture = layout.pictures.get(figure.attributes['data-picture'] ?? '')
  if (picture === undefined) return []
  const scale = Math.min(1, width / picture.width, tallest(layout) / picture.height)
  const tag: Tag = { type: 'Figure', alternative: picture.alternative, ...(parent && { parent }) }
  const x = place(picture.width * scale)
  return [
    { height: onGrid(picture.height * scale), gap: 0, items: [{ kind: 'picture', x, y: 0, picture, scale, tag }] },
  ]
}

function divisionSlices(division: Element, width: Point, layout: Layout, parent?: Tag): readonly Slice[] {
  if (has(division, 'page')) return [{ height: 0, gap: 0, items: [], newPage: true }]
  const slices = has(division, 'columns')
    ? columnSlices(division, width, layout, parent)
    : slicesOf(has(division, 'beside') ? beside(division, width, layout) : division.children, width, layout, parent)
  const least = onGrid(onPaper(styled(division, 'min-height') ?? 0))
  const grown = least > 0 ? heightened(slices, least) : slices
  if (has(division, 'bottom')) return [{ ...stacked(grown), gap: 0, pinned: true }]
  return has(division, 'keep') ? kept(grown) : grown
}

/** A text and the picture of it: beside each other where the picture leaves the text five of the twelve columns, else below. */
function beside(division: Element, width: Point, { pictures }: Layout): readonly Node[] {
  const [text, figure] = elements(division)
  const picture = pictures.get(figure?.attributes['data-picture'] ?? '')
  const span = [5, 6, 7].find(count => picture && picture.width <= spanned(count, width) + HAIR)
  if (!text || !figure || span === undefined) return division.children
  const cell = (count: number, child: Node): Element => ({
    name: 'div',
    classes: [`c${count}`],
    attributes: {},
    children: [child],
  })
  const cells = [cell(COLUMNS - span, text), cell(span, figure)]
  return [{ name: 'div', classes: ['columns'], attributes: {}, children: cells }]
}

/** Width of some of the twelve columns. */
const spanned = (count: number, width: Point): Point =>
  (count * (width - (COLUMNS - 1) * GUTTER)) / COLUMNS + (count - 1) * GUTTER

/** What rounding may add to a width. */
const HAIR: Point = 1e-6

/** Columns beside each other, as one strip; where that is taller than a page, below each other. */
function columnSlices(row: Element, width: Point, layout: Layout, parent?: Tag): readonly Slice[] {
  let x = 0
  const cells = elements(row).map(cell => {
    const span = Number(cell.classes.find(word => /^c\d+$/.test(word))?.slice(1) ?? COLUMNS)
    const wide = spanned(span, width)
    const { height, items } = stacked(slicesOf(cell.children, wide, layout, parent))
    const placed = items.map(item => ({ ...item, x: item.x + x }))
    x += wide + GUTTER
    return { height, items: placed }
  })
  const height = Math.max(0, ...cells.map(cell => cell.height))
  if (height <= tallest(layout)) return height > 0 ? [{ height, gap: 0, items: cells.flatMap(cell => cell.items) }] : []
  return elements(row).flatMap((cell, index) => {
    const slices = slicesOf(cell.children, width, layout, parent)
    return index > 0 ? withGap(slices, LINE_HEIGHT) : slices
  })
}

function heightened(slices: readonly Slice[], least: Point): readonly Slice[] {
  const last = slices.at(-1)
  if (last === undefined) return [{ height: least, gap: 0, items: [] }]
  const { height } = stacked(slices)
  return height >= least ? slices : [...slices.slice(0, -1), { ...last, height: last.height + least - height }]
}
