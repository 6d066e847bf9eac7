import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { create, type GlyphRun } from 'fontkit'
import { describe, expect, it } from 'vitest'
import { layOutDocument } from '../../src/sheets/lay-out-document.ts'
import { parseMarkup } from '../../src/sheets/markup.ts'
import { typeface } from './demo-packet.ts'

const require = createRequire(import.meta.url)

describe('the guard of the typeface', () => {
  it.each([...'Ø±≤≥µ°√Δ→×⌀∥∠◎⏥○−–·☐½'])('lets %s pass, which the two faces have', character => {
    expect(() => typeface.guard(character)).not.toThrow()
  })

  it.each([...'⌖⌭⌓⌒⌯⌰⏤⟂'])('lets %s pass, which is drawn: symbols of ISO 1101', character => {
    expect(() => typeface.guard(character)).not.toThrow()
    expect(typeface.measure(character, 10)).toBeGreaterThan(5)
  })

  it.each(['漢', 'Ⓜ', '\n', '\u0007'])('refuses %j, which would print as an empty box', character => {
    expect(() => typeface.guard(`a ${character} b`)).toThrow(/the typeface has no/)
  })

  it('reads every text of a sheet before it is printed', () => {
    const document = {
      block: {
        legalOwner: 'Oxmere Pump Works',
        identificationNumber: 'OX-098-21',
        revision: 'B',
        title: 'Cylinder liner',
        batch: '24-117',
        dateOfIssue: '2026-11-25',
        creator: 'linerwright',
        fingerprint: '0bd5bebc6b1e',
      },
      sheets: [{ template: 'note', documentType: 'Note', corner: '1', heading: 'Note', view: {} }],
      pictures: new Map(),
      paper: 'a4' as const,
    }
    expect(() => layOutDocument(document, () => parseMarkup('<p>Grind the 銹 off</p>', 'note'), typeface)).toThrow(
      'U+92B9',
    )
    expect(
      layOutDocument(document, () => parseMarkup('<p>Grind the rust off</p>', 'note'), typeface).pages,
    ).toHaveLength(1)
  })
})

describe('measuring', () => {
  it('finds all figures of one width, so that columns of them stand straight', () => {
    const widths = [...'0123456789\u2007'].map(figure => typeface.measure(figure, 8))
    for (const width of widths) expect(width).toBeCloseTo(widths[0] ?? 0, 9)
    expect(typeface.measure('\u2008', 8)).toBeCloseTo(typeface.measure('.', 8), 9)
  })

  it('adds up a run word by word and grows with the size', () => {
    const parts = typeface.measure('grind ', 8) + typeface.measure('bore', 8)
    expect(typeface.measure('grind bore', 8)).toBeCloseTo(parts, 9)
    expect(typeface.measure('grind bore', 16)).toBeCloseTo(2 * parts, 9)
  })
})

describe('the faces', () => {
  const bytes = (name: string) => readFileSync(require.resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`))
  const own = { regular: create(bytes('DejaVuSansCondensed')), bold: create(bytes('DejaVuSansCondensed-Bold')) }
  type Face = { readonly post: Readonly<Record<string, number>>; layout: (text: string) => GlyphRun }

  it.each(['regular', 'bold'] as const)('%s: the header of its table post is what fontkit decodes', face => {
    const [ours, theirs] = [typeface.faces[face], own[face]].map(one => (one as unknown as Face).post)
    for (const key of ['italicAngle', 'underlinePosition', 'underlineThickness', 'isFixedPitch'])
      expect(ours?.[key]).toBe(theirs?.[key])
  })

  it('set letter by letter: the same glyphs as fontkit finds, each at its own width', () => {
    const theirs = own.regular as unknown as Face
    for (const word of ['48.016', 'Ø55', 'AVTo', '±0.05', '≥', 'Ström', 'Ωμέγα']) {
      const run = typeface.faces.regular.layout(word)
      expect(run.glyphs.map(({ id }) => id)).toEqual(theirs.layout(word).glyphs.map(({ id }) => id))
      expect(run.positions.map(({ xAdvance }) => xAdvance)).toEqual(run.glyphs.map(({ advanceWidth }) => advanceWidth))
      expect(run.advanceWidth).toBe(run.glyphs.reduce((sum, { advanceWidth }) => sum + advanceWidth, 0))
    }
    expect(typeface.faces.regular.layout('fi').glyphs).toHaveLength(2)
  })

  it('leaves letters that join, and marks over letters, to the rules of the face', () => {
    const theirs = own.regular as unknown as Face
    for (const word of ['سلام', 'x\u0302']) {
      const ids = (run: GlyphRun) => run.glyphs.map(({ id }) => id)
      expect(ids(typeface.faces.regular.layout(word))).toEqual(ids(theirs.layout(word)))
    }
  })
})
