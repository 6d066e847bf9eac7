import type { PacketData } from '../page/packet-data.ts'
import { type DocumentToPrint, type LaidDocument, layOutDocument } from './lay-out-document.ts'
import { paintHtml } from './paint-html.ts'
import { paintPdf } from './paint-pdf.ts'
import { openTemplates } from './render-template.ts'
import type { PageScript } from './screen-data.ts'
import type { Template } from './template.ts'
import type { Typeface } from './typeface.ts'

/** Which files are wanted of a document. */
export type Formats = { readonly pdf: boolean; readonly html: boolean }
export type Printed = {
  /** One a set that goes on paper, in order, each with the name of its file without its ending. */
  readonly documents: readonly { readonly name: string; readonly pdf: Uint8Array }[]
  /** All of it, for a screen. */
  readonly html?: string
}

export type PrintOptions = {
  /** Every template by its file name without `.hbs`. */
  readonly templates: ReadonlyMap<string, Template>
  readonly typeface: Typeface
  readonly formats: Formats
  /** Structure for whoever has the page read out; on unless the shop wants the quick print. */
  readonly tagged?: boolean
  /** What makes the screen a tool: takes readings, judges and keeps them. Left out: it is paper on a screen. */
  readonly script?: PageScript
}

/** A document with the name of its file, and where it is wanted. */
export type NamedDocument = DocumentToPrint & {
  readonly name: string
  readonly onPaper: boolean
  readonly onScreen: boolean
  /** Whether a sheet of such names is wanted on paper; left out: all are. */
  readonly only?: (names: readonly string[]) => boolean
}

/** Lays every document out once and paints what is asked for. Same input, same bytes. */
export async function printDocuments(
  given: readonly NamedDocument[],
  data: PacketData,
  options: PrintOptions,
): Promise<Printed> {
  const { templates, typeface, tagged = true, script } = options
  const fill = openTemplates(templates)
  const shown: LaidDocument[] = []
  const documents: { name: string; pdf: Uint8Array }[] = []
  for (const { name, onPaper, onScreen, only, ...document } of given) {
    if (!onPaper && !onScreen) continue
    const laid = layOutDocument(document, fill, typeface)
    if (onScreen) shown.push(laid)
    if (onPaper) documents.push({ name, pdf: await paintPdf(only ? sheetsOf(laid, only) : laid, typeface, { tagged }) })
  }
  const [first, ...rest] = shown
  return { documents, ...(first && { html: paintHtml([first, ...rest], script && { script, data }) }) }
}

/** Some sheets of a document, each numbered as it is in the whole. */
function sheetsOf(laid: LaidDocument, only: (names: readonly string[]) => boolean): LaidDocument {
  const sheets = laid.sheets.filter(({ names }) => only(names))
  return {
    ...laid,
    pages: sheets.flatMap(({ from, to }) => laid.pages.slice(from - 1, to)),
    sheets: sheets.map((sheet, index) => {
      const before = sheets.slice(0, index).reduce((sum, { from, to }) => sum + to - from + 1, 0)
      return { ...sheet, from: before + 1, to: before + 1 + sheet.to - sheet.from }
    }),
  }
}
