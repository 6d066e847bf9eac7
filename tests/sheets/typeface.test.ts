import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { create, type GlyphRun } from 'fontkit'
import { describe, expect, it } from 'vitest'
import { isLacking, letterName, SUBSTITUTE } from '../../src/letters.ts'
import { barsOf } from '../../src/sheets/barcodes.ts'
import { layOutDocument } from '../../src/sheets/lay-out-document.ts'
import { parseMarkup } from '../../src/sheets/markup.ts'
import { paintHtml } from '../../src/sheets/paint-html.ts'
import { paintPdf } from '../../src/sheets/paint-pdf.ts'
import { typeface } from './demo-packet.ts'

const require = createRequire(import.meta.url)

describe('the letters of the paper', () => {
  it.each([...'Ø±≤≥µ°√Δ→×⌀∥∠◎⏥○−–·☐½Ж⌖⌭⌓⌒⌯⌰⏤⟂'])('%s is printed as it is: a face has it, or it is drawn', character => {
    expect(typeface.shown(character)).toBe(character)
    expect(isLacking(character)).toBe(false)
  })

  it.each(['漢', 'Ⓜ', '🙂', '\n', '\u0007', '\ud800'])('a box stands for %j', character => {
    expect(typeface.shown(`a ${character} b`)).toBe(`a ${SUBSTITUTE} b`)
    expect(typeface.measure(`a ${character} b`, 10)).toBeCloseTo(typeface.measure(`a ${SUBSTITUTE} b`, 10), 9)
    expect(isLacking(character)).toBe(true)
  })

  it('are those that both faces have, and the drawn symbols: the list is held against the files', () => {
    for (let point = 0; point <= 0x1ffff; point++) {
      const character = String.fromCodePoint(point)
      if (isLacking(character) !== (typeface.shown(character) !== character))
        expect(letterName(character)).toBe('known')
    }
  })

  it('a sheet with a letter that is lacking is laid out and painted with a box for it', async () => {
    const document = {
      block: {
        legalOwner: 'Smith & Sons <Oxmere>',
        identificationNumber: 'OX-漢',
        revision: 'B',
        title: 'Cylinder liner 🙂',
        batch: '24-117',
        dateOfIssue: '2026-11-25',
        creator: 'linerwright',
        fingerprint: '0bd5bebc6b1e',
      },
      sheets: [{ template: 'note', documentType: 'Note', corner: '1', heading: 'Note', view: {}, names: [] }],
      set: 'Floor',
      pictures: new Map(),
      paper: 'a4' as const,
    }
    const markup = '<p>Grind the 銹 off</p><figure data-code="code128" data-text="OX-漢"/>'
    const laid = layOutDocument(document, () => parseMarkup(markup, 'note'), typeface)
    expect(laid.pages).toHaveLength(1)
    const pdf = new TextDecoder('latin1').decode(await paintPdf(laid, typeface, { compress: false }))
    const metadata = pdf.slice(pdf.indexOf('<rdf:RDF'), pdf.indexOf('</rdf:RDF>'))
    expect(metadata).toContain('Smith &amp; Sons &lt;Oxmere&gt;')
    expect(metadata).not.toMatch(/&(?!amp;|lt;|gt;|quot;|#)/)
    expect(pdf).toContain('(Smith & Sons <Oxmere>)')
    expect(paintHtml([laid])).toContain('Grind the 銹 off')
  })
})

describe('codes for a reader gun', () => {
  it('are plain ASCII, and two texts never share one', () => {
    expect(barsOf('datamatrix', 'Ä/1').text).toBe('%C3%84/1')
    expect(barsOf('datamatrix', '漢/1').text).not.toBe(barsOf('datamatrix', '字/1').text)
    expect(barsOf('code128', 'OX-098-21').text).toBe('OX-098-21')
  })

  it('are no wider than half a page, however long the text', () => {
    const long = barsOf('code128', '漢'.repeat(200))
    expect(long.symbology).toBe('datamatrix')
    expect(long.width).toBeLessThan(88 * (72 / 25.4))
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
