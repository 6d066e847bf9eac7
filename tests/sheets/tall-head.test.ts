import { describe, expect, it } from 'vitest'
import { slicesOf } from '../../src/sheets/layout.ts'
import { parseMarkup } from '../../src/sheets/markup.ts'
import { paginate } from '../../src/sheets/paginate.ts'
import { sheetOf } from '../../src/sheets/theme.ts'
import { typeface } from './demo-packet.ts'

const { left, right, bodyTop: top, bodyBottom: bottom } = sheetOf('a4')

/** The words of every page, in the order in which they are painted. */
function wordsOf(markup: string): readonly (readonly string[])[] {
  const layout = { measure: typeface.measure, pictures: new Map(), bodyHeight: bottom - top }
  const slices = slicesOf(parseMarkup(markup, 'note'), right - left, layout)
  return paginate(slices, { left, top, bottom }).map(items =>
    items.flatMap(item => (item.kind === 'text' ? [item.text.trim()] : [])),
  )
}

describe('a head as tall as a page', () => {
  it('is said once: over every row it would leave no room for any', () => {
    const rows = '<tr><td>row</td></tr>'.repeat(100)
    const head = `<thead><tr><th>${'head<br/>'.repeat(60)}</th></tr></thead>`
    const pages = wordsOf(`<table>${head}<tbody>${rows}</tbody></table>`)
    const count = (word: string) => pages.flat().filter(text => text === word).length
    expect(count('head')).toBe(60)
    expect(count('row')).toBe(100)
    expect(pages.length).toBeLessThan(5)
  })
})
