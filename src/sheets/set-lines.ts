import type { Measure, Point } from '../pictures/picture.ts'
import { has, isNode, type Node } from './markup.ts'
import { LINE_HEIGHT, TYPE } from './theme.ts'

/** How a stretch of text is set. */
export type Style = { readonly size: Point; readonly bold: boolean; readonly ring?: boolean }
/** A word with its style; words of one `glued` group stand without a space between them and do not part. */
type Word = { readonly text: string; readonly style: Style; readonly glued: boolean; readonly newLine: boolean }

/** A stretch of one style on a line, x from the line's left end. */
export type Piece = { readonly text: string; readonly style: Style; readonly x: Point; readonly width: Point }
export type Line = { readonly pieces: readonly Piece[]; readonly width: Point }

/** A number in a circle is as wide as a line is high, and a little air. */
export const RING_WIDTH: Point = LINE_HEIGHT
const SPACE = ' '

export type InlineText = {
  readonly lines: (width: Point) => readonly Line[]
  /** Of the widest word, and of the text on as few lines as it asks for. */
  readonly least: Point
  readonly most: Point
}

/** The words of an element, ready to be set at any width. */
export function inlineText(nodes: readonly Node[], style: Style, measure: Measure): InlineText {
  const groups = glue(wordsOf(nodes, style))
  const widthOf = ({ text, style }: Word): Point => (style.ring ? RING_WIDTH : measure(text, style.size, style.bold))
  const sized = groups.map(words => {
    const width = words.reduce((sum, word) => sum + widthOf(word), 0)
    return { words, width }
  })
  let run = 0
  let most = 0
  for (const { words, width } of sized) {
    const [first] = words
    if (first === undefined) continue
    run = first.newLine ? width : run + (run > 0 ? spaceBefore(first, measure) : 0) + width
    most = Math.max(most, run)
  }
  return {
    least: Math.max(0, ...sized.map(({ width }) => width)),
    most,
    lines: width => setLines(sized, width, measure, widthOf),
  }
}

const spaceBefore = ({ style }: Word, measure: Measure): Point => measure(SPACE, style.size, style.bold)

type Group = { readonly words: readonly Word[]; readonly width: Point }

/** Fills lines from the left; a word wider than the line is cut by its characters, since nothing may be lost. */
function setLines(
  groups: readonly Group[],
  width: Point,
  measure: Measure,
  widthOf: (word: Word) => Point,
): readonly Line[] {
  const out: Line[] = []
  let pieces: Piece[] = []
  let x = 0
  /** A space that is drawn but not seen, so that words do not run together where the text is read out or copied. */
  const part = () => {
    const last = pieces.at(-1)
    if (last && !last.style.ring) pieces[pieces.length - 1] = { ...last, text: last.text + SPACE }
  }
  const close = () => {
    out.push({ pieces, width: x })
    pieces = []
    x = 0
  }
  const put = (word: Word, gap: Point) => {
    const last = pieces.at(-1)
    const wide = widthOf(word)
    if (last && !word.style.ring && sameStyle(last.style, word.style)) {
      const text = last.text + (gap > 0 ? SPACE : '') + word.text
      pieces[pieces.length - 1] = { ...last, text, width: last.width + gap + wide }
    } else {
      if (gap > 0) part()
      pieces.push({ text: word.text, style: word.style, x: x + gap, width: wide })
    }
    x += gap + wide
  }
  const slack = 1e-6
  for (const group of groups) {
    const [first] = group.words
    if (first === undefined) continue
    if (first.newLine && (pieces.length > 0 || out.length > 0)) {
      part()
      close()
    }
    let gap = pieces.length > 0 ? spaceBefore(first, measure) : 0
    if (pieces.length > 0 && x + gap + group.width > width + slack) {
      part()
      close()
      gap = 0
    }
    const tooWide = group.width > width + slack
    for (const word of group.words) {
      for (const part of tooWide ? cut(word, width, widthOf) : [word]) {
        if (tooWide && pieces.length > 0 && x + gap + widthOf(part) > width + slack) close()
        put(part, pieces.length > 0 ? gap : 0)
        gap = 0
      }
    }
  }
  if (pieces.length > 0) close()
  return out
}

function cut(word: Word, width: Point, widthOf: (word: Word) => Point): readonly Word[] {
  if (word.style.ring || widthOf(word) <= width) return [word]
  const parts: Word[] = []
  let text = ''
  for (const character of word.text) {
    if (text !== '' && widthOf({ ...word, text: text + character }) > width) {
      parts.push({ ...word, text })
      text = ''
    }
    text += character
  }
  return [...parts, { ...word, text }]
}

const sameStyle = (a: Style, b: Style): boolean => a.size === b.size && a.bold === b.bold && !a.ring && !b.ring

function glue(words: readonly Word[]): readonly (readonly Word[])[] {
  const groups: Word[][] = []
  for (const word of words) {
    const group = groups.at(-1)
    if (word.glued && group) group.push(word)
    else groups.push([word])
  }
  return groups
}

/** Breaking spaces only: a figure space or a no-break space belongs to its word. */
const BREAK = /[ \n\t\r]+/

function wordsOf(nodes: readonly Node[], style: Style): readonly Word[] {
  const words: Word[] = []
  let spaced = true
  let newLine = false
  const walk = (node: Node, style: Style): void => {
    if (isNode(node)) {
      if (node.name === 'br') {
        newLine = true
        spaced = true
        return
      }
      const inner: Style = {
        size: node.name === 'small' ? TYPE.table : has(node, 'big') ? TYPE.page : style.size,
        bold: style.bold || node.name === 'b' || has(node, 'size'),
        ...(has(node, 'ring') && { ring: true }),
      }
      for (const child of node.children) walk(child, has(node, 'size') ? { ...inner, size: TYPE.text } : inner)
      return
    }
    node.split(BREAK).forEach((text, index) => {
      if (index > 0) spaced = true
      if (text === '') return
      words.push({ text, style, glued: !spaced && !newLine && words.length > 0, newLine })
      spaced = false
      newLine = false
    })
  }
  for (const node of nodes) walk(node, style)
  return words
}
