import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { describe, expect, it } from 'vitest'
import { jsonText } from '../../src/commands/json.ts'
import { run } from '../../src/commands/program.ts'
import { type Desk, demo, desk } from './fake-world.ts'

const files = { 'p.yaml': demo('OX-112-03.yaml'), 'shop.yaml': demo('shop.yaml') }
const FOLDER = 'out/OX-112-03-A-2631'
const traveller = (world: Desk, ...more: readonly string[]): Promise<number> =>
  run(['traveller', 'p.yaml', '--batch', '2631', '--date', '2026-11-30', ...more], world)
const writtenIn = ({ files }: Desk): readonly string[] =>
  [...files.keys()].filter(path => path.startsWith('out/')).map(path => path.slice(FOLDER.length + 1))

async function textOf(world: Desk, name: string): Promise<readonly string[]> {
  const data = new Uint8Array(world.files.get(`${FOLDER}/${name}`) as Uint8Array)
  const document = await getDocument({ data, verbosity: 0 }).promise
  const pages = Array.from({ length: document.numPages }, async (_, index) => {
    const { items } = await (await document.getPage(index + 1)).getTextContent()
    return items
      .map(item => ('str' in item ? item.str : ''))
      .join(' ')
      .replace(/\s+/g, ' ')
  })
  return Promise.all(pages)
}

describe('a packet', () => {
  it('is a folder with a document a reader, the screen and the plan as issued', async () => {
    const world = desk(files)
    expect(await traveller(world)).toBe(0)
    const written = ['floor.pdf', 'inspection.pdf', 'order-1-brackwater-grinding.pdf', 'packet.html', 'plan.json']
    expect(writtenIn(world)).toEqual(written)
    expect(world.printed()).toBe(written.map(name => `${FOLDER}/${name}\n`).join(''))
    const asked = desk(files)
    await run(['plan', 'p.yaml', '--json', '--batch', '2631', '--date', '2026-11-30'], asked)
    expect(jsonText(JSON.parse(String(world.files.get(`${FOLDER}/plan.json`)))) === asked.printed()).toBe(true)
  })

  it.each([
    ['floor', ['floor.pdf', 'plan.json']],
    ['orders,inspection', ['inspection.pdf', 'order-1-brackwater-grinding.pdf', 'plan.json']],
    ['file', ['packet.html', 'plan.json']],
  ])('for %s is theirs alone', async (readers, expected) => {
    const world = desk(files)
    expect(await traveller(world, '--for', readers)).toBe(0)
    expect(writtenIn(world)).toEqual(expected)
  })

  it('for nobody that there is, is refused with the list of readers', async () => {
    const world = desk(files)
    expect(await traveller(world, '--for', 'floor,foreman')).toBe(2)
    expect(world.complained()).toContain('"foreman" is nobody: floor, inspection, orders, file')
  })

  it('that replaces another says so on every sheet, says it again, and leaves none of the other behind', async () => {
    const world = desk(files)
    await traveller(world)
    const { fingerprint } = JSON.parse(String(world.files.get(`${FOLDER}/plan.json`)))
    expect(await traveller(world, '--quantity', '20', '--for', 'floor')).toBe(2)
    expect(await traveller(world, '--quantity', '20', '--for', 'floor', '--force')).toBe(0)
    expect(writtenIn(world)).toEqual(['floor.pdf', 'plan.json'])
    const first = world.files.get(`${FOLDER}/floor.pdf`)
    for (const page of await textOf(world, 'floor.pdf')) expect(page).toContain(`replaces ${fingerprint} of 2026-11-30`)
    expect(await traveller(world, '--quantity', '20', '--for', 'floor')).toBe(0)
    expect(Buffer.compare(first as Uint8Array, world.files.get(`${FOLDER}/floor.pdf`) as Uint8Array)).toBe(0)
  })
})

describe('a lost sheet', () => {
  it('is printed again of the plan as issued, with its number, as a copy, whatever the part has become', async () => {
    const world = desk(files)
    await traveller(world)
    const issued = await textOf(world, 'floor.pdf')
    world.files.set('p.yaml', files['p.yaml'].replace(/title: [^,}\n]+/, 'title: Another liner'))
    expect(await traveller(world, '--sheet', '20')).toBe(0)
    const copies = await textOf(world, 'floor-20-copy.pdf')
    const note = ' · COPY of the sheet as issued'
    expect(copies.length).toBeGreaterThan(0)
    for (const copy of copies) {
      expect(copy).toContain(note)
      expect(issued).toContain(copy.replace(note, ''))
    }
  })

  it.each([
    ['check-paper', 'check-paper-copy.pdf'],
    ['order-1', 'order-1-quillfen-hardening-copy.pdf'],
    ['80', 'floor-80-copy.pdf'],
  ])('asked for as %s names its file by that once: %s', async (sheet, name) => {
    const world = desk({ ...files, 'p.yaml': demo('OX-131-07.yaml') })
    await traveller(world, '--for', 'floor', '--format', 'pdf')
    expect(await traveller(world, '--sheet', sheet)).toBe(0)
    const copies = [...world.files.keys()].filter(path => path.endsWith('-copy.pdf'))
    expect(copies).toEqual([`out/OX-131-07-A-2631/${name}`])
  })

  it('that the packet does not have is refused with the list of those that it has', async () => {
    const world = desk(files)
    await traveller(world)
    expect(await traveller(world, '--sheet', '25')).toBe(2)
    expect(world.complained()).toMatch(/there is no sheet "25": route, material, 10, 20, /)
  })

  it('of what was never issued is refused', async () => {
    const world = desk(files)
    expect(await traveller(world, '--sheet', '20')).toBe(2)
    expect(world.complained()).toContain(`${FOLDER}/plan.json is not there: nothing is issued`)
  })

  it('of a plan that something else has written is refused', async () => {
    const world = desk({ ...files, [`${FOLDER}/plan.json`]: '{"part": 1}' })
    expect(await traveller(world, '--sheet', '20')).toBe(2)
    expect(world.complained()).toContain(`${FOLDER}/plan.json is no plan as issued: it has no batch`)
  })
})
