import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { run } from '../../src/commands/program.ts'
import { desk } from './fake-world.ts'

const root = new URL('../../', import.meta.url)
const schema = readFileSync(new URL('dist/part.schema.json', root), 'utf8')
const lineOf = (text: unknown): string | undefined => /^# yaml-language-server: \$schema=(.*)$/m.exec(String(text))?.[1]

describe('the schema that a new file names', () => {
  it('is that of the package in the project around it, from the file’s own folder', async () => {
    const world = desk({ '/works/node_modules/linerwright/dist/part.schema.json': schema })
    await run(['new', 'pin', '/works/pump/pins/OX-140-01.yaml'], world)
    expect(lineOf(world.files.get('/works/pump/pins/OX-140-01.yaml'))).toBe(
      '../../node_modules/linerwright/dist/part.schema.json',
    )
  })

  it('is that of the checkout that it lies in', async () => {
    const world = desk()
    const path = fileURLToPath(new URL('parts/OX-140-01.yaml', root))
    await run(['new', 'pin', path], world)
    expect(lineOf(world.files.get(path))).toBe('../dist/part.schema.json')
    await run(['new', 'pin', `${path}/../../OX-140-02.yaml`], world)
    expect(lineOf(world.files.get(`${path}/../../OX-140-02.yaml`))).toBe('./dist/part.schema.json')
  })

  it('is none where the program is installed for the whole machine, and the command says how to have one', async () => {
    const world = desk()
    await run(['new', 'pin', '/elsewhere/pin.yaml'], world)
    expect(lineOf(world.files.get('/elsewhere/pin.yaml'))).toBeUndefined()
    expect(world.printed()).toContain('--schema')
    expect([...world.files.keys()]).toEqual(['/elsewhere/pin.yaml'])
  })

  it('is the one put beside it when that is asked for', async () => {
    const world = desk()
    expect(await run(['new', 'pin', '/elsewhere/pin.yaml', '--schema'], world)).toBe(0)
    expect(await run(['new', 'liner', '/elsewhere/liner.yaml', '--schema'], world)).toBe(0)
    expect(lineOf(world.files.get('/elsewhere/liner.yaml'))).toBe('./part.schema.json')
    expect(world.files.get('/elsewhere/part.schema.json')).toBe(schema)
  })

  it('stays off another file of that name', async () => {
    const world = desk({ '/elsewhere/part.schema.json': '{}' })
    expect(await run(['new', 'pin', '/elsewhere/pin.yaml', '--schema'], world)).toBe(2)
    expect(world.complained()).toMatch(/part\.schema\.json is there already/)
    expect([...world.files.keys()]).toEqual(['/elsewhere/part.schema.json'])
  })
})

describe('the schema that a file of the demo names', () => {
  it.each(readdirSync(new URL('parts/', root)).filter(name => name.endsWith('.yaml')))(
    '%s: is there, in a checkout as in the package',
    name => {
      const written = lineOf(readFileSync(new URL(`parts/${name}`, root), 'utf8'))
      expect(written).toMatch(/^\.\.\/dist\//)
      expect(existsSync(new URL(written ?? '', new URL('parts/', root)))).toBe(true)
    },
  )
})
