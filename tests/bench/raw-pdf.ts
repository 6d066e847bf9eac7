import type { Font } from 'fontkit'
import PDFDocument from 'pdfkit'

/** What a document was asked for: by pages, every run of text with its face, and every shape by the number of its segments. */
export type Asked = readonly { readonly runs: readonly Run[]; readonly shapes: readonly number[] }[]
type Run = readonly ['regular' | 'bold', string]

const SEGMENTS = ['moveTo', 'lineTo', 'bezierCurveTo', 'rect'] as const
const ENDS = ['stroke', 'fill', 'fillAndStroke'] as const

/** What pdfkit is asked for while the work is done, one entry a document. */
export async function askedOfPdfkit(work: () => Promise<unknown>): Promise<readonly Asked[]> {
  const writer = PDFDocument.prototype as unknown as Record<string, (...given: unknown[]) => unknown>
  const documents = new Map<unknown, { runs: Run[]; shapes: number[] }[]>()
  const state = { face: 'regular' as Run[0], segments: 0 }
  const replaced: [string, (...given: unknown[]) => unknown][] = []
  const listen = (name: string, heard: (pdf: unknown, first: unknown) => void): void => {
    const own = writer[name]
    if (!own) throw new Error(`pdfkit has no ${name}`)
    replaced.push([name, own])
    writer[name] = function (this: unknown, ...given: unknown[]) {
      heard(this, given[0])
      return own.apply(this, given)
    }
  }
  const page = (pdf: unknown) => documents.get(pdf)?.at(-1)
  listen('addPage', pdf => {
    documents.set(pdf, [...(documents.get(pdf) ?? []), { runs: [], shapes: [] }])
  })
  listen('font', (_, name) => {
    if (name === 'regular' || name === 'bold') state.face = name
  })
  listen('text', (pdf, text) => page(pdf)?.runs.push([state.face, String(text)]))
  for (const name of SEGMENTS) {
    listen(name, () => {
      state.segments++
    })
  }
  for (const name of ENDS) {
    listen(name, pdf => {
      page(pdf)?.shapes.push(state.segments)
      state.segments = 0
    })
  }
  try {
    await work()
  } finally {
    for (const [name, own] of replaced) writer[name] = own
  }
  return [...documents.values()]
}

/** The floor of a document: the same runs, as many shapes of as many segments, and the same pages, by pdfkit's plainest calls. */
export function rawPdf(asked: Asked, faces: { readonly regular: Font; readonly bold: Font }): Promise<number> {
  return new Promise((resolve, reject) => {
    // No face of the writer's own, which its declared type does not know.
    const pdf = new PDFDocument({ margin: 0, autoFirstPage: false, size: 'A4', ...({ font: null } as object) })
    let bytes = 0
    pdf.on('data', (chunk: Uint8Array) => {
      bytes += chunk.length
    })
    pdf.on('error', reject)
    pdf.on('end', () => resolve(bytes))
    pdf.registerFont('regular', faces.regular as never).registerFont('bold', faces.bold as never)
    for (const { runs, shapes } of asked) {
      pdf.addPage()
      for (const [i, [face, text]] of runs.entries()) {
        const [x, y] = [40 + (i % 5) * 100, 40 + (i % 70) * 11]
        pdf.font(face).fontSize(8).text(text, x, y, { lineBreak: false, baseline: 'alphabetic' })
      }
      for (const [i, segments] of shapes.entries()) {
        const y = 40 + (i % 700)
        pdf.moveTo(40, y)
        for (let segment = 1; segment < segments; segment++) pdf.lineTo(40 + segment * 2.5, y)
        pdf.stroke()
      }
    }
    pdf.end()
  })
}
