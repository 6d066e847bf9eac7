import type { Finding, Severity } from '../finding.ts'
import { lackingIn, letterName, SUBSTITUTE } from '../letters.ts'
import type { DrawnSize } from '../limits.ts'
import { readSize, type SizeContext } from './drawn-size.ts'
import { type Fault, type QuantityKind, type Range, type Read, rangeFault, readQuantity } from './quantity.ts'
import type { YamlSource } from './yaml-source.ts'
import { step } from './yaml-walk.ts'

/**
 * One mapping of a file, read key by key. The schema has been held against the file before, so a value of the wrong shape
 * has its finding already: it reads as absent here. What is absent reads as `undefined`.
 */
export type View = {
  /** JSON pointer of the mapping. */
  readonly path: string
  readonly keys: readonly string[]
  /** The schema found a key here that it does not know: something that seems absent may be misspelt. */
  readonly misspelt: boolean
  readonly has: (key: string) => boolean
  readonly pathOf: (key: string) => string
  /** A name or remark, as it was written. */
  readonly text: (key: string) => string | undefined
  /** A number or mark by which a thing is called, part of file names and scan codes: a text of no more than sixty letters. */
  readonly label: (key: string) => string | undefined
  readonly flag: (key: string) => boolean
  readonly count: (key: string) => number | undefined
  readonly quantity: (key: string, kind: QuantityKind, range?: Range) => number | undefined
  /** The quantities of a list; nothing of one that cannot be read. */
  readonly quantities: (key: string, kind: QuantityKind, range?: Range) => readonly number[]
  readonly size: (key: string, context: Omit<SizeContext, 'written'>) => DrawnSize | undefined
  /** A mapping inside this one. */
  readonly into: (key: string) => View | undefined
  /** The mappings of a list. */
  readonly each: (key: string) => readonly View[]
  /** A list as a mapping of its places: `0`, `1`. */
  readonly list: (key: string) => View | undefined
  /** The texts of a list. */
  readonly texts: (key: string) => readonly string[]
  readonly raw: (key: string) => unknown
  /** Reports a fault at a key, or at the mapping itself. */
  readonly report: (fault: Fault, key?: string, severity?: Severity) => void
}

/** Longest name or remark that paper has room for. */
const LONGEST_TEXT = 200
const LONGEST_LABEL = 60

/** `misspelt` are the pointers of mappings that have a key unknown to the schema. */
export function viewOf({
  source,
  findings,
  misspelt,
  value = source.data,
  path = '',
  reported = new Set(findings.map(signOf)),
}: {
  readonly source: YamlSource
  readonly findings: Finding[]
  readonly misspelt: ReadonlySet<string>
  readonly value?: unknown | undefined
  readonly path?: string | undefined
  readonly reported?: Set<string> | undefined
}): View {
  const inner = (value: unknown, path: string) => viewOf({ source, findings, misspelt, value, path, reported })
  const data = isMapping(value) ? value : {}
  const pathOf = (key: string) => path + step(key)
  const raw = (key: string) => (Object.hasOwn(data, key) ? data[key] : undefined)
  const report: View['report'] = (fault, key, severity = 'error') => {
    const at = (key === undefined ? undefined : source.places.get(pathOf(key))) ?? source.places.get(path)
    const finding = { ...fault, severity, at: at ?? { file: source.file, line: 1, column: 1 } }
    // A key that is read twice has its fault once.
    if (reported.has(signOf(finding))) return
    reported.add(signOf(finding))
    findings.push(finding)
  }
  const read = <T>(key: string, how: (value: number | string) => Read<T>): T | undefined => {
    const value = raw(key)
    if (typeof value !== 'number' && typeof value !== 'string') return undefined
    const result = how(value)
    if ('value' in result) return result.value
    report(result.fault, key)
    return undefined
  }
  const textAt = (key: string, longest: number): string | undefined =>
    read(key, value => {
      const text = typeof value === 'number' ? (source.written.get(pathOf(key)) ?? String(value)) : value.trim()
      const fault = textFault(text, key, longest)
      if (fault) return { fault }
      const lacking = lackingIn(text)
      if (lacking.length > 0) report(lettersLacking(key, lacking), key, 'warning')
      return { value: text }
    })
  return {
    path,
    keys: Object.keys(data),
    misspelt: misspelt.has(path),
    has: key => Object.hasOwn(data, key),
    pathOf,
    raw,
    report,
    text: key => textAt(key, LONGEST_TEXT),
    label: key => textAt(key, LONGEST_LABEL),
    flag: key => raw(key) === true,
    count: key => {
      const value = raw(key)
      return typeof value === 'number' && Number.isInteger(value) ? value : undefined
    },
    quantity: (key, kind, range = {}) =>
      read(key, value => {
        const result = readQuantity(value, kind, key)
        const fault = 'value' in result ? rangeFault(result.value, range, kind, key) : undefined
        return fault ? { fault } : result
      }),
    size: (key, context) =>
      read(key, value => {
        const written = source.written.get(pathOf(key))
        return readSize(value, { ...context, ...(written !== undefined && { written }) })
      }),
    into: key => (isMapping(raw(key)) ? inner(raw(key), pathOf(key)) : undefined),
    each: key => {
      const list = raw(key)
      return Array.isArray(list) ? list.map((entry, index) => inner(entry, pathOf(key) + step(index))) : []
    },
    quantities: (key, kind, range) => {
      const list = raw(key)
      if (!Array.isArray(list)) return []
      const here = inner({ ...list }, pathOf(key))
      return list.flatMap((_, index) => here.quantity(String(index), kind, range) ?? [])
    },
    list: key => {
      const list = raw(key)
      return Array.isArray(list) ? inner({ ...list }, pathOf(key)) : undefined
    },
    texts: key => {
      const list = raw(key)
      if (!Array.isArray(list)) return []
      const here = inner({ ...list }, pathOf(key))
      return list.map((_, index) => here.text(String(index))).filter(text => text !== undefined)
    },
  }
}

/** What makes two findings of one file the same. */
const signOf = ({ at, message }: Finding): string => `${at.line}:${at.column} ${message}`

function textFault(text: string, key: string, longest: number): Fault | undefined {
  if (text === '') return { code: 'input/unreadable', message: `${key} is an empty text` }
  // Line ends of other alphabets and marks that turn the direction of writing too: both make a line read as another.
  if (/[\p{Cc}\p{Zl}\p{Zp}\u202a-\u202e\u2066-\u2069]/u.test(text)) {
    return {
      code: 'input/unreadable',
      message: `${key} has a line end or a control character in it`,
      hint: 'write it in one line',
    }
  }
  if (text.length <= longest) return undefined
  return {
    code: 'input/out-of-range',
    message: `${key} has ${text.length} characters; paper has room for ${longest}`,
  }
}

const lettersLacking = (key: string, lacking: readonly string[]): Fault => ({
  code: 'input/letters',
  message: `${key} has ${lacking.slice(0, 5).map(letterName).join(', ')}${lacking.length > 5 ? ` and ${lacking.length - 5} more` : ''}, which the typeface of the paper lacks: ${SUBSTITUTE} stands in its place`,
  hint: 'write it in Latin, Greek or Cyrillic letters and common signs',
})

const isMapping = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
