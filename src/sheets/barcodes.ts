import bwip from 'bwip-js/generic'
import { onPaper, type Point } from '../pictures/picture.ts'

export type Symbology = 'code128' | 'datamatrix'

/** Dark bars as rectangles, points from the top left corner of the quiet zone. */
export type Bars = {
  readonly symbology: Symbology
  readonly text: string
  readonly width: Point
  readonly height: Point
  readonly rectangles: readonly {
    readonly x: Point
    readonly y: Point
    readonly width: Point
    readonly height: Point
  }[]
}

/** Smallest module that hand readers take from a shop's printer: 0.33 mm for bars, 0.5 mm for a matrix. Common practice. */
const MODULE: { readonly [symbology in Symbology]: Point } = { code128: onPaper(0.34), datamatrix: onPaper(0.5) }
/** Modules kept clear. Source: ISO/IEC 15417, 4.2 (ten beside the bars); ISO/IEC 16022 (one round the matrix; two here). */
const QUIET: { readonly [symbology in Symbology]: number } = { code128: 10, datamatrix: 2 }
const BAR_HEIGHT = onPaper(10)

const drawn = new Map<string, Bars>()

/** Widest row of bars that half a page takes; a longer text becomes a matrix. */
const WIDEST = onPaper(88)
const LONGEST_ROW = 60
/** Well within what a matrix holds (ISO/IEC 16022: 1,556 octets); part, revision and batch of Latin letters have at most 200. */
const LONGEST = 1000

/**
 * A code for a reader gun, reckoned once for paper and screen. Plain ASCII, since readers differ in what they make of the rest:
 * other letters are written by their octets, %C3%84 (RFC 3986, 2.1), so that two texts never share a code.
 */
export function barsOf(symbology: Symbology, text: string): Bars {
  const key = `${symbology} ${text}`
  const bars = drawn.get(key) ?? fitting(symbology, inAscii(text))
  drawn.set(key, bars)
  return bars
}

const inAscii = (text: string): string =>
  text.replace(/\p{Cs}/gu, '\ufffd').replace(/[^\x20-\x7e]/gu, character => encodeURIComponent(character))

function fitting(symbology: Symbology, text: string): Bars {
  if (text.length > LONGEST_ROW) return draw('datamatrix', text.slice(0, LONGEST))
  const bars = draw(symbology, text)
  return bars.width <= WIDEST ? bars : draw('datamatrix', text)
}

function draw(symbology: Symbology, text: string): Bars {
  // The named export of this name is the encoder of another symbology.
  const [code] = bwip.raw({ bcid: symbology, text })
  if (code === undefined) throw new Error(`no code for "${text}"`)
  const module = MODULE[symbology]
  const quiet = QUIET[symbology] * module
  const modules = 'pixs' in code ? matrixRuns(code.pixs, code.pixx, code.pixy) : barRuns(code.sbs)
  const across = 'pixs' in code ? code.pixx : code.sbs.reduce((sum, width) => sum + width, 0)
  const down = 'pixs' in code ? code.pixy * module + 2 * quiet : BAR_HEIGHT
  return {
    symbology,
    text,
    width: across * module + 2 * quiet,
    height: down,
    rectangles: modules.map(({ x, y, width }) => ({
      x: quiet + x * module,
      y: symbology === 'code128' ? 0 : quiet + y * module,
      width: width * module,
      height: symbology === 'code128' ? BAR_HEIGHT : module,
    })),
  }
}

type Run = { readonly x: number; readonly y: number; readonly width: number }

/** Widths in turn dark and clear, dark first. */
function barRuns(widths: readonly number[]): readonly Run[] {
  let x = 0
  return widths.flatMap((width, index) => {
    const run = { x, y: 0, width }
    x += width
    return index % 2 === 0 ? [run] : []
  })
}

/** Dark modules of a row that stand side by side become one rectangle, so that no seam shows. */
function matrixRuns(dark: readonly number[], across: number, down: number): readonly Run[] {
  const runs: Run[] = []
  for (let y = 0; y < down; y++) {
    let from = -1
    for (let x = 0; x <= across; x++) {
      const isDark = x < across && dark[y * across + x] === 1
      if (isDark && from < 0) from = x
      if (!isDark && from >= 0) {
        runs.push({ x: from, y, width: x - from })
        from = -1
      }
    }
  }
  return runs
}
