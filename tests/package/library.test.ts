import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import manifest from '../../package.json' with { type: 'json' }
import { run } from '../../src/commands/program.ts'
import * as library from '../../src/index.ts'
import * as node from '../../src/node.ts'
import { demo, desk } from '../commands/fake-world.ts'

const textOf = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8')
const [, section = ''] = /## The library\n([\s\S]*?)\n## /.exec(textOf('src/commands/MANUAL.md')) ?? []

describe('the library', { timeout: 60_000 }, () => {
  it.each(Object.keys({ ...library, ...node }))('%s is told of in the manual', name => {
    expect(section).toMatch(new RegExp(`\`${name}[\`(]`))
  })

  it.each(['index', 'node', 'browser'])('types every value that the shipped %s exports', async face => {
    const declared = textOf(`src/${face}.ts`)
    const shipped: Record<string, unknown> = await import(new URL(`../../dist/${face}.js`, import.meta.url).href)
    for (const name of Object.keys(shipped)) {
      const told = face === 'index' ? declared + textOf('src/browser.ts') : declared
      expect(told).toMatch(new RegExp(`\\b${name}\\b`))
    }
  })

  it('makes the plan that the command prints, fingerprint and all', async () => {
    const files = { 'liner.yaml': demo('OX-098-21.yaml'), 'shop.yaml': demo('shop.yaml') }
    const world = desk(files)
    await run(['plan', 'liner.yaml', '--json', '--quantity', '12', '--batch', '2631', '--date', '2026-11-25'], world)
    const { part, findings: inPart } = library.readPart(files['liner.yaml'], 'liner.yaml')
    const { shop, findings: inShop } = library.readShop(files['shop.yaml'], 'shop.yaml')
    if (!part || !shop) throw new Error('the demo does not read')
    const date = '2026-11-25'
    const basis = { part, shop, batch: { number: '2631', quantity: 12 } }
    const program: string = JSON.parse(world.printed()).program
    const issue = { date, fingerprint: node.fingerprintOf({ ...basis, date }), program }
    const { plan, findings } = library.makePlan({ ...basis, issue })
    const all = library.byPlace([...inPart, ...inShop, ...findings])
    expect(library.jsonText({ ...plan, findings: all }) === world.printed()).toBe(true)
  })

  it('prints the packet that the command writes, byte for byte', async () => {
    const world = desk({ 'pin.yaml': demo('OX-098-34.yaml'), 'shop.yaml': demo('shop.yaml') })
    await run(['traveller', 'pin.yaml', '--date', '2026-11-25', '--batch', '2631', '--format', 'html'], world)
    const { part } = library.readPart(demo('OX-098-34.yaml'), 'pin.yaml')
    const { shop } = library.readShop(demo('shop.yaml'), 'shop.yaml')
    if (!part || !shop) throw new Error('the demo does not read')
    const date = '2026-11-25'
    const basis = { part, shop, batch: { number: '2631', quantity: 10 } }
    const issue = {
      date,
      fingerprint: node.fingerprintOf({ ...basis, date }),
      program: `linerwright ${manifest.version}`,
    }
    const { plan } = library.makePlan({ ...basis, issue })
    if (!plan) throw new Error('the demo does not plan')
    const formats = { pdf: false, html: true }
    const { html } = await library.packet(plan, { ...node.loadPaper(), formats, paper: 'a4', units: 'mm' })
    const [, written] = [...world.files].find(([name]) => name.endsWith('.html')) ?? []
    expect(html === written).toBe(true)
  })
})
