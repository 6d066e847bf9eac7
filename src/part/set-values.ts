import { isScalar, type Node } from 'yaml'
import type { Finding } from '../finding.ts'
import { withValue } from './edit-yaml.ts'
import part from './part.schema.json' with { type: 'json' }
import { changedBy, type Setting } from './setting.ts'
import { namesPort, type PathSchema, type ResolvedPath, resolvePath } from './setting-path.ts'
import shop from './shop.schema.json' with { type: 'json' }
import { openYaml, parseYaml, type YamlSource } from './yaml-source.ts'
import { step, walk } from './yaml-walk.ts'

export type SetValues = { readonly text?: string; readonly findings: readonly Finding[] }

const SCHEMAS: Readonly<Record<'part' | 'shop', PathSchema>> = { part, shop }

/** Which file a path is of, by its first word; nothing when neither has it. */
export function fileOfSetting(path: string): 'part' | 'shop' | undefined {
  const [first = ''] = path.split('.')
  return (['part', 'shop'] as const).find(
    kind => Object.hasOwn(SCHEMAS[kind].properties ?? {}, first) && !(kind === 'part' && first === 'shop'),
  )
}

/**
 * The text of a part or shop file with values set by dotted path, entries of a list by name or by index from 0. What the
 * file leaves out may be set where the schema allows it. The new text still has to be read: a value is not judged here.
 */
export function setValues(
  text: string,
  file: string,
  settings: readonly Setting[],
  kind: 'part' | 'shop' = 'part',
): SetValues {
  const at = { file, line: 1, column: 1 }
  const findings: Finding[] = []
  let edited = text
  for (const { path, value: written, by } of settings) {
    const { findings: faults } = openYaml(edited, file)
    const unreadable = faults.filter(({ code }) => code !== 'input/empty')
    if (unreadable.length > 0) return { findings: unreadable }
    const { document } = parseYaml(edited)
    const resolved = resolveSetting(path, document.contents, kind)
    const present = by && 'steps' in resolved ? document.getIn([...resolved.steps], true) : undefined
    const value = by ? changedBy(presentText(present), by, written) : written
    const flow = value === undefined ? undefined : flowValue(value)
    if ('fault' in resolved) findings.push({ ...resolved.fault, severity: 'error', at })
    else if (by && value === undefined) {
      const there = presentText(present) === '' ? 'the file gives it no value' : `it is "${presentText(present)}"`
      const message = `${path} cannot be changed by "${by}${written.trim()}": ${there}`
      findings.push({
        code: 'input/unreadable',
        severity: 'error',
        message,
        at,
        hint: `a number is wanted on both sides; ${path}=… sets it`,
      })
    } else if (flow === undefined) {
      const message = `${path} cannot be set to "${written}"`
      findings.push({
        code: 'input/unreadable',
        severity: 'error',
        message,
        at,
        hint: 'a number, or text such as 48 H6',
      })
    } else edited = withValue(edited, resolved.steps, flow)
  }
  return findings.length > 0 ? { findings } : { text: edited, findings }
}

const presentText = (node: unknown): string =>
  isScalar(node) && (typeof node.value === 'number' || typeof node.value === 'string')
    ? (node.source ?? String(node.value))
    : ''

/** A port may go by its name alone: `exhaust.opens` is `ports.exhaust.opens`. */
function resolveSetting(path: string, contents: Node | null, kind: 'part' | 'shop'): ResolvedPath {
  const schema = SCHEMAS[kind]
  const [first = ''] = path.split('.')
  const byName = kind === 'part' && !Object.hasOwn(schema.properties ?? {}, first) && namesPort(path, contents)
  return resolvePath(byName ? `ports.${path}` : path, contents, schema)
}

/** Which port of the file a path is in, counted from 0, and which of its keys; nothing for a path that is in none. */
export function portKeyOf(path: string, text: string): { readonly index: number; readonly key: string } | undefined {
  const resolved = resolveSetting(path, parseYaml(text).document.contents, 'part')
  if (!('steps' in resolved)) return undefined
  const [list, index, key, ...deeper] = resolved.steps
  const inPort = list === 'ports' && typeof index === 'number' && typeof key === 'string' && deeper.length === 0
  return inPort ? { index, key } : undefined
}

/** Stands where each value of a sweep goes: a character for private use, which no file has. */
const HERE = '\uE000'

/** The file with one number after another in the place of `path`, read as YAML only once. */
export function openForNumbers(
  text: string,
  file: string,
  path: string,
  kind: 'part' | 'shop',
): { readonly withNumber?: (value: number) => YamlSource; readonly findings: readonly Finding[] } {
  const set = setValues(text, file, [{ path, value: HERE }], kind)
  if (set.text === undefined) return { findings: set.findings }
  const { source, findings } = openYaml(set.text, file)
  if (!source) return { findings }
  const withNumber = (value: number): YamlSource => {
    const written = new Map(source.written)
    const put = (data: unknown, pointer: string): unknown => {
      if (data === HERE) {
        written.set(pointer, String(value))
        return value
      }
      if (Array.isArray(data)) return data.map((item, index) => put(item, pointer + step(index)))
      if (data === null || typeof data !== 'object') return data
      return Object.fromEntries(Object.entries(data).map(([key, inner]) => [key, put(inner, pointer + step(key))]))
    }
    return { ...source, data: put(source.data, '') as YamlSource['data'], written }
  }
  return { withNumber, findings }
}

/** The value as it may stand anywhere in a file: quoted when it would otherwise be read as something else. */
function flowValue(value: string): string | undefined {
  const text = value.trim()
  if (text === '' || /\p{Cc}/u.test(text)) return undefined
  // Signs that YAML keeps to itself are text here.
  if (/^[!&*|>%@`#]/.test(text)) return JSON.stringify(text)
  const alone = read(text)
  const whole = alone !== undefined && read(`[${text}]`) === `[${alone}]`
  // `Liner: new` is a name with a colon in it; keys with values come in brackets.
  const keys = alone?.startsWith('{') && !text.startsWith('{')
  return whole && !keys && alone !== 'null' ? text : JSON.stringify(text)
}

/** What the YAML says, as JSON; nothing when it has faults. */
function read(yaml: string): string | undefined {
  const { document, lines } = parseYaml(yaml)
  if (document.errors.length + document.warnings.length > 0) return undefined
  const { data, findings } = walk(document, lines, '')
  return findings.length > 0 ? undefined : JSON.stringify(data)
}
