import { describe, expect, it } from 'vitest'
import { layOutDocument } from '../../src/sheets/lay-out-document.ts'
import { typeface } from './demo-packet.ts'

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
    expect(() => layOutDocument(document, () => '<p>Grind the 銹 off</p>', typeface)).toThrow('U+92B9')
    expect(layOutDocument(document, () => '<p>Grind the rust off</p>', typeface).pages).toHaveLength(1)
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
