import PDFDocument from 'pdfkit'
import { LINE } from '../pictures/picture.ts'
import { escaped } from '../pictures/picture-svg.ts'
import type { Item, Tag } from './display-list.ts'
import type { LaidDocument } from './lay-out-document.ts'
import { paintMarks, paintText } from './paint-marks.ts'
import { TYPE, WRITE } from './theme.ts'
import type { Typeface } from './typeface.ts'

type Pdf = PDFKit.PDFDocument

export type PdfOptions = {
  /** Structure for whoever has the page read out: a third more bytes and time. */
  readonly tagged?: boolean
  readonly compress?: boolean
}

/**
 * The document as PDF 1.7: real text in an embedded typeface, the same bytes for the same input. It says of itself what it
 * keeps: PDF/A-2b (ISO 19005-2) and, where it is tagged, PDF/UA-1 (ISO 14289-1).
 */
export async function paintPdf(
  { sheet, pages, block, set, sheets }: LaidDocument,
  face: Typeface,
  { tagged = true, compress = true }: PdfOptions = {},
): Promise<Uint8Array> {
  const pdf = new PDFDocument({
    size: [sheet.width, sheet.height],
    margin: 0,
    autoFirstPage: false,
    compress,
    tagged,
    pdfVersion: '1.7',
    subset: 'PDF/A-2b',
    lang: 'en',
    displayTitle: true,
    info: {
      Title: `${block.identificationNumber} rev ${block.revision} ${set}, batch ${block.batch}`,
      Author: block.legalOwner,
      Creator: block.creator,
      Producer: block.creator,
      Keywords: `fingerprint ${block.fingerprint}`,
      // biome-ignore lint/style/noRestrictedGlobals: the day of issue, which is given; the clock is not asked
      CreationDate: new Date(`${block.dateOfIssue}T00:00:00Z`),
    },
    // No face of the writer's own: it would be read from a file.
    ...({ font: null } as object),
  })
  // Every run stands where the layout put it: the writer need not measure it twice more, for an underline and for its own pen.
  Object.assign(pdf, { widthOfString: () => 0 })
  escapeMetadata(pdf)
  if (tagged) sayAccessible(pdf)
  const bytes = collected(pdf)
  pdf.registerFont('regular', face.faces.regular as never).registerFont('bold', face.faces.bold as never)
  const structure = tagged ? openStructure(pdf) : undefined
  const beginning = new Map(sheets.map(({ from, corner, heading }) => [from, `${corner} ${heading}`]))
  for (const [index, items] of pages.entries()) {
    pdf.addPage()
    const mark = beginning.get(index + 1)
    if (mark !== undefined) pdf.outline.addItem(mark)
    paintPage(pdf, items, face, structure)
  }
  structure?.end()
  pdf.end()
  return await bytes
}

/** The writer puts the same words into the metadata, which is XML, as they are: `Smith & Sons` would break it. */
function escapeMetadata(pdf: Pdf): void {
  const writer: { info: object; readonly _addInfo: () => void } = pdf as never
  const plain = writer.info
  const inXml = Object.entries(plain).map(([key, value]) => [key, typeof value === 'string' ? escaped(value) : value])
  const addInfo = writer._addInfo
  Object.assign(writer, {
    _addInfo: () => {
      writer.info = Object.fromEntries(inXml)
      addInfo.call(writer)
      writer.info = plain
    },
  })
}

/** The writer knows one part of a standard at a time; a tagged document keeps two. */
function sayAccessible(pdf: Pdf): void {
  const writer: { readonly endSubset: () => void; readonly appendXML: (xml: string) => void } = pdf as never
  const { endSubset } = writer
  Object.assign(writer, {
    endSubset: () => {
      endSubset.call(writer)
      writer.appendXML(
        '<rdf:Description xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/" rdf:about=""><pdfuaid:part>1</pdfuaid:part></rdf:Description>',
      )
    },
  })
}

function collected(pdf: Pdf): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = []
    pdf.on('data', (chunk: Uint8Array) => chunks.push(chunk))
    pdf.on('error', reject)
    pdf.on('end', () => {
      const bytes = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0))
      let at = 0
      for (const chunk of chunks) {
        bytes.set(chunk, at)
        at += chunk.length
      }
      resolve(bytes)
    })
  })
}

