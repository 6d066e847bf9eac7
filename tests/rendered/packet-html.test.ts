import { execFileSync } from 'node:child_process'
import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { parseDocument } from 'htmlparser2'
import { describe, expect, it } from 'vitest'
import { packetFiles, plan, run } from './demo-files.ts'

const { html } = await packetFiles('a4')
const profile = mkdtempSync(join(tmpdir(), 'linerwright-browser-'))
const QUIET = ['--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run']
const OFFLINE = ['--disable-background-networking', '--disable-component-update', '--disable-sync']

/** Starts the browser on a page of its own and lets it end by itself. */
function browse(...args: readonly string[]): string {
  const all = [...QUIET, ...OFFLINE, `--user-data-dir=${profile}`, ...args, pathToFileURL(html).href]
  return execFileSync('chromium', all, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'], maxBuffer: 1 << 28 })
}

describe('the packet in a browser', () => {
  it('keeps every section, table and drawing as it was written', () => {
    const shown = browse('--dump-dom')
    const count = (text: string, tag: string) => text.match(new RegExp(`<${tag}[ >]`, 'g'))?.length ?? 0
    const written = run('cat', html)
    for (const tag of ['section', 'table', 'tr', 'th', 'td', 'h1', 'h2', 'svg', 'dl', 'li']) {
      expect(count(shown, tag), tag).toBe(count(written, tag))
    }
    expect(count(shown, 'section')).toBeGreaterThan(plan.operations.length)
  })

  it('is well nested, so that no browser has to mend it', () => {
    const written = run('cat', html)
    const body = written.slice(written.indexOf('<main>'), written.indexOf('</main>') + 7)
    expect(() => parseDocument(body.replace(/<(br|hr)>/g, '<$1/>'), { xmlMode: true })).not.toThrow()
    const open = body.match(/<[a-z]\w*(?=[^>]*[^/]>|>)/g)?.filter(tag => tag !== '<br' && tag !== '<hr').length ?? 0
    expect(body.match(/<\/[a-z]\w*>/g)?.length).toBe(open)
  })

  it('prints from the browser on A4 with every operation', () => {
    const pdf = join(profile, 'printed.pdf')
    browse('--no-pdf-header-footer', `--print-to-pdf=${pdf}`)
    expect(run('pdfinfo', pdf)).toMatch(/594\.96 x 841\.92|595\.\d+ x 841\.\d+/)
    const text = run('pdftotext', '-layout', pdf, '-')
    for (const { name } of plan.operations) expect(text).toContain(name)
  })
})
