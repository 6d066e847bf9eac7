import { readdirSync, readFileSync } from 'node:fs'
import { posix } from 'node:path'

/** One import or re-export: from which file of src, of what, and whether only its types are taken. */
export type Import = { readonly file: string; readonly target: string; readonly typeOnly: boolean }

const STATEMENT = /(?:^|\n)(?:import|export)\s+(type\s+)?(?:([\w*\s{},$]*?)\s+from\s+)?'([^']+)'|import\('([^']+)'\)/g

/** The imports of one file, relative ones as paths below src. */
export function importsOf(file: string, text: string): readonly Import[] {
  return [...text.matchAll(STATEMENT)].map(([, type, names = '', plain = '', loaded]) => {
    const target = loaded ?? plain
    const inBraces =
      /\{([^}]*)\}/
        .exec(names)?.[1]
        ?.split(',')
        .map(name => name.trim()) ?? []
    const named = inBraces.filter(name => name !== '')
    return {
      file,
      target: target.startsWith('.') ? posix.join(posix.dirname(file), target) : target,
      typeOnly: type !== undefined || (named.length > 0 && named.every(name => name.startsWith('type '))),
    }
  })
}

/** What a file takes from each file of ours, as `file name`; `file *` where it is loaded whole or late. */
export const importedNames = (file: string, text: string): readonly string[] =>
  [...text.matchAll(STATEMENT)].flatMap(([, , names = '', plain = '', loaded]) => {
    const target = loaded ?? plain
    if (!target.startsWith('.')) return []
    const path = posix.join(posix.dirname(file), target)
    const braces = /\{([^}]*)\}/.exec(names)?.[1]
    if (braces === undefined) return [`${path} *`]
    return braces
      .split(',')
      .map(
        name =>
          name
            .trim()
            .replace(/^type\s+/, '')
            .split(/\s+as\s+/)[0] ?? '',
      )
      .filter(name => name !== '')
      .map(name => `${path} ${name}`)
  })

export function importsOfHouse(): readonly Import[] {
  return readdirSync('src', { recursive: true })
    .map(String)
    .filter(file => file.endsWith('.ts'))
    .flatMap(file => importsOf(file, readFileSync(`src/${file}`, 'utf8')))
}

/** The folder of src that a file stands in; nothing for the ground floor. */
export const roomOf = (path: string): string | undefined => (path.includes('/') ? path.split('/')[0] : undefined)
