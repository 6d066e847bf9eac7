import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { describe, expect, it } from 'vitest'
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader'
import { labelGrid } from '../../src/commands/options.ts'
import { onPaper } from '../../src/pictures/picture.ts'
import type { Item } from '../../src/sheets/display-list.ts'
import { layOutLabels } from '../../src/sheets/labels.ts'
import type { LaidDocument } from '../../src/sheets/lay-out-document.ts'
import { demoPlan, typeface } from './demo-packet.ts'

const plan = demoPlan()
const laid = (size: string, paper: 'a4' | 'letter' = 'a4') => layOutLabels(plan, labelGrid(size), { paper, typeface })

/** Dots an inch: what a shop's printer at its worst still shows. */
const DOTS = 200
const wasm = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm')

/** The codes of a page as a general-purpose reader finds them, the bars drawn as dots where the layout put them. */
async function codesOf({ sheet }: LaidDocument, page: readonly Item[]): Promise<readonly string[]> {
  prepareZXingModule({ overrides: { wasmBinary: readFileSync(wasm).buffer as ArrayBuffer } })
  const dot = (point: number): number => Math.round((point * DOTS) / 72)
  const [width, height] = [dot(sheet.width), dot(sheet.height)]
  const data = new Uint8ClampedArray(width * height * 4).fill(255)
  for (const item of page) {
    if (item.kind !== 'bars') continue
    for (const bar of item.bars.rectangles)
      for (let y = dot(item.y + bar.y); y < dot(item.y + bar.y + bar.height); y++)
        data.fill(0, (y * width + dot(item.x + bar.x)) * 4, (y * width + dot(item.x + bar.x + bar.width)) * 4)
  }
  for (let alpha = 3; alpha < data.length; alpha += 4) data[alpha] = 255
  const image = { data, width, height, colorSpace: 'srgb' as const }
  const found = await readBarcodes(image as unknown as Uint8Array, {
    formats: ['DataMatrix'],
    tryHarder: true,
    maxNumberOfSymbols: 255,
  })
  return found.filter(({ isValid }) => isValid).map(({ text }) => text)
}

describe('labels', () => {
  it('are one a piece and one a visit, and a reader finds the code of each on the page', async () => {
    const document = laid('70x37')
    expect(document.pages).toHaveLength(1)
    const { number, revision } = plan.part
    const own = (last: string) => `${number}/${revision}/${plan.batch.number}/${last}`
    const pieces = ['S', 'C', ...Array.from({ length: plan.batch.numbered }, (_, index) => String(index + 1))]
    const visits = plan.orders.map(({ operations }) => operations.join('+'))
    const read = await codesOf(document, document.pages[0] ?? [])
    expect(read.toSorted()).toEqual([...pieces, ...visits].map(own).toSorted())
  })

  it('keep to their own label, whichever paper it is on', () => {
    for (const [size, paper] of [
      ['70x37', 'a4'],
      ['99.1x38.1/101.6x38.1', 'a4'],
      ['101.6x50.8', 'letter'],
    ] as const) {
      const grid = labelGrid(size)
      const { pages, sheet } = laid(size, paper)
      const across = Math.floor((sheet.width - onPaper(grid.width)) / onPaper(grid.pitch.across) + 1)
      const left = (sheet.width - onPaper((across - 1) * grid.pitch.across + grid.width)) / 2
      for (const item of pages.flat()) {
        if (item.kind !== 'text' && item.kind !== 'bars') throw new Error(item.kind)
        const wide =
          item.kind === 'text' ? typeface.measure(item.text.trimEnd(), item.size, item.bold) : item.bars.width
        const within = (item.x - left) % onPaper(grid.pitch.across)
        expect(item.x).toBeGreaterThan(left)
        expect(within + wide).toBeLessThan(onPaper(grid.width))
        expect(item.y).toBeLessThan(sheet.height)
      }
    }
  })

  it('that are too small or larger than the sheet are refused, not cut', () => {
    expect(() => laid('30x15')).toThrow('a label of 30 x 15 mm is too small for')
    expect(() => laid('220x37')).toThrow('a label of 220 x 37 mm is larger than the sheet')
    expect(() => labelGrid('70')).toThrow('70x37')
    expect(() => labelGrid('70x37/60x37')).toThrow('no less than the label')
  })
})
