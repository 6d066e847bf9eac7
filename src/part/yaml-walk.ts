import { type Alias, type Document, isAlias, isMap, isScalar, isSeq, type LineCounter, type Node } from 'yaml'
import type { Finding, Place } from '../finding.ts'
import type { FindingCode } from '../finding-code.ts'

/** Levels of nesting; a part file has five. */
export const DEEPEST = 30
/** Aliases in a file, and values that they may stand for together: a few lines can otherwise stand for billions. */
const MOST_ALIASES = 100
const MOST_ALIASED = 10_000
/** Characters of one value or key: a title has room for 200. */
export const LONGEST = 500
/** After so many the file is another kind of file. */
const MOST_FINDINGS = 50

export type Walked = {
  readonly data: unknown
  readonly places: ReadonlyMap<string, Place>
  readonly keys: ReadonlyMap<string, Place>
  readonly written: ReadonlyMap<string, string>
  readonly findings: readonly Finding[]
}

/** A step of a JSON pointer. */
export const step = (key: string | number): string => `/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`

/**
 * The values of a parsed document as plain data, with their places. Reports keys given twice, numbers that are not finite,
 * aliases that lead nowhere, round in a circle or too far, and nesting that no part needs.
 */
export function walk(document: Document.Parsed, lines: LineCounter, file: string): Walked {
  const places = new Map<string, Place>()
  const keys = new Map<string, Place>()
  const written = new Map<string, string>()
  const findings: Finding[] = []
  const aliases = new Map<Alias, Node | undefined>()
  let aliased = 0
  let stopped = false

  const placeOf = (node: Node | null | undefined): Place => {
    const { line, col } = lines.linePos(node?.range?.[0] ?? 0)
    return { file, line: Math.max(line, 1), column: Math.max(col, 1) }
  }
  const report = (code: FindingCode, message: string, at: Place, hint?: string) => {
    findings.push({ code, severity: 'error', message, at, ...(hint !== undefined && { hint }) })
    stopped ||= code === 'input/alias' || code === 'input/too-deep' || findings.length >= MOST_FINDINGS
  }

  const tooLong = (text: string, at: Place, what: string): boolean => {
    if (text.length <= LONGEST) return false
    report('input/too-large', `${what} has ${text.length} characters; at most ${LONGEST} are read`, at)
    return true
  }

  const aliasFault = (alias: Alias, above: readonly Node[]): string | undefined => {
    if (!aliases.has(alias)) aliases.set(alias, aliases.size < MOST_ALIASES ? alias.resolve(document) : undefined)
    const target = aliases.get(alias)
    if (aliases.size > MOST_ALIASES) return `there are more than ${MOST_ALIASES} aliases`
    if (!target) return `*${alias.source} has no anchor &${alias.source} before it`
    if (above.includes(target)) return `*${alias.source} stands inside its own anchor`
    if (aliased > MOST_ALIASED) return `the aliases stand for more than ${MOST_ALIASED} values`
    return undefined
  }

  const value = (node: Node | null | undefined, pointer: string, above: readonly Node[], inAlias: boolean): unknown => {
    if (stopped) return undefined
    if (inAlias) aliased += 1
    const at = placeOf(node)
    places.set(pointer, at)
    if (above.length > DEEPEST) {
      report('input/too-deep', `values are nested more than ${DEEPEST} levels deep`, at)
      return undefined
    }
    if (isAlias(node)) {
      const fault = aliasFault(node, above)
      if (fault === undefined) return value(aliases.get(node), pointer, above, true)
      report('input/alias', fault, at, 'write the values out')
      return undefined
    }
    if (isSeq<Node>(node)) {
      return node.items.map((item, index) => value(item, pointer + step(index), [...above, node], inAlias))
    }
    if (isMap<Node, Node>(node)) {
      // No prototype: a key such as __proto__ is then a key like any other.
      const result: Record<string, unknown> = Object.create(null)
      for (const { key, value: inner } of node.items) {
        if (stopped) break
        const name = isScalar(key) ? String(key.value ?? '') : String(key)
        if (tooLong(name, placeOf(key), 'a key')) continue
        const here = pointer + step(name)
        const first = keys.get(here)
        if (Object.hasOwn(result, name)) {
          report(
            'input/duplicate-key',
            `"${name}" is here twice, first in line ${first?.line}`,
            placeOf(key),
            'delete one',
          )
          continue
        }
        keys.set(here, placeOf(key))
        result[name] = value(inner, here, [...above, node], inAlias)
      }
      return result
    }
    if (!isScalar(node)) return null
    if (tooLong(node.source ?? '', at, 'a value')) return undefined
    if (typeof node.value === 'number') {
      if (!Number.isFinite(node.value)) report('input/not-finite', `${node.source} is not a number to work with`, at)
      written.set(pointer, node.source ?? String(node.value))
    }
    return node.value
  }

  const data = value(document.contents, '', [], false)
  return { data, places, keys, written, findings }
}
