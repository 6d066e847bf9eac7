import { describe, expect, it } from 'vitest'
import type { Paper } from '../../src/sheets/theme.ts'
import { codesOf, packetFiles, plan, rendered, run } from './demo-files.ts'

const files = { a4: await packetFiles('a4'), letter: await packetFiles('letter') }
/** Text of every page, by poppler. */
const pagesOf = (pdf: string) => run('pdftotext', '-layout', pdf, '-').split('\f').slice(0, -1)

describe.each<Paper>(['a4', 'letter'])('the PDF on %s', paper => {
  const { pdf } = files[paper]

  it('has no fault of syntax, by qpdf', () => {
    expect(run('qpdf', '--check', pdf)).toContain('No syntax or stream encoding errors found')
  })

  it('is tagged, titled, and of the paper asked for', () => {
    const info = run('pdfinfo', pdf)
    expect(info).toMatch(/Tagged:\s+yes/)
    expect(info).toMatch(/Title:\s+OX-098-21 rev B/)
    // ISO 216 A4 210 × 297 mm; Letter 8.5 × 11 inch; in points.
    expect(info).toMatch(paper === 'a4' ? /595\.27\d x 841\.89/ : /612 x 792/)
  })

  it('embeds its two faces as subsets and uses no other', () => {
    const fonts = run('pdffonts', pdf).trim().split('\n').slice(2)
    expect(fonts).toHaveLength(2)
    for (const font of fonts) expect(font).toMatch(/DejaVuSansCondensed.* yes yes yes/)
  })

  it('prints nothing in the margins: 20 mm left, 10 mm elsewhere (ISO 5457)', () => {
    const boxes = run('pdftotext', '-bbox', pdf, '-')
    const [width, height] = paper === 'a4' ? [595.28, 841.89] : [612, 792]
    const words = [...boxes.matchAll(/<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)"/g)]
    expect(words.length).toBeGreaterThan(1000)
    const millimetre = 72 / 25.4
    // A word's box reaches as high as the tallest letter of the face and is a little outside its ink.
    const air = 3
    for (const [, left, top, right, bottom] of words) {
      expect(Number(left)).toBeGreaterThan(20 * millimetre - air)
      expect(Number(top)).toBeGreaterThan(10 * millimetre - 2 * air)
      expect(Number(right)).toBeLessThan(width - 10 * millimetre + air)
      expect(Number(bottom)).toBeLessThan(height - 10 * millimetre + air)
    }
  })
})

describe('the structure of the PDF, for whoever has it read out', () => {
  const structure = run('pdfinfo', '-struct-text', files.a4.pdf)

  it('is one document of sections with headings, tables with heads, lists and described figures', () => {
    expect(structure.match(/^Document/gm)).toHaveLength(1)
    for (const tag of ['Sect', 'H1', 'H2', 'P', 'Table', 'TR', 'TH', 'TD', 'L', 'LI', 'LBody', 'Figure']) {
      expect(structure).toMatch(new RegExp(`^\\s+${tag}\\b`, 'm'))
    }
  })

  it('reads the questions of an operation sheet in their order', () => {
    const milling = plan.operations.find(({ purpose }) => purpose === 'mill-ports')
    const sheet = structure.slice(structure.search(new RegExp(`H1[^\\n]*\\n\\s+"${milling?.name} `)))
    const places = ['"Hold by"', '"Cut"', '"Size now"', '"Measure"', '"Must not happen"'].map(word =>
      sheet.indexOf(word),
    )
    expect(places.every(place => place > 0)).toBe(true)
    expect(places).toEqual(places.toSorted((a, b) => a - b))
  })
})

describe('the codes, read from the printed page by a general-purpose reader', () => {
  const { pdf } = files.letter
  const pages = pagesOf(pdf)

  it('name part, revision and batch on the route card', async () => {
    const codes = await codesOf(rendered(pdf, 1))
    expect(codes).toContainEqual({ format: 'Code128', text: 'OX-098-21/B/24-117' })
  })

  it('name batch and operation on every operation sheet', async () => {
    for (const { number, name } of plan.operations) {
      // The code stands beside the sign-off, at the foot of the operation's last page.
      const heading = new RegExp(`^\\s*${name}\\s*(?:\\n|\\s${number}\\n)`)
      const page = pages.findLastIndex(text => text.includes('Operation sheet') && heading.test(text))
      const codes = await codesOf(rendered(pdf, page + 1))
      expect(codes.map(({ text }) => text)).toContain(`24-117/${number}`)
    }
  })
})
