import { onPaper, type Point } from '../pictures/picture.ts'

export type Paper = 'a4' | 'letter'

/** The only three type sizes of our paper: tables, text, and the one thing that a page is about. */
export const TYPE: { readonly table: Point; readonly text: Point; readonly page: Point } = {
  table: 8,
  text: 10,
  page: 20,
}

/** One baseline grid: every height is a whole number of lines. */
export const LINE_HEIGHT: Point = onPaper(4)
/** From the top of a line to its baseline, the same for 8 and 10 pt, so that the two stand on one line. */
export const BASELINE: Point = 8.3
export const lines = (count: number): Point => count * LINE_HEIGHT
/** The next whole line at or above a height; a hair over a line does not ask for another. */
export const onGrid = (height: Point): Point => Math.ceil(height / LINE_HEIGHT - 1e-6) * LINE_HEIGHT

/** Room to write: ISO sets none; what a pencil needs in an oily hand. */
export const WRITE: { readonly width: Point; readonly height: Point; readonly round: Point } = {
  width: onPaper(15),
  height: onPaper(8),
  round: onPaper(1),
}

export const COLUMNS = 12
export const GUTTER: Point = onPaper(4)
/** Between the columns of a table. */
export const CELL_GAP: Point = onPaper(2)
/** Lines between the rows of a table: an aid for the eye alone. */
export const ROW_GREY = 0.6

/** Lying paper has fewer lines to spare. */
const HEAD_LINES: { readonly [way in Way]: number } = { upright: 4, across: 3 }
const FOOT_LINES = 3

/** Where things stand on a page, points from its top left corner. */
export type Sheet = {
  readonly width: Point
  readonly height: Point
  readonly left: Point
  readonly right: Point
  readonly top: Point
  /** The frame between head and foot. */
  readonly bodyTop: Point
  readonly bodyBottom: Point
  readonly footTop: Point
}

/** Millimetres. A4 by ISO 216; Letter 8.5 by 11 inch. */
const SIZES: { readonly [paper in Paper]: readonly [number, number] } = {
  a4: [210, 297],
  letter: [215.9, 279.4],
}

export type Way = 'upright' | 'across'

/** Filing margin 20 mm on the left, 10 mm elsewhere. Source: ISO 5457. */
export function sheetOf(paper: Paper, way: Way = 'upright'): Sheet {
  const [short, long] = SIZES[paper]
  const [width, height] = way === 'upright' ? [short, long] : [long, short]
  const top = onPaper(10)
  const count = Math.floor(onPaper(height - 20) / LINE_HEIGHT)
  return {
    width: onPaper(width),
    height: onPaper(height),
    left: onPaper(20),
    right: onPaper(width - 10),
    top,
    bodyTop: top + lines(HEAD_LINES[way]),
    bodyBottom: top + lines(count - FOOT_LINES),
    footTop: top + lines(count - FOOT_LINES),
  }
}
