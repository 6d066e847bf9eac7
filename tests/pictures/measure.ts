import PDFDocument from 'pdfkit'
import type { Measure } from '../../src/pictures/picture.ts'

const FONTS = 'node_modules/dejavu-fonts-ttf/ttf'
const document = new PDFDocument({ autoFirstPage: false })
  .registerFont('regular', `${FONTS}/DejaVuSansCondensed.ttf`)
  .registerFont('bold', `${FONTS}/DejaVuSansCondensed-Bold.ttf`)

/** Widths as the page sets them, read from the typeface by pdfkit. */
export const measure: Measure = (text, size, bold) =>
  document
    .font(bold ? 'bold' : 'regular')
    .fontSize(size)
    .widthOfString(text)
