import { type DocumentToPrint, layOutDocument } from './lay-out-document.ts'
import { paintHtml } from './paint-html.ts'
import { paintPdf } from './paint-pdf.ts'
import { openTemplates } from './render-template.ts'
import type { Template } from './template.ts'
import type { Typeface } from './typeface.ts'

/** Which files are wanted of a document. */
export type Formats = { readonly pdf: boolean; readonly html: boolean }
export type Printed = { readonly pdf?: Uint8Array; readonly html?: string }

export type PrintOptions = {
  /** Every template by its file name without `.hbs`. */
  readonly templates: ReadonlyMap<string, Template>
  readonly typeface: Typeface
  readonly formats: Formats
  /** Structure for whoever has the page read out; on unless the shop wants the quick print. */
  readonly tagged?: boolean
}

/** Lays a document out once and paints what is asked for. Same input, same bytes. */
export async function printDocument(document: DocumentToPrint, options: PrintOptions): Promise<Printed> {
  const { templates, typeface, formats, tagged = true } = options
  const laid = layOutDocument(document, openTemplates(templates), typeface)
  return {
    ...(formats.pdf && { pdf: await paintPdf(laid, typeface, { tagged }) }),
    ...(formats.html && { html: paintHtml(laid) }),
  }
}
