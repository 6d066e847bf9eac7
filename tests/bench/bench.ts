// Times the program against floors measured in the same run, all by processor time, and prints the ratios beside what is
// aimed at: absolute times are this machine's own.
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { nineWindows } from './nine-windows.ts'
import { askedOfPdfkit, rawPdf } from './raw-pdf.ts'
import { inTurn, shellTimes } from './times.ts'
import { PART, works } from './works.ts'

/** Runs from the package's folder; `desk` is a folder to write in. */
export async function bench(desk: string): Promise<void> {
  // A script, as the command is.
  const empty = join(desk, 'empty.cjs')
  writeFileSync(empty, '')
  const issued = ['--batch', '2631', '--quantity', '24', '--date', '2026-11-25', '--out', desk, '--force']
  const [start = 0, stock = 0, traveller = 0] = shellTimes(
    [[empty], ['dist/main.cjs', 'stock', PART], ['dist/main.cjs', 'traveller', PART, ...issued]],
    11,
    desk,
  )
  const { shop, faces, reading, planning, paper, packet } = works()
  const [read = 0, planned = 0, windows = 0] = await inTurn([reading, planning, nineWindows(shop)], 40)

  const asked = await askedOfPdfkit(() => paper({ tagged: true }))
  const raw = async () => {
    for (const document of asked) await rawPdf(document, faces)
  }
  const [floor = 0, plain = 0, tagged = 0, whole = 0] = await inTurn(
    [raw, () => paper({ tagged: false }), () => paper({ tagged: true }), packet],
    9,
  )

  const pages = asked.flat()
  const shapes = pages.flatMap(page => page.shapes)
  const runs = pages.reduce((sum, page) => sum + page.runs.length, 0)
  const segments = shapes.reduce((sum, each) => sum + each, 0)
  console.log(
    `paper: ${asked.length} documents, ${pages.length} pages, ${runs} runs of text, ${shapes.length} shapes of ${segments} segments\n`,
  )
  const anEmptyStart = { name: 'an empty start', time: start }
  const theRawFloor = { name: 'the raw floor', time: floor }
  row('empty start of Node', start)
  row('stock, from the shell', stock)
  row('  of it, over that start', stock - start, anEmptyStart, 1.2)
  row('traveller, from the shell', traveller, anEmptyStart, 10)
  row('reading, warm', read, anEmptyStart)
  row('planning, warm', planned, anEmptyStart, 0.4)
  row('nine windows, warm', windows, anEmptyStart, 0.8)
  row('raw pdfkit floor, warm', floor)
  row('plan to PDF, no tags', plain, theRawFloor, 1.8)
  row('plan to PDF, tagged', tagged, theRawFloor, 1.8)
  row('plan to PDF and screen', whole, anEmptyStart)
}

function row(what: string, time: number, over?: { readonly name: string; readonly time: number }, aim?: number): void {
  const ratio = over ? `${(time / over.time).toFixed(2)} x ${over.name}` : ''
  const ms = `${time.toFixed(1)} ms`
  console.log(
    `${what.padEnd(26)}${ms.padStart(10)}   ${ratio.padEnd(24)}${aim === undefined ? '' : `aim: at most ${aim}`}`.trimEnd(),
  )
}
