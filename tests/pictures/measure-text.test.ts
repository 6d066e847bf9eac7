import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { drawPictures } from '../../src/pictures/draw-pictures.ts'
import { BOLD_WIDTHS, REGULAR_WIDTHS } from '../../src/pictures/face-widths.ts'
import { measureText } from '../../src/pictures/measure-text.ts'
import { demoPictures, demoPlan, typeface } from '../sheets/demo-packet.ts'

describe('a text measured without the font', () => {
  it.each([
    ['regular', REGULAR_WIDTHS],
    ['bold', BOLD_WIDTHS],
  ] as const)('is as wide, letter by letter, as the %s font file says', (face, table) => {
    const font = typeface.faces[face]
    expect(font.unitsPerEm).toBe(2048)
    for (const [from, widths] of table) {
      const points = widths.map((_, index) => from + index)
      const inFont = points.map(point =>
        font.hasGlyphForCodePoint(point) ? font.glyphForCodePoint(point).advanceWidth : 0,
      )
      expect(widths).toEqual(inFont)
    }
  })

  it('is as wide as its letters, whatever the words', () => {
    const word = fc.string({ unit: fc.constantFrom(...'Ø48 H6 ±0.05 µm° Bohrung nitriert 12,5') })
    fc.assert(
      fc.property(word, fc.boolean(), fc.integer({ min: 4, max: 20 }), (text, bold, size) => {
        expect(measureText(text, size, bold)).toBe(typeface.measure(text, size, bold))
      }),
    )
  })

  it('leaves room where the table lacks the letter', () => {
    expect(measureText('漢', 8)).toBe(8)
  })

  it.each(['OX-098-21', 'OX-098-34', 'OX-105-02'])('draws %s as the paper does, to the last mark', name => {
    const plan = demoPlan(name)
    expect([...drawPictures(plan)]).toEqual([...demoPictures(plan)])
  })
})
