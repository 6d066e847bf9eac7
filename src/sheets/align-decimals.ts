import { type Element, elements, has, isNode, type Node, textOf } from './markup.ts'

/** As wide as a figure and as a decimal point, in a typeface with figures of one width. */
const FIGURE_SPACE = '\u2007'
const POINT_SPACE = '\u2008'

/**
 * Figures of a column stand with their decimal points under each other: the shorter ones are filled up with spaces of a
 * figure's width, so that setting them to the right is all that paper and screen need to do.
 */
export function alignDecimals(nodes: readonly Node[]): readonly Node[] {
  return nodes.map(node => {
    if (!isNode(node)) return node
    if (node.name === 'table') return alignedTable(node)
    return node.children.some(isNode) ? { ...node, children: alignDecimals(node.children) } : node
  })
}

function alignedTable(table: Element): Element {
  const body = elements(table).filter(({ name }) => name === 'tbody')
  const places: number[] = []
  for (const row of body.flatMap(elements)) {
    elements(row).forEach((cell, index) => {
      if (has(cell, 'num')) places[index] = Math.max(places[index] ?? -1, decimals(textOf(cell)) ?? -1)
    })
  }
  const filled = (cell: Element, index: number): Element => {
    const own = decimals(textOf(cell))
    const most = places[index] ?? -1
    if (!has(cell, 'num') || own === undefined || most <= own) return cell
    const fill = own < 0 ? POINT_SPACE + FIGURE_SPACE.repeat(most) : FIGURE_SPACE.repeat(most - own)
    return { ...cell, children: [...cell.children, fill] }
  }
  const rows = (part: Element): Element => ({
    ...part,
    children: elements(part).map(row => ({ ...row, children: elements(row).map(filled) })),
  })
  return { ...table, children: elements(table).map(part => (part.name === 'tbody' ? rows(part) : part)) }
}

/** Places after the point of a plain number; -1 without a point, nothing for any other text. */
function decimals(text: string): number | undefined {
  const found = /^\s*[-+−±]?\d+(?:\.(\d+))?\s*$/.exec(text)
  if (!found) return undefined
  return found[1] === undefined ? -1 : found[1].length
}
