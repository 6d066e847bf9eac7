import { Resvg } from '@resvg/resvg-js'
import { describe, expect, it } from 'vitest'
import { LINE, type Picture } from '../../src/pictures/picture.ts'
import { pictureSvg } from '../../src/pictures/picture-svg.ts'

const stroke = { width: LINE.outline }
const picture: Picture = {
  width: 72,
  height: 36,
  alternative: 'a square & a circle',
  marks: [
    { kind: 'line', x1: 0, y1: 1 / 3, x2: 72, y2: 1 / 3, stroke: { ...stroke, dash: [4, 2] } },
    { kind: 'circle', x: 10, y: 10, radius: 5, fill: { grey: 0.88 } },
    {
      kind: 'path',
      stroke,
      steps: [
        { to: 'move', x: 20, y: 20 },
        { to: 'line', x: 30, y: -0.001 },
        { to: 'curve', x1: 31, y1: 5, x2: 32, y2: 6, x: 33, y: 7 },
        { to: 'close' },
      ],
    },
    { kind: 'text', x: 40, y: 20, size: 8, text: '<Ø 48>', anchor: 'middle', turned: 90 },
  ],
}

describe('a picture as SVG', () => {
  const svg = pictureSvg(picture)

  it('carries its sentence for who cannot see it, and escapes all text', () => {
    expect(svg).toContain('<title>a square &amp; a circle</title>')
    expect(svg).toContain('&lt;Ø 48&gt;')
  })

  it('writes at most two decimals and no negative zero', () => {
    expect(svg).not.toMatch(/\d\.\d{3}/)
    expect(svg).not.toMatch(/[ L"]-0[ "]/)
    expect(svg).toContain('M20 20L30 0C31 5 32 6 33 7Z')
  })

  it('has no size of its own unless it is measured: an inch is 25.4 mm', () => {
    expect(svg).not.toMatch(/<svg[^>]* width=/)
    expect(pictureSvg(picture, { trueSize: true })).toContain('width="25.4mm" height="12.7mm"')
  })

  it('is read by a general-purpose SVG renderer', () => {
    const { width, height, pixels } = new Resvg(svg, { font: { loadSystemFonts: false } }).render()
    expect([width, height]).toEqual([72, 36])
    expect(pixels.some(value => value > 0)).toBe(true)
  })
})
