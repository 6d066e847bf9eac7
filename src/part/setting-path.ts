import { isAlias, isMap, isScalar, isSeq, type Node, type YAMLMap } from 'yaml'
import type { Fault } from './quantity.ts'
import { suggestion, suggestionOrList } from './suggestion.ts'

/** As much of JSON Schema as says which paths a file may have. */
export type PathSchema = {
  readonly type?: unknown
  readonly enum?: unknown
  readonly $ref?: string | undefined
  readonly properties?: { readonly [key: string]: PathSchema | undefined } | undefined
  readonly items?: PathSchema | undefined
  readonly $defs?: { readonly [name: string]: PathSchema | undefined } | undefined
}

/** Keys that an entry of a list goes by. */
const NAMES = ['name', 'work-centre', 'grade', 'rule', 'process']

export type ResolvedPath = { readonly steps: readonly (string | number)[] } | { readonly fault: Fault }

/**
 * The keys and indices that a dotted path means in a document: `ports.exhaust.opens` has the entry of that name, `ports.0`
 * the first one. A name may have points in it. Keys that the file leaves out are there when the schema allows them.
 */
export function resolvePath(path: string, contents: Node | null, schema: PathSchema): ResolvedPath {
  const steps: (string | number)[] = []
  let words = path.split('.')
  let node: unknown = contents
  let allowed: PathSchema | undefined = schema
  while (words.length > 0) {
    if (isAlias(node)) return unknown(path, `${done(steps)} is written as an alias`, 'write it out in the file first')
    allowed = dereferenced(allowed, schema)
    if (isSeq<Node>(node)) {
      const entry = entryOf(node.items, words)
      if (!entry)
        return unknown(path, `${done(steps)} has no entry "${words[0]}"`, entriesHint(node.items, words[0] ?? ''))
      steps.push(entry.index)
      node = node.items[entry.index]
      words = words.slice(entry.words)
      allowed = allowed?.items
      continue
    }
    const [word = ''] = words
    const properties = allowed?.properties ?? {}
    if (!Object.hasOwn(properties, word)) {
      if (allowed?.items && !allowed.properties)
        return unknown(path, `the file lists no ${done(steps)}`, 'list them in the file first')
      const names = Object.keys(properties)
      const hint = names.length > 0 ? suggestionOrList(word, names, 'allowed here') : `${done(steps)} is one value`
      return unknown(path, `${steps.length > 0 ? done(steps) : 'the file'} has no "${word}"`, hint)
    }
    steps.push(word)
    node = isMap(node) ? (node as YAMLMap<Node, Node>).get(word, true) : undefined
    words = words.slice(1)
    allowed = properties[word]
  }
  return { steps }
}

/** Whether a path begins with the name of a port of the file. */
export function namesPort(path: string, contents: Node | null): boolean {
  const ports: unknown = isMap(contents) ? contents.get('ports', true) : undefined
  const words = path.split('.')
  return isSeq<Node>(ports) && !/^\d+$/.test(words[0] ?? '') && entryOf(ports.items, words) !== undefined
}

const done = (steps: readonly (string | number)[]): string => steps.join('.')

const unknown = (path: string, why: string, hint: string): ResolvedPath => ({
  fault: { code: 'input/unknown-setting', message: `${path} cannot be set: ${why}`, hint },
})

function dereferenced(schema: PathSchema | undefined, root: PathSchema): PathSchema | undefined {
  const name = schema?.$ref?.replace('#/$defs/', '')
  return name === undefined ? schema : root.$defs?.[name]
}

/** The entry that the first words name, the longest name first; or that the first word counts, from 0. */
function entryOf(items: readonly Node[], words: readonly string[]) {
  for (let count = words.length; count > 0; count -= 1) {
    const index = items.findIndex(item => namesOf(item).includes(words.slice(0, count).join('.')))
    if (index >= 0) return { index, words: count }
  }
  const index = /^\d+$/.test(words[0] ?? '') ? Number(words[0]) : -1
  return index >= 0 && index < items.length ? { index, words: 1 } : undefined
}

function namesOf(item: unknown): readonly string[] {
  if (!isMap(item)) return []
  return NAMES.flatMap(key => {
    const value = item.get(key, true)
    return isScalar(value) ? [value.source ?? String(value.value)] : []
  })
}

function entriesHint(items: readonly Node[], word: string): string {
  const names = items.flatMap(item => namesOf(item).slice(0, 1))
  if (names.length === 0) return `entries count from 0 to ${items.length - 1}`
  const near = suggestion(word, names)
  return near === undefined ? `entries: ${names.slice(0, 12).join(', ')}` : `did you mean ${near}?`
}
