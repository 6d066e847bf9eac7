import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { importedNames } from './imports.ts'

/** What the world outside comes in by: the command, and the library's two faces. Their own exports are for others. */
const DOORS = new Set(['main.ts', 'index.ts', 'browser.ts', 'node.ts', 'page/screen/main.ts'])
const EXPORT = /^export\s+(?:async\s+)?(?:const|function|type|class)\s+([\p{L}\w$]+)/gmu

type Files = ReadonlyMap<string, string>

/** Code without comments and without the text of plain strings, where a name is only spoken of. */
const spoken = (text: string): string => text.replace(/\/\*[\s\S]*?\*\/|(?<!:)\/\/.*|'(?:[^'\\\n]|\\.)*'/g, ' ')

/** Exports that neither another file uses nor the rest of their own. */
function onTheShelf(files: Files): readonly string[] {
  const used = new Set([...files].flatMap(([file, text]) => importedNames(file, text)))
  return [...files]
    .filter(([file]) => !DOORS.has(file))
    .flatMap(([file, text]) =>
      [...text.matchAll(EXPORT)].flatMap(([, name = '']) => {
        const own =
          spoken(text).match(new RegExp(`(?<![\\p{L}\\w$]|(?<!\\.\\.)\\.)${name}(?![\\p{L}\\w$])`, 'gu'))?.length ?? 0
        return used.has(`${file} ${name}`) || used.has(`${file} *`) || own > 1 ? [] : [`${file}: ${name}`]
      }),
    )
}

const filesOf = (folder: string): Files =>
  new Map(
    readdirSync(folder, { recursive: true })
      .map(String)
      .filter(file => file.endsWith('.ts'))
      .map(file => [file, readFileSync(`${folder}/${file}`, 'utf8')]),
  )
const house = (): Files => filesOf('src')

/** Values that only their own file and no test uses: they need no export. */
function exportedForNobody(): readonly string[] {
  const files = house()
  const names = [...files].flatMap(([file, text]) => importedNames(file, text))
  const tested = [...filesOf('tests')].flatMap(([file, text]) =>
    importedNames(`../tests/${file}`, text).map(name => name.replace('../src/', '')),
  )
  const used = new Set([...names, ...tested])
  return [...files]
    .filter(([file]) => !DOORS.has(file))
    .flatMap(([file, text]) =>
      [...text.matchAll(/^export\s+(?:async\s+)?(?:const|function|class)\s+([\p{L}\w$]+)/gmu)]
        .map(([, name]) => `${file} ${name}`)
        .filter(name => !used.has(name) && !used.has(`${file} *`)),
    )
}

describe('nothing stands on a shelf', () => {
  it('every export of src is used in src, tests apart', () => {
    expect(onTheShelf(house())).toEqual([])
  })

  it('what only its own file uses is exported for a test or not at all', () => {
    expect(exportedForNobody()).toEqual([])
  })

  it('every file of src is reached from a door', () => {
    const files = house()
    const reached = new Set<string>(DOORS)
    for (const file of reached)
      for (const used of importedNames(file, files.get(file) ?? '')) reached.add(used.split(' ')[0] ?? '')
    expect([...files.keys()].filter(file => !reached.has(file))).toEqual([])
  })

  it.each([
    ['a formula that nobody calls', { 'handbook/a.ts': 'export const law: Formula = formula({})\n' }],
    ['a name that only a comment and a text know', { 'a.ts': "/** law */\nexport const law = 1\nconst say = 'law'\n" }],
    ['a namesake of another file', { 'a.ts': 'export const law = 1\n', 'main.ts': "import { law } from './b.ts'\n" }],
    ['a type without a user', { 'a.ts': 'export type Law = number\n' }],
  ])('finds %s', (_, files) => {
    expect(onTheShelf(new Map(Object.entries(files)))).toHaveLength(1)
  })

  it.each([
    [
      'imported under another name',
      { 'a.ts': 'export const law = 1\n', 'b.ts': "import { law as rule } from './a.ts'\n" },
    ],
    ['handed on by a door', { 'a.ts': 'export const law = 1\n', 'index.ts': "export { law } from './a.ts'\n" }],
    ['loaded late', { 'a.ts': 'export const law = 1\n', 'main.ts': "const { law } = await import('./a.ts')\n" }],
    ['used by its own file', { 'a.ts': 'export const law = 1\nconst twice = 2 * law\n' }],
  ])('lets be what is %s', (_, files) => {
    expect(onTheShelf(new Map(Object.entries(files)))).toEqual([])
  })
})
