import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Measure, Picture } from '../../src/pictures/picture.ts'
import type { Item } from '../../src/sheets/display-list.ts'
import { slicesOf } from '../../src/sheets/layout.ts'
import { parseMarkup } from '../../src/sheets/markup.ts'
import { paginate } from '../../src/sheets/paginate.ts'
import { LINE_HEIGHT, lines, type Paper, sheetOf } from '../../src/sheets/theme.ts'

/** Every character half as wide as it is high: placement does not depend on a typeface. */
const measure: Measure = (text, size) => text.length * size * 0.5
const picture: Picture = { width: 900, height: 700, alternative: 'a block', marks: [] }

/** Random sheets whose every word is there once: `w1`, `w2` …; the words of a row begin with the row's own number. */
const sheet: fc.Arbitrary<string> = fc
  .array(
    fc.record({
      kind: fc.constantFrom('p', 'h2', 'ul', 'table', 'keep', 'columns', 'figure', 'bottom'),
      words: fc.integer({ min: 1, max: 60 }),
      rows: fc.integer({ min: 1, max: 40 }),
      long: fc.boolean(),
    }),
    { minLength: 1, maxLength: 12 },
  )
  .map(blocks => {
    let word = 0
    let row = 0
    const text = (count: number, long = false, mark = '') =>
      Array.from({ length: count }, () => `${mark}w${++word}${long ? 'x'.repeat(word % 150) : ''}.`).join(' ')
    const table = (count: number, most: number) => {
      const rows = Array.from({ length: count }, (_, index) => {
        const name = `r${++row}`
        return `<tr><td>${text(1 + (index % 3), false, name)}</td><td class="write">${text(1, false, name)}</td><td class="num">${text(index % 7 === 3 ? most : 1, false, name)}</td></tr>`
      })
      return `<table><thead><tr><th>${text(1)}</th><th>${text(1)}</th><th>${text(1)}</th></tr></thead><tbody>${rows.join('')}</tbody></table>`
    }
    return blocks
      .map(({ kind, words, rows, long }) => {
        if (kind === 'table') return table(rows, words)
        if (kind === 'ul') return `<ul><li>${text(words)}</li><li>${text(words)}</li></ul>`
        if (kind === 'keep') return `<div class="keep"><h2>${text(1)}</h2><p>${text(words)}</p>${table(3, 1)}</div>`
        if (kind === 'columns') {
          return `<div class="columns"><div class="c5"><p>${text(words)}</p></div><div class="c7">${table(rows, 2)}</div></div>`
        }
        if (kind === 'figure') return '<figure data-picture="map"/>'
        if (kind === 'bottom') return `<div class="bottom"><p>${text(1)}</p></div>`
        if (kind === 'h2') return `<h2>${text(Math.min(words, 5))}</h2>`
        return `<p>${text(words, long)}</p>`
      })
      .join('')
  })

const known = new Map<string, readonly (readonly Item[])[]>()
/** Once a sheet: the seed being one, every claim is tried on the same sheets. */
function laidOut(markup: string, paper: Paper): readonly (readonly Item[])[] {
  const pages = known.get(paper + markup) ?? layOut(markup, paper)
  known.set(paper + markup, pages)
  return pages
}
function layOut(markup: string, paper: Paper): readonly (readonly Item[])[] {
  const { left, right, bodyTop, bodyBottom } = sheetOf(paper)
  const layout = { measure, pictures: new Map([['map', picture]]), bodyHeight: bodyBottom - bodyTop }
  const slices = slicesOf(parseMarkup(markup, 'random'), right - left, layout)
  return paginate(slices, { left, top: bodyTop, bottom: bodyBottom })
}

const papers = fc.constantFrom<Paper>('a4', 'letter')
const texts = (items: readonly Item[]) => items.flatMap(item => (item.kind === 'text' ? [item] : []))
/** Words that are read out: a table's head said again is not. */
const words = (items: readonly Item[]) =>
  texts(items)
    .filter(({ tag }) => tag)
    .map(({ text }) => text)
    .join('')
    .replace(/[\s–]/g, '')

