import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { Paper } from '../../src/sheets/theme.ts'
import { codesOf, packetFiles, plan, rendered, run } from './demo-files.ts'

const packets = { a4: await packetFiles('a4'), letter: await packetFiles('letter') }
const floorOf = (paper: Paper): string => packets[paper].pdfs.get('floor') ?? ''
/** Every element with its text, by poppler, which takes minutes over a packet: asked once. */
const readOut = run('pdfinfo', '-struct-text', floorOf('a4'))
/** Text of every page, by poppler. */
const pagesOf = (pdf: string) => run('pdftotext', '-layout', pdf, '-').split('\f').slice(0, -1)

describe.each<Paper>(['a4', 'letter'])('the floor set on %s', paper => {
  const pdf = floorOf(paper)

  it('has no fault of syntax, by qpdf, nor has any other set', () => {
    const all = [...packets[paper].pdfs.values()]
    expect(all.length).toBe(2 + plan.orders.length)
    for (const one of all) expect(run('qpdf', '--check', one)).toContain('No syntax or stream encoding errors found')
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
  it('is one document of sections with headings, tables with heads, lists and described figures', () => {
    expect(readOut.match(/^Document/gm)).toHaveLength(1)
    for (const tag of ['Sect', 'H1', 'H2', 'P', 'Table', 'TR', 'TH', 'TD', 'L', 'LI', 'LBody', 'Figure']) {
      expect(readOut).toMatch(new RegExp(`^\\s+${tag}\\b`, 'm'))
    }
  })

  it('reads the questions of an operation sheet in their order', () => {
    const turning = plan.operations.find(({ purpose }) => purpose === 'finish-turn')
    const sheet = readOut.slice(readOut.search(new RegExp(`H1[^\\n]*\\n\\s+"${turning?.name} `)))
    const places = [
      '"Hold it by"',
      '"Cut, and what with"',
      '"To which size, measured how"',
      '"Must not happen"',
      '"Count, send, receive"',
    ].map(word => sheet.indexOf(word))
    expect(places.every(place => place > 0)).toBe(true)
    expect(places).toEqual(places.toSorted((a, b) => a - b))
  })
})

describe('what a tagged document must keep, as far as Debian’s tools show it', () => {
  const everySet = [...packets.a4.pdfs.values()]
  const structure = everySet.flatMap(pdf => run('pdfinfo', '-struct', pdf).split('\n'))
  const metadata = run('pdfinfo', '-meta', floorOf('a4'))
  const raw = everySet.map(pdf => readFileSync(pdf, 'latin1')).join('\n')

  it('every row of a table has as many cells, and every table has heads (ISO 14289-1, 7.5)', () => {
    const tables: { cells: number[]; heads: number }[] = []
    for (const line of structure) {
      const [word = ''] = line.trim().split(/[:\s]/)
      const table = tables.at(-1)
      if (word === 'Table') tables.push({ cells: [], heads: 0 })
      if (!table) continue
      const last = table.cells.length - 1
      if (word === 'TR') table.cells.push(0)
      if (word === 'TH') table.heads++
      if (word === 'TH' || word === 'TD') table.cells[last] = (table.cells[last] ?? 0) + 1
      const over = /ColSpan (\d+)/.exec(line)?.[1]
      if (over) table.cells[last] = (table.cells[last] ?? 0) + Number(over) - 1
    }
    // The route, and the slip at the foot of every sheet of the floor; a matrix of the inspector; a form of every firm.
    expect(tables.length).toBeGreaterThan(plan.operations.length + plan.orders.length)
    expect(tables.filter(({ cells }) => new Set(cells).size > 1)).toEqual([])
    expect(tables.filter(({ heads }) => heads === 0)).toEqual([])
  })

  it('every figure has its box and words in its place (ISO 14289-1, 7.3)', () => {
    const figures = structure.filter(line => /^\s+Figure\b/.test(line)).length
    // The part after every operation stands on the route card.
    expect(figures).toBeGreaterThan(plan.operations.length)
    expect(structure.filter(line => line.includes('/BBox'))).toHaveLength(figures)
    expect(raw.match(/\/S \/Figure/g)).toHaveLength(figures)
    expect(raw.match(/\/Alt \(/g)?.length).toBe(figures)
  })

  it('headings go down one step at a time (ISO 14289-1, 7.4)', () => {
    const steps = structure.flatMap(line => /^\s+H(\d)\b/.exec(line)?.[1] ?? []).map(Number)
    expect(steps[0]).toBe(1)
    for (const [index, step] of steps.entries()) if (index > 0) expect(step - (steps[index - 1] ?? 0)).toBeLessThan(2)
  })

  it('a term and what it is are two words when read out', () => {
    expect(readOut).toMatch(/"Make \d+ good pieces"/)
  })

  it('says what it keeps, with the language, the title in view, and the colours by their profile (ISO 19005-2)', () => {
    expect(metadata).toMatch(/<pdfuaid:part>1</)
    expect(metadata).toMatch(/<pdfaid:part>2<[\s\S]*<pdfaid:conformance>B</)
    expect(raw).toMatch(/\/Lang \(en\)/)
    expect(raw).toMatch(/\/DisplayDocTitle true/)
    expect(raw).toMatch(/\/S \/GTS_PDFA1/)
    expect(raw).toMatch(/\/ID \[<[0-9a-f]{32}>/)
    expect(raw).not.toMatch(/\/(Encrypt|SMask|JavaScript|EmbeddedFiles|AA) /)
    const title = /Title:\s+(.*)/.exec(run('pdfinfo', floorOf('a4')))?.[1] ?? ''
    expect(metadata).toContain(`>${title}<`)
  })
})

describe('the codes, read from the printed page by a general-purpose reader', () => {
  const pdf = floorOf('letter')
  const pages = pagesOf(pdf)

  it('name part, revision and batch on the route card', async () => {
    const codes = await codesOf(rendered(pdf, 1))
    expect(codes).toContainEqual({ format: 'Code128', text: 'OX-098-21/B/24-117' })
  })

  it('name part, revision, batch and operation on every sheet that is worked from', async () => {
    const found = await Promise.all(pages.map((_, index) => codesOf(rendered(pdf, index + 1))))
    const texts = found.flat().map(({ text }) => text)
    for (const { number, place, process } of plan.operations) {
      if (place === 'outside' || process === 'inspect') continue
      const isOn = (text: string): boolean => {
        const [part, revision, batch, numbers = ''] = text.split('/')
        return `${part}/${revision}/${batch}` === 'OX-098-21/B/24-117' && numbers.split('+').includes(String(number))
      }
      expect(texts.some(isOn), String(number)).toBe(true)
    }
  })
})
