import type { Picture } from '../pictures/picture.ts'
import { alignDecimals } from './align-decimals.ts'
import type { Item, Tag } from './display-list.ts'
import { slicesOf } from './layout.ts'
import type { PicturesByName } from './layout-context.ts'
import { has, isNode, type Node, textOf } from './markup.ts'
import { footItems, headItems, type SheetTitle, type TitleBlock } from './page-frame.ts'
import { paginate } from './paginate.ts'
import type { Fill, View } from './render-template.ts'
import { type Paper, type Sheet, sheetOf, type Way } from './theme.ts'
import type { Typeface } from './typeface.ts'

/** A sheet to print: which template, filled with what, under which title. */
export type SheetToPrint = SheetTitle & {
  readonly template: string
  readonly view: View
  /** Words that it is asked for by, beside its corner: the numbers of its operations, a name. */
  readonly names: readonly string[]
  /** Shares the pages of the sheet before it: where both find room on one, or wherever that saves a page. */
  readonly joins?: 'one page' | 'fewer pages'
}

/** A sheet as marked up, with its drawings and the numbers of the pages that it takes: none on a screen. */
export type LaidSheet = SheetTitle & {
  readonly names: readonly string[]
  readonly nodes: readonly Node[]
  readonly pictures: PicturesByName
  readonly from: number
  readonly to: number
}

/** Both painters read this and decide nothing. */
export type LaidDocument = {
  readonly sheet: Sheet
  readonly paper: Paper
  readonly block: TitleBlock
  /** As the foot counts: `Floor`. */
  readonly set: string
  readonly sheets: readonly LaidSheet[]
  readonly pages: readonly (readonly Item[])[]
}

export type DocumentToPrint = {
  readonly block: TitleBlock
  readonly set: string
  /** Upright unless it is said. */
  readonly way?: Way
  /** On a screen there are no pages. */
  readonly screenOnly?: boolean
  readonly sheets: readonly SheetToPrint[]
  readonly pictures: PicturesByName
  readonly paper: Paper
  /** The same picture with less and less room, where there is such a one: the first that saves a page is taken. */
  readonly smaller?: readonly ((name: string) => Picture | undefined)[]
}

/** Every sheet begins a page; pages are numbered through the document. */
export function layOutDocument(
  { block, set, sheets, paper, way, screenOnly = false, ...drawn }: DocumentToPrint,
  fill: Fill,
  { measure }: Pick<Typeface, 'measure'>,
): LaidDocument {
  const sheet = sheetOf(paper, way)
  const lay: Lay = (nodes, section, most) =>
    screenOnly ? { bodies: [], pictures: drawn.pictures } : bodiesOf({ nodes, section, sheet, measure, most, ...drawn })
  const joined: Laid[] = []
  for (const { template, view, documentType, corner, heading, names, joins } of sheets) {
    const nodes = alignDecimals(fill(template, view))
    const section: Tag = { type: 'Sect' }
    const one = { documentType, corner, heading, names, nodes, section, ...lay(nodes, section) }
    const before = joins && !screenOnly ? joined.at(-1) : undefined
    const both = before && together(before, one, { lay, least: joins === 'one page' })
    if (both) joined.splice(-1, 1, both)
    else joined.push(one)
  }
  let to = 0
  const laid = joined.map(one => {
    const from = to + 1
    to += one.bodies.length
    return screenOnly ? { ...one, from: 0, to: 0 } : { ...one, from, to }
  })
  const pages = laid.flatMap(({ section, bodies, from, ...title }) =>
    bodies.map((items, index) => [
      ...headItems({ block, title, sheet, measure, tag: index === 0 ? { type: 'H1', parent: section } : undefined }),
      ...items,
      ...footItems({ block, title, numbers: { set, sheet: from + index, of: to }, sheet, measure }),
    ]),
  )
  return { sheet, paper, block, set, pages, sheets: laid.map(({ section: _, bodies: __, ...rest }) => rest) }
}

type Laid = SheetTitle &
  Bodies & { readonly nodes: readonly Node[]; readonly names: readonly string[]; readonly section: Tag }

