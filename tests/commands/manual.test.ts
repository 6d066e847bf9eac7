import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { HELP } from '../../src/commands/help.ts'
import { run } from '../../src/commands/program.ts'
import batch from '../../src/part/batch.schema.json' with { type: 'json' }
import bench from '../../src/part/bench.schema.json' with { type: 'json' }
import part from '../../src/part/part.schema.json' with { type: 'json' }
import results from '../../src/part/results.schema.json' with { type: 'json' }
import shop from '../../src/part/shop.schema.json' with { type: 'json' }
import { desk } from './fake-world.ts'

const textOf = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8')
const manual = textOf('src/commands/MANUAL.md')
const readme = textOf('README.md')

const helpOf = async (...argv: readonly string[]): Promise<string> => {
  const world = desk()
  expect(await run([...argv, '--help'], world)).toBe(0)
  return world.printed()
}

/** The names of all keys of a schema, wherever they stand. */
const keysIn = (value: unknown): readonly string[] =>
  typeof value !== 'object' || value === null
    ? []
    : Object.entries(value).flatMap(([key, below]) => [
        ...(key === 'properties' && typeof below === 'object' && below !== null ? Object.keys(below) : []),
        ...keysIn(below),
      ])

// Where one of these fails, `npm run manual` writes the manual anew.
describe('the manual', () => {
  it('has every command that there is, with its help as it is', async () => {
    const listed = [...(await helpOf()).matchAll(/^ {2}(\w+) (?:\[options\] )?</gm)].map(([, name = '']) => name)
    expect(listed).toEqual(Object.keys(HELP))
    for (const name of listed)
      expect(manual).toContain(`### ${name}\n\n\`\`\`text\n${await helpOf(name)}\`\`\`\n\n\`\`\`console\n`)
  })

  it('has the keys, the library and the codes as they are', () => {
    const tables = execFileSync(process.execPath, ['.build/manual.mjs', '--tables'], { encoding: 'utf8' })
    expect(manual.endsWith(tables)).toBe(true)
  })

  it('leaves out no key of a file and no code of a finding', () => {
    const keys = new Set([part, shop, batch, bench, results].flatMap(keysIn))
    expect(keys.size).toBeGreaterThan(150)
    expect([...keys].filter(key => !new RegExp(`[\`.]${key}\``).test(manual))).toEqual([])
    const codes = [...textOf('src/finding-code.ts').matchAll(/'([a-z]+\/[a-z-]+)'/g)].map(([, code]) => code)
    expect(codes.length).toBeGreaterThan(150)
    expect(codes.filter(code => !manual.includes(`\`${code}\``))).toEqual([])
  })
})

describe('the README', () => {
  it('opens with what the job is, and is read in five minutes', () => {
    expect(readme).toMatch(/^# linerwright\n\n[^\n#`]/)
    const prose = readme.replaceAll(/```[\s\S]*?```/g, '')
    // Two hundred and fifty words a minute.
    expect(prose.split(/\s+/).length).toBeLessThan(1250)
  })

  it('lists every command', () => {
    for (const name of Object.keys(HELP)) expect(readme).toContain(`| \`${name}\` |`)
  })

  it('shows what a slip of the pen is answered with', async () => {
    const [, file = '', said = ''] = /\$ npx linerwright check (\S+)\n([\s\S]*?)```/.exec(readme) ?? []
    const world = desk()
    await run(['new', 'liner', file], world)
    world.files.set(file, String(world.files.get(file)).replace('height: 16.1', 'hieght: 16.1'))
    const before = world.printed().length
    expect(await run(['check', file], world)).toBe(1)
    // Where the package is installed, the file begins with a line that names the schema.
    const anyLine = (text: string): string => text.replaceAll(/:\d+:\d+ /g, ': ')
    expect(anyLine(said)).toBe(anyLine(world.printed().slice(before)))
  })
})
