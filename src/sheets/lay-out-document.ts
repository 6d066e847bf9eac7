import type { Picture } from '../pictures/picture.ts'
import { alignDecimals } from './align-decimals.ts'
import type { Item, Tag } from './display-list.ts'
import { slicesOf } from './layout.ts'
import { isNode, type Node } from './markup.ts'
import { footItems, headItems, type SheetTitle, type TitleBlock } from './page-frame.ts'
import { paginate } from './paginate.ts'
import type { Fill, View } from './render-template.ts'
import { type Paper, type Sheet, sheetOf } from './theme.ts'
import type { Typeface } from './typeface.ts'

/** A sheet to print: which template, filled with what, under which title. */
export type SheetToPrint = SheetTitle & { readonly template: string; readonly view: View }

/** A sheet as marked up, and the numbers of the pages that it takes. */
export type LaidSheet = SheetTitle & { readonly nodes: readonly Node[]; readonly from: number; readonly to: number }

/** Both painters read this and decide nothing. */
export type LaidDocument = {
  readonly sheet: Sheet
  readonly paper: Paper
  readonly block: TitleBlock
  readonly sheets: readonly LaidSheet[]
  readonly pages: readonly (readonly Item[])[]
  readonly pictures: ReadonlyMap<string, Picture>
}

export type DocumentToPrint = {
  readonly block: TitleBlock
  readonly sheets: readonly SheetToPrint[]
  readonly pictures: ReadonlyMap<string, Picture>
  readonly paper: Paper
  /** The same picture with less room, where there is such a one: taken where it saves a page. */
  readonly smaller?: (name: string) => Picture | undefined
}

/** Every sheet begins a page; pages are numbered through the whole document. */
export function layOutDocument(
  { block, sheets, paper, smaller, ...given }: DocumentToPrint,
  fill: Fill,
  { measure }: Pick<Typeface, 'measure'>,
): LaidDocument {
  const sheet = sheetOf(paper)
  const pictures = new Map(given.pictures)
  const frame = { left: sheet.left, top: sheet.bodyTop, bottom: sheet.bodyBottom }
  let to = 0
  const laid = sheets.map(({ template, view, documentType, corner, heading }) => {
    const nodes = alignDecimals(fill(template, view))
    const section: Tag = { type: 'Sect' }
    const bodiesWith = (drawn: ReadonlyMap<string, Picture>) => {
      const layout = { measure, pictures: drawn, bodyHeight: sheet.bodyBottom - sheet.bodyTop }
      return paginate(slicesOf(nodes, sheet.right - sheet.left, layout, section), frame)
    }
    let bodies = bodiesWith(pictures)
    const shrunk = bodies.length > 1 && smaller ? shrunkIn(nodes, smaller) : []
    if (shrunk.length > 0) {
      const tighter = bodiesWith(new Map([...pictures, ...shrunk]))
      if (tighter.length < bodies.length) {
        bodies = tighter
        for (const [name, picture] of shrunk) pictures.set(name, picture)
      }
    }
    const from = to + 1
    to += bodies.length
    return { documentType, corner, heading, nodes, from, to, section, bodies }
  })
  const pages = laid.flatMap(({ section, bodies, from, ...title }) =>
    bodies.map((items, index) => [
      ...headItems({ block, title, sheet, measure, tag: index === 0 ? { type: 'H1', parent: section } : undefined }),
      ...items,
      ...footItems({ block, title, numbers: { sheet: from + index, of: to }, sheet, measure }),
    ]),
  )
  return { sheet, paper, block, pictures, pages, sheets: laid.map(({ section: _, bodies: __, ...rest }) => rest) }
}

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