describe('laying out any sheet', () => {
  it('keeps everything between the margins, head and foot', () => {
    fc.assert(
      fc.property(sheet, papers, (markup, paper) => {
        const { left, right, bodyTop, bodyBottom } = sheetOf(paper)
        for (const item of laidOut(markup, paper).flat()) {
          const [width, height] = extentOf(item)
          expect(item.x).toBeGreaterThanOrEqual(left - 1e-6)
          expect(item.x + width).toBeLessThanOrEqual(right + 1e-6)
          expect(item.y).toBeGreaterThanOrEqual(bodyTop - 1e-6)
          expect(item.y + height).toBeLessThanOrEqual(bodyBottom + 1e-6)
        }
      }),
    )
  })

  it('loses no word and says none twice', () => {
    fc.assert(
      fc.property(sheet, papers, (markup, paper) => {
        const printed = laidOut(markup, paper).map(words).join('')
        const written = [...markup.matchAll(/(?:r\d+)?w\d+x*\./g)].map(([word]) => word)
        const sorted = [...printed.matchAll(/(?:r\d+)?w\d+x*\./g)].map(([word]) => word)
        expect(sorted.toSorted()).toEqual(written.toSorted())
      }),
    )
  })

  it('cuts no row by the end of a page', () => {
    fc.assert(
      fc.property(sheet, papers, (markup, paper) => {
        const pages = laidOut(markup, paper).map(items =>
          texts(items)
            .map(({ text }) => text)
            .join(' '),
        )
        const pageOf = new Map<string, number>()
        pages.forEach((text, page) => {
          for (const [, row] of text.matchAll(/(r\d+)w\d+/g)) {
            if (row === undefined) continue
            expect(pageOf.get(row) ?? page).toBe(page)
            pageOf.set(row, page)
          }
        })
      }),
    )
  })

  it('leaves no page empty and no heading at the foot of one', () => {
    fc.assert(
      fc.property(sheet, papers, (markup, paper) => {
        for (const items of laidOut(`${markup}<p>end</p>`, paper)) {
          expect(items.length).toBeGreaterThan(0)
          const drawn = items.filter(({ kind }) => kind !== 'rule' && kind !== 'cell')
          expect(drawn.at(-1)?.tag?.type).not.toBe('H2')
        }
      }),
    )
  })

  it('stands every line of running text on the grid of 4 mm', () => {
    fc.assert(
      fc.property(sheet, papers, (markup, paper) => {
        const { bodyTop } = sheetOf(paper)
        for (const { y, tag } of texts(laidOut(markup, paper).flat())) {
          if (tag?.type !== 'P') continue
          const line = (y - 8.3 - bodyTop) / LINE_HEIGHT
          expect(Math.abs(line - Math.round(line))).toBeLessThan(1e-6)
        }
      }),
    )
  })
})

describe('the head of a table', () => {
  const rows = Array.from({ length: 200 }, (_, index) => `<tr><td>${index}</td></tr>`).join('')
  const pages = laidOut(`<table><thead><tr><th>head</th></tr></thead><tbody>${rows}</tbody></table>`, 'a4')

  it('stands over its rows on every page, and is read out once', () => {
    const heads = pages.map(items => texts(items).filter(({ text }) => text === 'head'))
    expect(heads.length).toBeGreaterThan(2)
    for (const found of heads) expect(found).toHaveLength(1)
    expect(heads.flat().filter(({ tag }) => tag)).toHaveLength(1)
  })
})

describe('what is pinned', () => {
  it('stands at the foot of its page', () => {
    const [page] = laidOut('<p>above</p><div class="bottom"><p>foot</p></div>', 'letter')
    const foot = texts(page ?? []).find(({ text }) => text === 'foot')
    expect(foot?.y).toBeCloseTo(sheetOf('letter').bodyBottom - lines(1) + 8.3, 6)
  })

  it('takes the strip before it along rather than stand alone on a page', () => {
    const full = Array.from({ length: 200 }, (_, i) => `<p>strip${i}</p>`)
    const pages = [...full.keys()].map(count =>
      laidOut(`${full.slice(0, count + 1).join('')}<div class="bottom"><p>foot</p></div>`, 'a4'),
    )
    for (const found of pages) {
      const last = texts(found.at(-1) ?? []).map(({ text }) => text)
      expect(last).toContain('foot')
      expect(last.some(text => text.startsWith('strip'))).toBe(true)
    }
  })
})

/** Width to the right and height below the point that an item stands on. */
function extentOf(item: Item): readonly [number, number] {
  if (item.kind === 'text') return [measure(item.text.trimEnd(), item.size), 0]
  if (item.kind === 'rule') return [item.dx, item.dy]
  if (item.kind === 'cell') return [item.width, item.height]
  if (item.kind === 'picture') return [item.picture.width * item.scale, item.picture.height * item.scale]
  return [0, 0]
}

describe('a row of one cell over all columns', () => {
  const note = `n1 ${'long '.repeat(40)}n2`
  const rows = Array.from(
    { length: 60 },
    (_, row) => `<tr><td>r${row}</td><td class="num">1</td></tr><tr><td colspan="2">${note}</td></tr>`,
  )
  const markup = `<table><thead><tr><th>what</th><th>much</th></tr></thead><tbody>${rows.join('')}</tbody></table>`

  it('goes on with the row above: never on another page, no rule between', () => {
    const pages = laidOut(markup, 'a4')
    expect(pages.length).toBeGreaterThan(1)
    for (const items of pages) {
      const texts = items.flatMap(item => (item.kind === 'text' ? [item.text] : []))
      expect(texts.filter(text => /^r\d/.test(text))).toHaveLength(texts.filter(text => text.includes('n1')).length)
    }
    const drawn = pages.flat().filter(({ kind }) => kind === 'rule').length
    expect(drawn).toBe(rows.length + pages.length)
  })

  it('does not widen a column', () => {
    const xOf = (text: string) => laidOut(text, 'a4')[0]?.find(item => item.kind === 'text' && item.text === 'much')?.x
    expect(xOf(markup)).toBe(xOf(markup.replaceAll(/<tr><td colspan.*?<\/tr>/g, '')))
  })
})