/** Rules and cells lie under the text, and are page furniture; text follows in reading order, each tag one stretch. */
function paintPage(pdf: Pdf, items: readonly Item[], face: Typeface, structure: Structure | undefined): void {
  const under = items.filter(({ kind }) => kind === 'rule' || kind === 'cell')
  const over = items.filter(({ kind }) => kind !== 'rule' && kind !== 'cell')
  for (const [stretch, tag] of [...stretches(under), ...stretches(over)]) {
    structure?.begin(tag, stretch)
    for (const item of stretch) paintItem(pdf, item, face)
    structure?.finish(tag)
  }
}

function stretches(items: readonly Item[]): readonly (readonly [readonly Item[], Tag | undefined])[] {
  const out: [Item[], Tag | undefined][] = []
  for (const item of items) {
    const last = out.at(-1)
    if (last && last[1] === item.tag) last[0].push(item)
    else out.push([[item], item.tag])
  }
  return out
}

function paintItem(pdf: Pdf, item: Item, face: Typeface): void {
  const { x, y } = item
  switch (item.kind) {
    case 'text':
      paintText({ pdf, written: item.text, x, baseline: y, size: item.size, bold: item.bold, face })
      break
    case 'ring': {
      pdf.lineWidth(LINE.thin).strokeColor('#000000').circle(x, y, item.radius).stroke()
      const wide = face.measure(item.text, TYPE.table)
      // Figures of 8 pt are 5.8 high: half of that below the middle.
      paintText({ pdf, written: item.text, x: x - wide / 2, baseline: y + 2.9, size: TYPE.table, bold: false, face })
      break
    }
    case 'rule': {
      const grey = Math.round(item.grey * 255)
        .toString(16)
        .padStart(2, '0')
      pdf.lineWidth(item.width).strokeColor(`#${grey}${grey}${grey}`)
      pdf
        .moveTo(x, y)
        .lineTo(x + item.dx, y + item.dy)
        .stroke()
      break
    }
    case 'cell':
      pdf.lineWidth(LINE.thin).strokeColor('#808080').roundedRect(x, y, item.width, item.height, WRITE.round).stroke()
      break
    case 'picture':
      paintMarks({ pdf, picture: item.picture, x, y, scale: item.scale, face })
      break
    case 'bars':
      for (const bar of item.bars.rectangles) pdf.rect(x + bar.x, y + bar.y, bar.width, bar.height)
      pdf.fill('#000000')
  }
}

type Structure = {
  begin: (tag: Tag | undefined, items: readonly Item[]) => void
  finish: (tag?: Tag) => void
  end: () => void
}

/** One Document element, under it whatever the tags of the items say, in the order in which they are met. */
function openStructure(pdf: Pdf): Structure {
  const root = pdf.struct('Document')
  pdf.addStructure(root)
  const known = new Map<Tag, PDFKit.PDFStructureElement>()
  const elementOf = (tag: Tag, items: readonly Item[] = []): PDFKit.PDFStructureElement => {
    const parent = tag.parent ? elementOf(tag.parent) : root
    // A row comes with all its cells.
    const found = known.get(tag)
    if (found) return found
    const bbox = tag.type === 'Figure' ? items.map(boxOf)[0] : undefined
    const options = {
      ...(tag.alternative && { alt: tag.alternative }),
      ...(tag.scope && { scope: tag.scope }),
      ...(bbox && { bbox }),
    }
    const element = pdf.struct(tag.type as 'P', options as never)
    if (tag.columns !== undefined) {
      const { dictionary }: { dictionary: { data: object } } = element as never
      Object.assign(dictionary.data, { A: { O: 'Table', ColSpan: tag.columns } })
    }
    parent.add(element)
    known.set(tag, element)
    for (const cell of tag.cells ?? []) elementOf(cell)
    return element
  }
  return {
    begin: (tag, items) => {
      if (tag) elementOf(tag, items).add(pdf.markStructureContent(tag.type as 'P'))
      else pdf.markContent('Artifact', { type: 'Layout' })
    },
    finish: () => {
      pdf.endMarkedContent()
    },
    end: () => {
      root.end()
    },
  }
}

/** Left, top, right and bottom of a figure on its page. */
function boxOf(item: Item): readonly [number, number, number, number] | undefined {
  const { x, y } = item
  if (item.kind === 'picture') return [x, y, x + item.picture.width * item.scale, y + item.picture.height * item.scale]
  return item.kind === 'bars' ? [x, y, x + item.bars.width, y + item.bars.height] : undefined
}
