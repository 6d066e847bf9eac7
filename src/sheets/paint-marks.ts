import type { Fill, PathStep, Picture, Point, Stroke } from '../pictures/picture.ts'
import { tone } from '../pictures/tone.ts'
import { SYMBOL, SYMBOL_HEIGHT, SYMBOL_WIDTH, SYMBOLS } from './symbols.ts'
import type { Typeface } from './typeface.ts'

type Pdf = PDFKit.PDFDocument

/** Draws the marks of a picture with its top left corner at (x, y). */
export function paintMarks({
  pdf,
  picture: { marks },
  x,
  y,
  scale,
  face,
}: {
  readonly pdf: Pdf
  readonly picture: Picture
  readonly x: Point
  readonly y: Point
  readonly scale: number
  readonly face: Typeface
}): void {
  pdf.save()
  pdf.transform(scale, 0, 0, scale, x, y)
  for (const mark of marks) {
    if (mark.kind === 'text') {
      const width = face.measure(mark.text, mark.size, mark.bold)
      const back = mark.anchor === 'start' ? 0 : mark.anchor === 'middle' ? width / 2 : width
      const turned = mark.turned ?? 0
      if (turned !== 0) pdf.save().rotate(turned, { origin: [mark.x, mark.y] })
      paintText({
        pdf,
        written: mark.text,
        x: mark.x - back,
        baseline: mark.y,
        size: mark.size,
        bold: mark.bold ?? false,
        face,
      })
      if (turned !== 0) pdf.restore()
      continue
    }
    if (mark.kind === 'line') pdf.moveTo(mark.x1, mark.y1).lineTo(mark.x2, mark.y2)
    else if (mark.kind === 'circle') pdf.circle(mark.x, mark.y, mark.radius)
    else paintSteps(pdf, mark.steps)
    finish(pdf, mark.kind === 'line' ? undefined : mark.fill, mark.stroke)
  }
  pdf.restore()
}

function finish(pdf: Pdf, fill: Fill | undefined, stroke: Stroke | undefined): void {
  if (stroke) {
    pdf.lineWidth(stroke.width).strokeColor(tone(stroke.grey ?? 0))
    if (stroke.dash && stroke.dash.length > 0) dash(pdf, stroke.dash)
    else pdf.undash()
  }
  if (fill && stroke) pdf.fillAndStroke(tone(fill.grey), tone(stroke.grey ?? 0))
  else if (fill) pdf.fill(tone(fill.grey))
  else if (stroke) pdf.stroke()
  // Text is filled too.
  if (fill) pdf.fillColor('#000000')
}

/** The writer takes a pattern of any length; its declared type knows one length and a space. */
const dash = (pdf: Pdf, pattern: readonly Point[]): void => {
  const set: (pattern: readonly number[]) => void = pdf.dash.bind(pdf) as never
  set(pattern)
}

function paintSteps(pdf: Pdf, steps: readonly PathStep[]): void {
  for (const step of steps) {
    if (step.to === 'move') pdf.moveTo(step.x, step.y)
    else if (step.to === 'line') pdf.lineTo(step.x, step.y)
    else if (step.to === 'curve') pdf.bezierCurveTo(step.x1, step.y1, step.x2, step.y2, step.x, step.y)
    else pdf.closePath()
  }
}

/** A text on its baseline in the fill colour of a page, which is black; symbols that the typeface lacks are drawn in its line. */
export function paintText({
  pdf,
  written,
  x,
  baseline,
  size,
  bold,
  face,
}: {
  readonly pdf: Pdf
  readonly written: string
  readonly x: Point
  readonly baseline: Point
  readonly size: Point
  readonly bold: boolean
  readonly face: Typeface
}): void {
  const text = face.shown(written)
  pdf.font(bold ? 'bold' : 'regular', size)
  if (!SYMBOL.test(text)) {
    pdf.text(text, x, baseline, { lineBreak: false, baseline: 'alphabetic' })
    return
  }
  let at = x
  for (const part of text.split(SYMBOL)) {
    const symbol = SYMBOLS.get(part)
    if (symbol) {
      const height = SYMBOL_HEIGHT * size
      pdf.save().transform(height, 0, 0, height, at + ((SYMBOL_WIDTH - SYMBOL_HEIGHT) * size) / 2, baseline - height)
      pdf
        .lineWidth((bold ? 0.12 : 0.08) / SYMBOL_HEIGHT)
        .undash()
        .strokeColor('#000000')
      paintSteps(pdf, symbol)
      pdf.stroke().restore()
    } else if (part !== '') {
      pdf.text(part, at, baseline, { lineBreak: false, baseline: 'alphabetic' })
    }
    at += symbol ? SYMBOL_WIDTH * size : face.measure(part, size, bold)
  }
}
