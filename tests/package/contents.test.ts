import { execFileSync } from 'node:child_process'
import { readdirSync, readFileSync } from 'node:fs'
import { builtinModules } from 'node:module'
import { describe, expect, it } from 'vitest'

const textOf = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8')
const root = new URL('../../', import.meta.url)
const run = (command: string, ...args: readonly string[]): string =>
  execFileSync(command, args, { cwd: root, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] })

const { dependencies }: { dependencies: Readonly<Record<string, string>> } = JSON.parse(textOf('package.json'))
const notices = textOf('dist/THIRD-PARTY-NOTICES.txt')
const listed = notices.slice(0, notices.indexOf('====')).match(/^- \S+ \S+/gm) ?? []
const packageOf = (path: string): string | undefined => /.*node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(path)?.[1]

describe('what the package brings of others', () => {
  // What goes in is asked of the bundler; the notices are what the build left in dist/.
  const bundled = new Set(
    run(process.execPath, '.build/inputs.mjs')
      .split('\n')
      .flatMap(path => packageOf(path) ?? []),
  )

  it('is something', () => {
    expect(bundled).toContain('yaml')
    expect(bundled.size).toBeGreaterThan(10)
  })

  it.each([...bundled, 'dejavu-fonts-ttf'])('%s stands in the notices with its version and licence', name => {
    const { version } = JSON.parse(textOf(`node_modules/${name}/package.json`))
    expect(listed).toContain(`- ${name} ${version}`)
    const [, text = ''] = notices.split(new RegExp(`={80}\\n\\n${name} .*\\n\\n={80}\\n`))
    expect(text.split('='.repeat(80))[0]).toMatch(/copyright|public domain/i)
  })

  it('is not installed a second time', () => {
    expect(Object.keys(dependencies).filter(name => bundled.has(name))).toEqual([])
  })

  it('and everything else that it imports is installed, and nothing more', () => {
    const code = readdirSync(new URL('dist/', root))
      .filter(name => /\.c?js$/.test(name))
      .map(name => textOf(`dist/${name}`))
      .join('\n')
    const imported = [...code.matchAll(/\b(?:from|import|import\(|(?<!['`])require\()"([@a-z][\w@/.-]*)"/g)].map(
      ([, name = '']) => name,
    )
    const outside = imported.filter(name => !name.startsWith('node:') && !builtinModules.includes(name))
    expect([...new Set(outside)].toSorted()).toEqual(Object.keys(dependencies).toSorted())
  })
})

describe('the packed files', () => {
  const [{ files }]: [{ files: readonly { path: string; size: number }[] }] = JSON.parse(
    run('npm', 'pack', '--dry-run', '--json', '--ignore-scripts'),
  )
  const paths = files.map(({ path }) => path)

  it.each([
    'dist/main.cjs',
    'dist/part.schema.json',
    'dist/fonts/DejaVuSansCondensed.ttf',
    'dist/THIRD-PARTY-NOTICES.txt',
    'LICENSE',
    'README.md',
    'package.json',
  ])('have %s', path => {
    expect(paths).toContain(path)
  })

  it.each(['parts', 'templates', 'out/sample'])('have all of %s', folder => {
    const wanted = readdirSync(new URL(`${folder}/`, root), { recursive: true, encoding: 'utf8' })
      .filter(name => /\.\w+$/.test(name))
      .map(name => `${folder}/${name}`)
    expect(paths).toEqual(expect.arrayContaining(wanted))
  })

  it('have every file that the README points to', () => {
    const local = [...textOf('README.md').matchAll(/\]\(([^)#:]+)\)/g)].map(([, path = '']) => path)
    expect(local.length).toBeGreaterThan(0)
    expect(local.filter(path => !paths.includes(path))).toEqual([])
  })

  it('have nothing that only the makers of the program need', () => {
    const KNOWN = /^(dist|templates|parts|out\/sample)\/|^(README\.md|LICENSE|package\.json|src\/commands\/MANUAL\.md)$/
    expect(paths.filter(path => !KNOWN.test(path) || path.endsWith('.map') || path.includes('/.'))).toEqual([])
  })
})
