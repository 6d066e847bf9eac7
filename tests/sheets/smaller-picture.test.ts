import { describe, expect, it } from 'vitest'
import type { Picture } from '../../src/pictures/picture.ts'
import { layOutDocument } from '../../src/sheets/lay-out-document.ts'
import { parseMarkup } from '../../src/sheets/markup.ts'
import { typeface } from './demo-packet.ts'

const picture: Picture = { width: 900, height: 700, alternative: 'a block', marks: [] }
const measure = (text: string, size: number): number => text.length * size * 0.5

describe('a picture that can be drawn smaller', () => {
  const small: Picture = { ...picture, width: 500, height: 100 }
  const less: Picture = { ...picture, width: 500, height: 420 }
  const page = (rows: number) => `<figure data-picture="map"/><p>${'x<br/>'.repeat(rows)}</p>`
  const laid = (...rows: readonly number[]) => {
    const block = {
      legalOwner: 'a',
      identificationNumber: 'b',
      revision: 'c',
      title: 'd',
      batch: 'e',
      dateOfIssue: '2026-11-25',
      creator: 'f',
      fingerprint: 'g',
    }
    const sheets = rows.map(count => {
      return { template: String(count), documentType: 'a', corner: 'b', heading: 'c', view: {}, names: [] }
    })
    const large: Picture = { ...picture, width: 500, height: 500 }
    const given = { block, set: 'Floor', sheets, pictures: new Map([['map', large]]), paper: 'a4' as const }
    return layOutDocument(
      { ...given, smaller: [() => less, () => small] },
      count => parseMarkup(page(Number(count)), 'note'),
      {
        ...typeface,
        measure,
      },
    )
  }

  it('is, where that saves a page, and only there', () => {
    const drawn = (rows: number) => laid(rows).sheets[0]?.pictures.get('map')?.height
    expect(laid(4).pages).toHaveLength(1)
    expect(drawn(4)).toBe(500)
    expect(laid(30).pages).toHaveLength(1)
    expect(drawn(30)).toBe(100)
  })

  it('is drawn as it was on the next sheet', () => {
    const [first, next] = laid(30, 4).sheets
    expect([first, next].map(sheet => sheet?.pictures.get('map')?.height)).toEqual([100, 500])
  })
})
