import { create, type Font, type GlyphRun } from 'fontkit'
import { SUBSTITUTE } from '../letters.ts'
import type { Measure } from '../pictures/picture.ts'
import { SYMBOL, SYMBOL_WIDTH, SYMBOLS } from './symbols.ts'

/** The bytes of the two faces, TrueType. */
export type Fonts = { readonly regular: Uint8Array; readonly bold: Uint8Array }

/** The one typeface of our paper, opened once: it measures, it says what stands for a letter that it lacks, and the painter embeds it. */
export type Typeface = {
  readonly measure: Measure
  /** The text as it is printed: a box for every letter that the faces lack. */
  readonly shown: (text: string) => string
  /** For the writer of PDF alone.
   * @internal */
  readonly faces: { readonly regular: Font; readonly bold: Font }
}

/** Opens the typeface from the bytes of its two faces. */
export function openTypeface(fonts: Fonts): Typeface {
  const faces = { regular: faceOf(fonts.regular), bold: faceOf(fonts.bold) }
  const known = { regular: new Map<string, number>(), bold: new Map<string, number>() }
  const printable = new Map<string, boolean>([...SYMBOLS.keys()].map(symbol => [symbol, true]))
  const has = (character: string): boolean => {
    const found = printable.get(character)
    if (found !== undefined) return found
    const point = character.codePointAt(0) ?? 0
    const inBoth = faces.regular.hasGlyphForCodePoint(point) && faces.bold.hasGlyphForCodePoint(point)
    const answer = inBoth && !/\p{Cc}/u.test(character)
    printable.set(character, answer)
    return answer
  }
  const shown = (text: string): string => {
    for (const character of text) {
      if (!has(character)) return [...text].map(each => (has(each) ? each : SUBSTITUTE)).join('')
    }
    return text
  }

  /** Width of a word, in em: measured once, since the same words come back on every sheet. */
  const width = (word: string, face: 'regular' | 'bold'): number => {
    const found = known[face].get(word)
    if (found !== undefined) return found
    const { unitsPerEm } = faces[face]
    const plain = (text: string) => (text === '' ? 0 : faces[face].layout(text).advanceWidth / unitsPerEm)
    const em = shown(word)
      .split(SYMBOL)
      .reduce((sum, part) => sum + (SYMBOLS.has(part) ? SYMBOL_WIDTH : plain(part)), 0)
    known[face].set(word, em)
    return em
  }

  const runs = { regular: new Map<string, number>(), bold: new Map<string, number>() }
  /** Width of a run, in em: sheets are laid more than once before they are printed. */
  const runWidth = (text: string, face: 'regular' | 'bold'): number => {
    const found = runs[face].get(text)
    if (found !== undefined) return found
    let em = 0
    // The writer sets a run word by word, each with the space behind it.
    for (const word of text.match(/[^ ]* |[^ ]+/g) ?? []) em += width(word, face)
    runs[face].set(text, em)
    return em
  }

  return {
    faces,
    measure: (text, size, bold = false) => runWidth(text, bold ? 'bold' : 'regular') * size,
    shown,
  }
}

function faceOf(bytes: Uint8Array): Font {
  const face = create(bytes as Parameters<typeof create>[0])
  if (!('layout' in face)) throw new TypeError('a single face is wanted, got a collection')
  return shapedOnce(Object.create(face, { post: { value: postHeader(bytes) } }))
}

/**
 * The header of the table `post`, OpenType 1.9. The reader would decode the names of five thousand glyphs with it, which
 * nobody asks for.
 */
function postHeader(bytes: Uint8Array): object {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const tables = Array.from({ length: view.getUint16(4) }, (_, index) => 12 + 16 * index)
  const entry = tables.find(at => view.getUint32(at) === POST)
  if (entry === undefined) throw new TypeError('the face has no table post')
  const start = view.getUint32(entry + 8)
  return {
    italicAngle: view.getInt32(start + 4) / 65_536,
    underlinePosition: view.getInt16(start + 8),
    underlineThickness: view.getInt16(start + 10),
    isFixedPitch: view.getUint32(start + 12),
  }
}

/** `post` as four letters in one number. */
const POST = 0x706f_7374

/**
 * The face with a memory: the layout measures the very words that the writer sets, and shaping a word is dear. Every asker
 * gets positions of its own, since the writer scales them in place.
 */
function shapedOnce(face: Font): Font {
  const shaped = face.layout.bind(face)
  const known = new Map<string, GlyphRun>()
  const layout = (text: string, ...features: unknown[]): GlyphRun => {
    if (features.some(feature => feature !== undefined)) return shaped(text, ...(features as []))
    const run = known.get(text) ?? (STANDS_ALONE.test(text) ? letterByLetter(face, text) : shaped(text))
    known.set(text, run)
    const positions = run.positions.map(position => ({ ...position }))
    return Object.create(run, { positions: { value: positions } })
  }
  return Object.assign(face, { layout })
}

/** Latin, Greek, Cyrillic, punctuation and signs, no combining marks: each letter is drawn the same whatever stands beside it. */
const STANDS_ALONE =
  /^[\u0020-\u02ff\u0370-\u0482\u048a-\u052f\u1e00-\u1fff\u2000-\u200a\u2010-\u2027\u202f-\u205e\u2070-\u20cf\u2100-\u2bff]*$/

/**
 * Letters at their own widths, neither joined nor drawn closer: figures and decimal points stand in columns, and a part
 * number is found in the paper letter by letter. Other alphabets need the face's own rules.
 */
function letterByLetter(face: Font, text: string): GlyphRun {
  const glyphs = [...text].map(letter => face.glyphForCodePoint(letter.codePointAt(0) ?? 0))
  const positions = glyphs.map(({ advanceWidth }) => ({ xAdvance: advanceWidth, yAdvance: 0, xOffset: 0, yOffset: 0 }))
  const advanceWidth = glyphs.reduce((sum, glyph) => sum + glyph.advanceWidth, 0)
  return { glyphs, positions, advanceWidth } as unknown as GlyphRun
}
