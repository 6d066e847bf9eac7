import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader'
import type { Plan } from '../../src/plan/plan.ts'
import { packet } from '../../src/sheets/packet.ts'
import type { Paper } from '../../src/sheets/theme.ts'
import { demoPlan, templates, typeface } from '../sheets/demo-packet.ts'

const folder = mkdtempSync(join(tmpdir(), 'linerwright-'))
export const plan: Plan = demoPlan()

/** The demo packet, written where the tools of the system can read it: each set by its name, and all of it for the screen. */
export async function packetFiles(
  paper: Paper,
): Promise<{ readonly pdfs: ReadonlyMap<string, string>; readonly html: string }> {
  const options = { templates, typeface, formats: { pdf: true, html: true }, paper, units: 'mm' as const }
  const { documents, html = '' } = await packet(plan, options)
  const page = join(folder, `${paper}.html`)
  writeFileSync(page, html)
  const pdfs = documents.map(({ name, pdf }) => {
    const file = join(folder, `${paper}-${name.replaceAll(' ', '-')}.pdf`)
    writeFileSync(file, pdf)
    return [name, file] as const
  })
  return { pdfs: new Map(pdfs), html: page }
}

export const run = (command: string, ...args: readonly string[]): string =>
  execFileSync(command, args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'], maxBuffer: 1 << 28 })

/** One page as a picture, grey, at 200 dots an inch: what a shop's printer at its worst still shows. */
export function rendered(pdf: string, page: number): Uint8Array {
  const stem = `${pdf}-${page}`
  run('pdftoppm', '-r', '200', '-gray', '-png', '-singlefile', '-f', `${page}`, '-l', `${page}`, pdf, stem)
  return readFileSync(`${stem}.png`)
}

/** Reads all codes of a picture with a general-purpose reader. */
export async function codesOf(png: Uint8Array): Promise<readonly { readonly format: string; readonly text: string }[]> {
  const wasm = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm')
  prepareZXingModule({ overrides: { wasmBinary: readFileSync(wasm).buffer as ArrayBuffer } })
  const found = await readBarcodes(png, { formats: ['Code128', 'DataMatrix'], tryHarder: true, maxNumberOfSymbols: 16 })
  return found.filter(({ isValid }) => isValid).map(({ format, text }) => ({ format, text }))
}
