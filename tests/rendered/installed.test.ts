import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'

const root = fileURLToPath(new URL('../../', import.meta.url))
const desk = mkdtempSync(join(tmpdir(), 'installed-'))
const works = join(desk, 'works')

const run = (command: string, args: readonly string[], cwd = works): string =>
  // A plan in JSON is longer than what Node takes in from a command unasked.
  execFileSync(command, args, { cwd, encoding: 'utf8', maxBuffer: 64 << 20, stdio: ['ignore', 'pipe', 'pipe'] })

/** Packed as it would be published, and installed in a folder of its own; packages come from npm's cache where it has them. */
beforeAll(() => {
  run('npm', ['pack', '--pack-destination', desk], root)
  const [tarball = ''] = readdirSync(desk).filter(name => name.endsWith('.tgz'))
  mkdirSync(works)
  writeFileSync(join(works, 'package.json'), JSON.stringify({ private: true, type: 'module' }))
  run('npm', ['install', '--prefer-offline', '--ignore-scripts', join(desk, tarball)])
}, 240_000)
afterAll(() => rmSync(desk, { recursive: true, force: true }))

/** The program that the README shows. */
const example = (): string => {
  const [, after = ''] = readFileSync(join(works, 'node_modules/linerwright/README.md'), 'utf8').split(
    '## As a library',
  )
  const [, program = ''] = /```ts\n([\s\S]*?)```/.exec(after) ?? []
  return program
}

describe('the packed tarball, installed in another folder', { timeout: 120_000 }, () => {
  it('has the command, which lists its commands and plans', () => {
    expect(run('npx', ['--no-install', 'linerwright', '--help'])).toContain('traveller')
    run('npx', ['--no-install', 'linerwright', 'new', 'liner', 'my-liner.yaml'])
    const plan = JSON.parse(run('npx', ['--no-install', 'linerwright', 'plan', 'my-liner.yaml', '--json']))
    expect(plan.ports.length).toBe(4)
    const [, schema = ''] = /\$schema=(.*)/.exec(readFileSync(join(works, 'my-liner.yaml'), 'utf8')) ?? []
    expect(JSON.parse(readFileSync(join(works, schema), 'utf8')).$id).toContain('part')
    expect(plan.operations.length).toBeGreaterThan(10)
  })

  it('plans and prints its own demo part', () => {
    const part = 'node_modules/linerwright/parts/OX-098-21.yaml'
    const written = run('npx', ['--no-install', 'linerwright', 'traveller', part, '--out', 'paper', '--format', 'pdf'])
    const pdfs = written.split('\n').filter(path => path.endsWith('.pdf'))
    expect(pdfs.length).toBeGreaterThan(2)
    for (const path of pdfs) expect(readFileSync(join(works, path)).subarray(0, 5).toString()).toBe('%PDF-')
  })

  it('runs the example of the README, as written', () => {
    // Types are for the compiler: what runs is what the bundler leaves when it has taken them out.
    const esbuild = createRequire(import.meta.url)('esbuild')
    writeFileSync(join(works, 'example.js'), esbuild.transformSync(example(), { loader: 'ts' }).code)
    run('npx', ['--no-install', 'linerwright', 'new', 'liner', 'my-liner.yaml', '--force'])
    expect(run(process.execPath, ['example.js'])).toMatch(/^seat in \d+: ok$/m)
    const made = readdirSync(works)
    expect(made.filter(name => name.endsWith('.svg')).length).toBeGreaterThan(20)
    expect(readFileSync(join(works, 'floor.pdf')).subarray(0, 5).toString()).toBe('%PDF-')
  })

  it('compiles that example strictly, with no types but its own and Node’s', () => {
    writeFileSync(join(works, 'example.ts'), example())
    const browser = "import { drawPictures, makePlan, readPart } from 'linerwright/browser'\n"
    const wrong =
      "// @ts-expect-error: a quantity is a number\nexport const batch: BatchRequest = { number: '1', quantity: 'ten' }\n"
    writeFileSync(
      join(works, 'other.ts'),
      `${browser}import type { BatchRequest } from 'linerwright'\nexport const all = [drawPictures, makePlan, readPart]\n${wrong}`,
    )
    const options = ['--strict', '--noEmit', '--exactOptionalPropertyTypes', '--skipLibCheck', 'false']
    const where = [
      '--module',
      'nodenext',
      '--target',
      'es2023',
      '--types',
      'node',
      '--typeRoots',
      join(root, 'node_modules/@types'),
    ]
    const compiler = join(root, 'node_modules/typescript/bin/tsc')
    expect(run(process.execPath, [compiler, ...options, ...where, 'example.ts', 'other.ts'])).toBe('')
  })
})