/** Two sheets as one, the second under its own heading, where that saves a page; `least` where it must come to one. */
function together(
  before: Laid,
  { bodies: alone, nodes, corner, heading, names }: Laid,
  { lay, least }: { readonly lay: Lay; readonly least: boolean },
): Laid | undefined {
  const most = least ? 1 : before.bodies.length + alone.length - 1
  if (least && before.bodies.length + alone.length > 2) return undefined
  const all = [...before.nodes.map(unpinned), ...headingOf(heading, corner, nodes), ...nodes]
  const section: Tag = { type: 'Sect' }
  const { bodies, pictures } = lay(all, section, most)
  if (bodies.length > most) return undefined
  const both = (a: string, b: string, between: string): string => (a === b ? a : `${a}${between}${b}`)
  return {
    ...before,
    corner: before.corner.length + corner.length > 12 ? before.corner : both(before.corner, corner, ' '),
    heading: both(before.heading, heading, '; '),
    names: [...before.names, ...names],
    nodes: all,
    section,
    bodies,
    pictures,
  }
}

/** None for a sheet that itself begins with the number of its operation. */
function headingOf(heading: string, corner: string, [first]: readonly Node[]): readonly Node[] {
  const number = /^\d+/.exec(corner)?.[0]
  if (number && first !== undefined && textOf(first).trim().startsWith(number)) return []
  return [{ name: 'h2', classes: [], attributes: {}, children: [number ? `${corner} ${heading}` : heading] }]
}

/** What stood at the foot of a page stands where it comes. */
const unpinned = (node: Node): Node =>
  isNode(node) && has(node, 'bottom') ? { ...node, classes: node.classes.filter(name => name !== 'bottom') } : node

type Bodies = { readonly bodies: readonly (readonly Item[])[]; readonly pictures: PicturesByName }
/** `most`: pages beyond which nobody wants it, so that it may be given as it first comes out. */
type Lay = (nodes: readonly Node[], section: Tag, most?: number) => Bodies

/** What stands on the pages of a sheet; its drawings smaller where that saves a page, on this sheet alone. */
function bodiesOf({
  nodes,
  section,
  sheet,
  measure,
  most = Number.POSITIVE_INFINITY,
  pictures,
  smaller = [],
}: Pick<DocumentToPrint, 'pictures' | 'smaller'> &
  Pick<Typeface, 'measure'> & {
    readonly nodes: readonly Node[]
    readonly section: Tag
    readonly sheet: Sheet
    readonly most: number | undefined
  }): Bodies {
  const frame = { left: sheet.left, top: sheet.bodyTop, bottom: sheet.bodyBottom }
  const laidWith = (drawn: PicturesByName): Bodies => {
    const layout = { measure, pictures: drawn, bodyHeight: sheet.bodyBottom - sheet.bodyTop }
    const bodies = paginate(slicesOf(nodes, sheet.right - sheet.left, layout, section), frame)
    return { bodies, pictures: drawn }
  }
  const whole = laidWith(pictures)
  if (whole.bodies.length < 2) return whole
  // Where the text alone takes as many pages, no drawing is small enough.
  const bare = laidWith(NO_PICTURES).bodies.length
  if (bare >= whole.bodies.length || bare > most) return whole
  for (const draw of smaller) {
    const shrunk = shrunkIn(nodes, draw)
    if (shrunk.length === 0) return whole
    const less = new Map(shrunk)
    const tighter = laidWith({ get: name => less.get(name) ?? pictures.get(name) })
    if (tighter.bodies.length < whole.bodies.length) return tighter
  }
  return whole
}

const NO_PICTURES: PicturesByName = new Map()

/** The pictures of a sheet that can be drawn smaller. */
function shrunkIn(
  nodes: readonly Node[],
  smaller: (name: string) => Picture | undefined,
): readonly (readonly [string, Picture])[] {
  return nodes.filter(isNode).flatMap(({ attributes, children }) => {
    const name = attributes['data-picture']
    const picture = name === undefined ? undefined : smaller(name)
    return [...(name !== undefined && picture ? [[name, picture] as const] : []), ...shrunkIn(children, smaller)]
  })
}
