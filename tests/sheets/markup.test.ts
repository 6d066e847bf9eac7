import { describe, expect, it } from 'vitest'
import { alignDecimals } from '../../src/sheets/align-decimals.ts'
import { parseMarkup, textOf } from '../../src/sheets/markup.ts'

describe('the markup that a template may write', () => {
  it.each([
    ['an element outside it', '<marquee>x</marquee>', '<marquee> is outside the markup that can be printed'],
    ['a block in running text', '<p><table></table></p>', '<table> cannot stand in <p>'],
    ['an element that is not closed', '<p>one', '<p> is not closed'],
    ['text where none is shown', '<table>lost</table>', 'the text "lost" cannot stand in <table>'],
    ['text outside every block', 'lost', 'the text "lost" cannot stand in <div>'],
    ['a class that no style knows', '<p class="blue">x</p>', 'class "blue" of <p> is unknown'],
    ['an attribute that no painter reads', '<p onclick="x">x</p>', 'attribute onclick of <p> is unknown'],
  ])('refuses %s, with the name of the template', (_, markup, says) => {
    expect(() => parseMarkup(markup, 'operation.hbs')).toThrow(`operation.hbs: ${says}`)
  })

  it('gives back what Handlebars escaped', () => {
    const [paragraph] = parseMarkup('<p>&lt;b&gt; &amp; &#x27;Ø&#x27; &quot;x&quot;</p>', 'operation')
    expect(paragraph && textOf(paragraph)).toBe(`<b> & 'Ø' "x"`)
  })
})

describe('figures of one column', () => {
  const column = (...figures: readonly string[]) => {
    const rows = figures.map(figure => `<tr><td class="num">${figure}</td></tr>`).join('')
    const [table] = alignDecimals(parseMarkup(`<table><tbody>${rows}</tbody></table>`, 'test'))
    return table ? [...textOf(table).matchAll(/[^|]+/g)].join('') : ''
  }

  it('are filled up to the same places, so that their points stand under each other', () => {
    expect(column('8.25', '12.5', '3')).toBe('8.2512.5\u20073\u2008\u2007\u2007')
  })

  it('leave words and dashes as they are', () => {
    expect(column('8.25', '–', 'not over 3')).toBe('8.25–not over 3')
  })
})
