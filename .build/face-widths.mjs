// Writes src/pictures/face-widths.ts from the typeface: `node .build/face-widths.mjs`. A test holds the table against the fonts.
import { readFileSync, writeFileSync } from 'node:fs'
import { create } from 'fontkit'

/** Latin, Greek, Cyrillic, punctuation and signs: what a drawing is lettered with. */
const BLOCKS = [
  [0x20, 0x7e],
  [0xa0, 0x17f],
  [0x384, 0x3ce],
  [0x410, 0x44f],
  [0x2010, 0x2027],
  [0x202f, 0x205e],
  [0x2070, 0x209c],
  [0x2100, 0x214b],
  [0x2190, 0x21ff],
  [0x2200, 0x22ff],
  [0x2300, 0x2335],
]
const faces = { REGULAR: 'DejaVuSansCondensed.ttf', BOLD: 'DejaVuSansCondensed-Bold.ttf' }

const tables = Object.entries(faces).map(([name, file]) => {
  const face = create(readFileSync(`node_modules/dejavu-fonts-ttf/ttf/${file}`))
  if (face.unitsPerEm !== 2048) throw new Error(`${file}: ${face.unitsPerEm} units an em, not 2048`)
  const rows = BLOCKS.map(([from, to]) => {
    const points = Array.from({ length: to - from + 1 }, (_, index) => from + index)
    const widths = points.map(point =>
      face.hasGlyphForCodePoint(point) ? face.glyphForCodePoint(point).advanceWidth : 0,
    )
    return `  [0x${from.toString(16)}, [${widths.join(', ')}]],`
  })
  return `export const ${name}_WIDTHS: WidthTable = [\n${rows.join('\n')}\n]`
})
writeFileSync(
  'src/pictures/face-widths.ts',
  `// Widths of the letters of DejaVu Sans Condensed 2.37, regular and bold, in 1/2048 em; 0 where the face lacks one.
// Read from the font files by .build/face-widths.mjs.

/** The first code point of a run of letters, and the width of each. */
type WidthTable = readonly (readonly [number, readonly number[]])[]

${tables.join('\n\n')}
`,
)
