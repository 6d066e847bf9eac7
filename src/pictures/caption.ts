import { SMALL, text } from './marks.ts'
import type { Mark, Measure, Point } from './picture.ts'

const PITCH: Point = 11

export type Caption = { readonly height: Point; readonly marksAt: (bottom: Point) => readonly Mark[] }

/** Sentences under a picture, broken between words to its width; each sentence of its own line starts a new one. */
export function captionBlock(sentences: readonly string[], width: Point, measure: Measure): Caption {
  const lines = sentences.flatMap(sentence => wrapped(sentence, width, measure))
  return {
    height: lines.length * PITCH + 4,
    marksAt: bottom =>
      lines.map((words, index) => text({ x: 0, y: bottom - 3 - (lines.length - 1 - index) * PITCH }, words)),
  }
}

function wrapped(sentence: string, width: Point, measure: Measure): readonly string[] {
  const lines: string[] = []
  for (const word of sentence.split(' ')) {
    const last = lines.at(-1)
    const longer = last === undefined ? word : `${last} ${word}`
    if (last === undefined || measure(longer, SMALL) > width) lines.push(word)
    else lines[lines.length - 1] = longer
  }
  return lines
}
