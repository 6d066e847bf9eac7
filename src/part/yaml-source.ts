import { type Document, LineCounter, parseDocument, type YAMLError } from 'yaml'
import { errorAt, type Finding, type Place } from '../finding.ts'
import type { FindingCode } from '../finding-code.ts'
import { readPlainYaml } from './plain-yaml.ts'
import { walk } from './yaml-walk.ts'

/** A file read as YAML: its values as plain data, and where each of them stands. Pointers are JSON pointers, RFC 6901. */
export type YamlSource = {
  readonly data: Readonly<Record<string, unknown>>
  /** Where every value stands. */
  readonly places: ReadonlyMap<string, Place>
  /** Where every key stands. */
  readonly keys: ReadonlyMap<string, Place>
  /** Numbers as they were written: `92.0`. */
  readonly written: ReadonlyMap<string, string>
  readonly file: string
}

/** Characters; a part file has a few thousand. */
const LARGEST = 1_000_000
/** One slip often makes the rest of a file unreadable, so only the first faults say something. */
const FAULTS_SHOWN = 5

/** Reads YAML 1.2, core schema. The values are not looked at beyond being finite, once each and in a mapping. */
export function openYaml(
  text: string,
  file: string,
): { readonly source?: YamlSource; readonly findings: readonly Finding[] } {
  const start = { file, line: 1, column: 1 }
  if (text.length > LARGEST) {
    const size = `${(text.length / 1e6).toFixed(1)} million characters`
    return only('input/too-large', `the file has ${size}; at most 1 million are read`, start, 'is it the right file?')
  }
  const plain = readPlainYaml(text, file)
  return plain ? { source: plain, findings: [] } : openWhole(text, file)
}

/** Reads any file. */
export function openWhole(
  text: string,
  file: string,
): { readonly source?: YamlSource; readonly findings: readonly Finding[] } {
  const start = { file, line: 1, column: 1 }
  const { document, lines } = parseYaml(text)
  const faults = [...document.errors, ...document.warnings]
  if (faults.length > 0) return { findings: faultsOf(faults, text, lines, file) }
  if (document.directives?.yaml.explicit && document.directives.yaml.version !== '1.2') {
    const version = document.directives.yaml.version
    const hint = 'delete the %YAML line: in YAML 1.1 words such as yes and times such as 12:30 mean something else'
    return only('input/yaml-version', `the file says YAML ${version}; YAML 1.2 is read`, start, hint)
  }
  const { data, findings, ...found } = walk(document, lines, file)
  if (findings.length > 0) return { findings }
  if (data === null || data === undefined) {
    return only(
      'input/empty',
      'the file has nothing in it but comments',
      start,
      'it needs at least one key with a value',
    )
  }
  if (typeof data !== 'object' || Array.isArray(data)) {
    const got = Array.isArray(data) ? 'a list' : `"${String(data).slice(0, 40)}"`
    return only(
      'input/not-a-mapping',
      `the file must be keys with values, got ${got}`,
      start,
      'begin with a line like part: {…}',
    )
  }
  return { source: { data: data as Record<string, unknown>, ...found, file }, findings: [] }
}

/** The one place that says how YAML is parsed. */
export function parseYaml(text: string): { readonly document: Document.Parsed; readonly lines: LineCounter } {
  const lines = new LineCounter()
  const document = parseDocument(text, {
    lineCounter: lines,
    version: '1.2',
    schema: 'core',
    merge: false,
    strict: true,
    stringKeys: true,
    prettyErrors: false,
    // The library compares every key with every other; the walk looks them up.
    uniqueKeys: false,
  })
  return { document, lines }
}

function faultsOf(faults: readonly YAMLError[], text: string, lines: LineCounter, file: string): readonly Finding[] {
  const deep = faults.filter(({ code }) => code === 'RESOURCE_EXHAUSTION').slice(0, 1)
  const shown = (deep.length > 0 ? deep : faults.slice(0, FAULTS_SHOWN)).map((fault): Finding => {
    const { line, col } = lines.linePos(fault.pos[0])
    const at = { file, line, column: col }
    const before = text.slice(lines.lineStarts[line - 1], fault.pos[0] + 1)
    if (fault.code === 'TAB_AS_INDENT' || /^\s*\t/.test(before)) {
      return errorAt('input/tab', 'a tab stands where the line is indented', at, 'indent with spaces')
    }
    if (fault.code === 'RESOURCE_EXHAUSTION') return errorAt('input/too-deep', 'values are nested too deeply', at)
    const hint = HINTS[fault.code]
    return errorAt('input/yaml', `the YAML cannot be read: ${fault.message.replace(/;.*/s, '')}`, at, hint)
  })
  return shown.filter(
    ({ code, at }, index) => !shown.slice(0, index).some(other => other.code === code && other.at.line === at.line),
  )
}

const HINTS: Readonly<Partial<Record<YAMLError['code'], string>>> = {
  BLOCK_AS_IMPLICIT_KEY: 'put quotes round a text that has a colon in it',
  BAD_INDENT: 'close every { and [, and start the lines of one mapping in the same column',
  MISSING_CHAR: 'close the quotes, or the bracket',
  MULTIPLE_DOCS: 'one file is one part: delete the line ---',
  BAD_SCALAR_START: 'put quotes round a text that begins with a sign',
  TAG_RESOLVE_FAILED: 'put quotes round a text that begins with !',
}

const only = (code: FindingCode, message: string, at: Place, hint: string): { findings: readonly Finding[] } => ({
  findings: [errorAt(code, message, at, hint)],
})
