import { cpSync, mkdtempSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Plan } from '../../src/plan/plan.ts'
import { run } from './demo-files.ts'

const COMMAND = resolve('dist/main.cjs')
const folder = mkdtempSync(join(tmpdir(), 'linerwright-screen-'))
cpSync('parts', join(folder, 'parts'), { recursive: true })
const command = (...args: readonly string[]): string =>
  run('bash', '-c', 'cd "$1" && shift && exec "$@"', '-', folder, process.execPath, COMMAND, ...args)
const PART = 'parts/OX-098-21.yaml'
command('traveller', PART, '--batch', 'parts/batch-2631.yaml')
const issued = join(folder, 'out', 'OX-098-21-B-2631')
const plan: Plan = JSON.parse(readFileSync(join(issued, 'plan.json'), 'utf8'))
const address = pathToFileURL(join(issued, 'packet.html')).href

let browser: Browser
let context: BrowserContext
let page: Page
/** What the browser refused or did not understand. */
const complaints: string[] = []

beforeAll(async () => {
  browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox', '--disable-gpu'] })
  context = await browser.newContext({ acceptDownloads: true })
  page = await context.newPage()
  page.on('console', message => complaints.push(message.text()))
  page.on('pageerror', error => complaints.push(String(error)))
  page.on('request', request => {
    if (!/^(file|blob|data):/.test(request.url())) complaints.push(`fetched ${request.url()}`)
  })
  await page.goto(address)
})
afterAll(() => browser.close())

const html = readFileSync(join(issued, 'packet.html'), 'utf8')
const size = plan.inspection.characteristics.find(
  ({ number, upper, accept, unit }) =>
    unit === 'mm' && (accept.upper ?? 0) < (upper ?? 0) && html.includes(`data-number="${number}" data-piece="3"`),
)
if (!size) throw new Error('the demo liner has a size that is judged by less than its limits')
const { number, lower = 0, upper = 0, accept } = size
const cell = (piece: number) => page.locator(`td[data-number="${number}"][data-piece="${piece}"]`)
const bar = () => page.getByRole('complementary', { name: 'Readings' })
/** In limits by any gauge, between the limit and what may be accepted, and out beyond any doubt. */
const READ = [
  [1, (lower + upper) / 2, 'in limits'],
  [2, (upper + (accept.upper ?? upper)) / 2, 'in doubt'],
  [3, upper + 2 * (upper - lower), 'out'],
] as const

describe('the packet on a screen', () => {
  it('says of every reading what it is worth, in words', async () => {
    for (const [piece, value, verdict] of READ) {
      await cell(piece)
        .locator('input')
        .fill(value.toFixed(5).replace('.', piece === 1 ? ',' : '.'))
      expect(await cell(piece).locator('.verdict').textContent()).toContain(verdict)
    }
    await cell(4).locator('input').fill('about right')
    expect(await cell(4).locator('.verdict').textContent()).toContain('no number')
    expect(await page.locator('.readings').textContent()).toContain('1 in limits, 1 in doubt, 1 out')
  })

  it('goes down the column with the gauge in the hand', async () => {
    await cell(1).locator('input').press('Enter')
    expect(await cell(2).locator('input:focus').count()).toBe(1)
  })

  it('keeps what was entered over a reload, and forgets it when asked', async () => {
    await bar().getByLabel('Measured by').fill('R. Tarn')
    await bar().getByLabel('Parts at').fill('20')
    await page.locator('section').first().getByLabel('done').check()
    await page.reload()
    expect(await cell(2).locator('.verdict').textContent()).toContain('in doubt')
    expect(await bar().getByLabel('Measured by').inputValue()).toBe('R. Tarn')
    expect(await page.locator('nav a').first().textContent()).toContain('done')
  })

  it('gives a results file that record reads, with the same verdicts', async () => {
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByText('Save readings').click()])
    const file = join(folder, download.suggestedFilename())
    await download.saveAs(file)
    expect(await page.getByRole('status').textContent()).toContain('left out')
    const said = JSON.parse(command('record', PART, file, '--batch', 'parts/batch-2631.yaml', '--json')) as {
      readonly judged: readonly { readonly serial: string; readonly characteristic: number; readonly verdict: string }[]
    }
    expect(said.judged.map(({ serial, characteristic, verdict }) => [Number(serial), characteristic, verdict])).toEqual(
      READ.map(([piece, , verdict]) => [piece, number, verdict]),
    )
  })

  it('forgets what was entered only when asked twice', async () => {
    page.once('dialog', dialog => dialog.dismiss())
    await page.getByRole('button', { name: 'Clear' }).click()
    expect(await cell(1).locator('input').inputValue()).not.toBe('')
    page.once('dialog', dialog => dialog.accept())
    await page.getByRole('button', { name: 'Clear' }).click()
    expect(await cell(1).locator('input').inputValue()).toBe('')
  })

  it('goes from the contents to every sheet', async () => {
    const targets = await page.locator('nav a').evaluateAll(links => links.map(link => link.getAttribute('href') ?? ''))
    expect(targets.length).toBe(await page.locator('section').count())
    for (const target of targets) expect(await page.locator(target).count(), target).toBe(1)
  })

  // Rules of the W3C's Web Content Accessibility Guidelines 2.1, levels A and AA, as axe-core checks them.
  it.each([
    [390, 'light'],
    [820, 'light'],
    [1280, 'light'],
    [1280, 'dark'],
  ] as const)(
    'has no serious fault for a reader of screens at %i px, %s, and nothing hangs over its edge',
    async (width, colorScheme) => {
      await page.setViewportSize({ width, height: 900 })
      await page.emulateMedia({ colorScheme })
      const over = await page.evaluate<number>(
        'document.documentElement.scrollWidth - document.documentElement.clientWidth',
      )
      expect(over).toBeLessThanOrEqual(0)
      await page.evaluate(readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8'))
      type Fault = {
        readonly id: string
        readonly impact: string
        readonly nodes: readonly { readonly html: string }[]
      }
      const { violations } = await page.evaluate<{ readonly violations: readonly Fault[] }>(
        "axe.run(document, { resultTypes: ['violations'] })",
      )
      const faults = violations
        .filter(({ impact }) => impact === 'serious' || impact === 'critical')
        .map(({ id, nodes }) => `${id}: ${nodes.length}, ${nodes[0]?.html.slice(0, 200)}`)
      expect(faults).toEqual([])
    },
  )

  it('breaks no rule of its own policy and fetches nothing', () => {
    expect(complaints).toEqual([])
  })
})
