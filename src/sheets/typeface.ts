import { create, type Font, type GlyphRun } from 'fontkit'
import type { Measure } from '../pictures/picture.ts'
import { SYMBOL, SYMBOL_WIDTH, SYMBOLS } from './symbols.ts'

/** The bytes of the two faces, TrueType. */
export type Fonts = { readonly regular: Uint8Array; readonly bold: Uint8Array }

/** The one typeface of our paper, opened once: it measures, it refuses what it cannot print, and the painter embeds it. */
export type Typeface = {
  readonly measure: Measure
  /** Throws on a character that would print as an empty box. */
  readonly guard: (text: string) => void
  readonly faces: { readonly regular: Font; readonly bold: Font }
}

export function openTypeface(fonts: Fonts): Typeface {
  const faces = { regular: faceOf(fonts.regular), bold: faceOf(fonts.bold) }
  const known = { regular: new Map<string, number>(), bold: new Map<string, number>() }
  const printable = new Set<string>(SYMBOLS.keys())

  /** Width of a word, in em: measured once, since the same words come back on every sheet. */
  const width = (word: string, face: 'regular' | 'bold'): number => {
    const found = known[face].get(word)
    if (found !== undefined) return found
    const { unitsPerEm } = faces[face]
    const plain = (text: string) => (text === '' ? 0 : faces[face].layout(text).advanceWidth / unitsPerEm)
    const em = word.split(SYMBOL).reduce((sum, part) => sum + (SYMBOLS.has(part) ? SYMBOL_WIDTH : plain(part)), 0)
    known[face].set(word, em)
    return em
  }

  return {
    faces,
    measure: (text, size, bold = false) => {
      const face = bold ? 'bold' : 'regular'
      let em = 0
      // The writer sets a run word by word, each with the space behind it.
      for (const word of text.match(/[^ ]* |[^ ]+/g) ?? []) em += width(word, face)
      return em * size
    },
    guard: text => {
      for (const character of text) {
        if (printable.has(character)) continue
        const point = character.codePointAt(0) ?? 0
        if (!faces.regular.hasGlyphForCodePoint(point) || !faces.bold.hasGlyphForCodePoint(point)) {
          throw new RangeError(
            `the typeface has no "${character}" (U+${point.toString(16).toUpperCase().padStart(4, '0')}), in "${text}"`,
          )
        }
        printable.add(character)
      }
    },
  }
}

function faceOf(bytes: Uint8Array): Font {
  const face = create(bytes as Parameters<typeof create>[0])
  if (!('layout' in face)) throw new TypeError('a single face is wanted, got a collection')
  return shapedOnce(face)
}

/**
 * The face with a memory: the layout measures the very words that the writer sets, and shaping a word is dear. Every asker
 * gets positions of its own, since the writer scales them in place.
 */
function shapedOnce(face: Font): Font {
  const shape = face.layout.bind(face)
  const known = new Map<string, GlyphRun>()
  const layout = (text: string, ...features: unknown[]): GlyphRun => {
    if (features.some(feature => feature !== undefined)) return shape(text, ...(features as []))
    const run = known.get(text) ?? shape(text)
    known.set(text, run)
    const positions = run.positions.map(position => ({ ...position }))
    return Object.create(run, { positions: { value: positions } })
  }
  return Object.assign(face, { layout })
}
