import { readdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { FileProblem, type World } from '../../src/commands/world.ts'

const require = createRequire(import.meta.url)
const root = new URL('../../', import.meta.url)

export type Desk = World & {
  readonly printed: () => string
  readonly complained: () => string
  readonly files: Map<string, string | Uint8Array>
}

/** A world of given files in memory, with the package's own templates and fonts; the date stands still. */
export function desk(given: Readonly<Record<string, string>> = {}): Desk {
  const files = new Map<string, string | Uint8Array>(Object.entries(given))
  let out = ''
  let err = ''
  const bytesOf = (path: string): Uint8Array => {
    const held = files.get(path)
    if (held === undefined) throw new FileProblem(`${path}: cannot be read: there is no such file`)
    return typeof held === 'string' ? new TextEncoder().encode(held) : held
  }
  const isAsset = (path: string): boolean => path.startsWith(root.pathname) || path.includes('dejavu-fonts-ttf')
  return {
    files,
    printed: () => out,
    complained: () => err,
    readBytes: path => (isAsset(path) ? readFileSync(path) : bytesOf(path)),
    readText: path => (isAsset(path) ? readFileSync(path, 'utf8') : new TextDecoder().decode(bytesOf(path))),
    list: folder =>
      isAsset(folder)
        ? readdirSync(folder)
        : [...files.keys()].filter(name => name.startsWith(`${folder}/`)).map(name => name.slice(folder.length + 1)),
    exists: path => files.has(path),
    write: (...written) => {
      for (const { path, content } of written) files.set(path, content)
    },
    remove: (...paths) => {
      for (const path of paths) files.delete(path)
    },
    out: text => {
      out += text
    },
    err: text => {
      err += text
    },
    today: () => '2026-11-25',
    pause: () => Promise.resolve(),
    runsOn: 'a desk',
    terminal: { out: false, err: false, colour: false },
    asset: name =>
      name.startsWith('fonts/')
        ? require.resolve(`dejavu-fonts-ttf/ttf/${name.slice(6)}`)
        : new URL(name.startsWith('page/') ? `dist/${name}` : name, root).pathname,
  }
}

/** A file of the demo, by its name in `parts/`. */
export const demo = (name: string): string => readFileSync(new URL(`parts/${name}`, root), 'utf8')
