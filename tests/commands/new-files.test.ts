import { describe, expect, it } from 'vitest'
import { run } from '../../src/commands/program.ts'
import batchSchema from '../../src/part/batch.schema.json' with { type: 'json' }
import { readShop } from '../../src/part/read-shop.ts'
import resultsSchema from '../../src/part/results.schema.json' with { type: 'json' }
import shopSchema from '../../src/part/shop.schema.json' with { type: 'json' }
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { demo, desk } from './fake-world.ts'

const KINDS = ['shop', 'batch', 'results'] as const
const SCHEMAS = { shop: shopSchema, batch: batchSchema, results: resultsSchema }

async function written(kind: (typeof KINDS)[number]) {
  const world = desk()
  const path = `/works/${kind}.yaml`
  expect(await run(['new', kind, path], world)).toBe(0)
  return { world, path, text: String(world.files.get(path)) }
}

/** With every # taken away that stands before a key or an entry; a comment to be read has one space after it. */
const allSaid = (text: string): string => text.replace(/^#(?=[a-z]| {2,})/gm, '')

const keysOf = (node: unknown): readonly string[] => {
  if (typeof node !== 'object' || node === null) return []
  const properties = 'properties' in node && typeof node.properties === 'object' ? (node.properties ?? {}) : {}
  const items = 'items' in node ? keysOf(node.items) : []
  return [...items, ...Object.entries(properties).flatMap(([key, child]) => [key, ...keysOf(child)])]
}

describe('a shop, batch or results file to start from', () => {
  it.each(KINDS)('%s: passes check as it stands', async kind => {
    const { world, path } = await written(kind)
    expect(await run(['check', path], world)).toBe(0)
    expect(world.printed()).toContain(`${path}: no findings`)
  })

  it.each(KINDS)('%s: passes check with every key said that it offers', async kind => {
    const { world, path, text } = await written(kind)
    expect(allSaid(text)).not.toBe(text)
    world.files.set(path, allSaid(text))
    const status = await run(['check', path], world)
    expect(world.printed()).not.toMatch(/ {2}error {2}/)
    expect(status).toBe(0)
  })

  it.each(KINDS)('%s: names every key of its schema', async kind => {
    const { text } = await written(kind)
    const missing = keysOf(SCHEMAS[kind]).filter(key => !new RegExp(`[#\\s{.]${key}:`).test(text))
    expect(missing).toEqual([])
  })

  it.each(KINDS)('%s: breaks what is only to be read into lines of 124 letters at most', async kind => {
    const { text } = await written(kind)
    expect(text.split('\n').filter(line => /^# \S/.test(line) && line.length > 124)).toEqual([])
  })

  it.each(KINDS)('%s: stays where it is there already, unless told otherwise', async kind => {
    const { world, path } = await written(kind)
    world.files.set(path, 'mine')
    expect(await run(['new', kind, path], world)).toBe(2)
    expect(world.files.get(path)).toBe('mine')
    expect(await run(['new', kind, path, '--force'], world)).toBe(0)
    expect(world.files.get(path)).not.toBe('mine')
  })

  it.each(KINDS)('%s: names its own schema, put beside it when that is asked for', async kind => {
    const world = desk()
    expect(await run(['new', kind, `/works/${kind}.yaml`, '--schema'], world)).toBe(0)
    expect(String(world.files.get(`/works/${kind}.yaml`))).toContain(
      `# yaml-language-server: $schema=./${kind}.schema.json\n`,
    )
    expect(JSON.parse(String(world.files.get(`/works/${kind}.schema.json`)))).toEqual(SCHEMAS[kind])
  })
})

describe('the shop file to start from', () => {
  it('names the schema of the package in the project around it', async () => {
    const world = desk({ '/works/node_modules/linerwright/dist/shop.schema.json': '{}' })
    await run(['new', 'shop', '/works/pump/shop.yaml'], world)
    expect(String(world.files.get('/works/pump/shop.yaml'))).toMatch(
      /^# yaml-language-server: \$schema=\.\.\/node_modules\/linerwright\/dist\/shop\.schema\.json\n/,
    )
  })

  it('puts a firm of the works before the built-in ones', async () => {
    const { text, path } = await written('shop')
    const { shop } = readShop(allSaid(text), path)
    expect(shop?.firms.map(({ name }) => name)).toEqual([
      'Quillfen Hardening',
      ...BUILT_IN_SHOP.firms.map(({ name }) => name),
    ])
  })

  it('lets no program be written before the fixture is measured', async () => {
    const { world, path } = await written('shop')
    world.files.set('/works/OX-098-21.yaml', demo('OX-098-21.yaml'))
    await run(['ports', '/works/OX-098-21.yaml', '--shop', path, '--nc', '/works/nc'], world)
    expect(world.complained()).toContain('ports/fixture-not-measured')
    expect([...world.files.keys()].filter(name => name.startsWith('/works/nc'))).toEqual([])
  }, 60_000)

  it('is the built-in works, with nothing of the fixture or the habits taken for said', async () => {
    const { text, path } = await written('shop')
    const { shop } = readShop(text, path)
    expect(shop?.machines).toEqual(BUILT_IN_SHOP.machines)
    expect(shop?.tools).toEqual(BUILT_IN_SHOP.tools)
    expect(shop?.gauges).toEqual(BUILT_IN_SHOP.gauges)
    expect(shop?.firms).toEqual(BUILT_IN_SHOP.firms)
    expect(shop?.fixture).toEqual(BUILT_IN_SHOP.fixture)
    expect(shop?.habits).toEqual(BUILT_IN_SHOP.habits)
    expect([...(shop?.set ?? [])].filter(pointer => /^\/(fixture|habits)/.test(pointer))).toEqual([])
  })

  it('offers of habits what holds where they are left out', async () => {
    const { text, path } = await written('shop')
    const { ovality, bow, yields, ...habits } = readShop(allSaid(text), path).shop?.habits ?? BUILT_IN_SHOP.habits
    const { yields: built, ...rest } = BUILT_IN_SHOP.habits
    expect(habits).toEqual(rest)
    expect(yields).toMatchObject(built)
    expect([ovality, bow]).toEqual([0.02, 0.01])
  })

  it('plans the demo liner to its packet', async () => {
    const { world, path } = await written('shop')
    world.files.set('/works/OX-098-21.yaml', demo('OX-098-21.yaml'))
    const argv = ['traveller', '/works/OX-098-21.yaml', '--shop', path, '--out', '/works/out', '--format', 'html']
    expect(await run(argv, world)).toBe(0)
    expect([...world.files.keys()].some(name => /^\/works\/out\/.*\.html$/.test(name))).toBe(true)
  }, 60_000)
})

it('a batch file to start from has the number of its name and the day', async () => {
  const world = desk()
  await run(['new', 'batch', '/works/batch-2632.yaml'], world)
  expect(String(world.files.get('/works/batch-2632.yaml'))).toMatch(/number: "?2632"? [\s\S]*date: 2026-11-25 /)
})
