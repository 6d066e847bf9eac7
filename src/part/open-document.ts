import type { ValidateFunction } from 'ajv/dist/2020.js'
import type { Finding } from '../finding.ts'
import { schemaFindings } from './schema-finding.ts'
import { type View, viewOf } from './view.ts'
import { openYaml, type YamlSource } from './yaml-source.ts'

/** A file held against its schema, ready to be read key by key. What the reader finds is added to `findings`. */
export type OpenDocument = { readonly root: View; readonly source: YamlSource; readonly findings: Finding[] }

/** Nothing to read when the text is no YAML mapping; faults of the schema do not stop the reading of the rest. */
export function openDocument(
  text: string,
  file: string,
  validate: ValidateFunction,
): { readonly document?: OpenDocument; readonly findings: readonly Finding[] } {
  const { source, findings: faults } = openYaml(text, file)
  if (!source) return { findings: faults }
  const errors = validate(source.data) ? [] : (validate.errors ?? [])
  const findings = [...schemaFindings(errors, source)]
  const misspelt = new Set(
    errors.filter(({ keyword }) => keyword === 'additionalProperties').map(({ instancePath }) => instancePath),
  )
  return { document: { root: viewOf(source, findings, misspelt), source, findings }, findings }
}

/** The record without the keys that have no value: an absent option is left out, not set to nothing. */
export function present<T extends object>(record: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>
  }
}
