import type { ValidateFunction } from 'ajv/dist/2020.js'
import type { Finding } from '../finding.ts'
import { schemaFindings } from './schema-finding.ts'
import { type View, viewOf } from './view.ts'
import type { YamlSource } from './yaml-source.ts'

/** A file held against its schema, ready to be read key by key. What the reader finds is added to `findings`. */
export type OpenDocument = { readonly root: View; readonly source: YamlSource; readonly findings: Finding[] }

/** Faults of the schema do not stop the reading of the rest. */
export function openDocument(source: YamlSource, validate: ValidateFunction): OpenDocument {
  const errors = validate(source.data) ? [] : (validate.errors ?? [])
  const findings = [...schemaFindings(errors, source)]
  const misspelt = new Set(
    errors.filter(({ keyword }) => keyword === 'additionalProperties').map(({ instancePath }) => instancePath),
  )
  return { root: viewOf({ source, findings, misspelt }), source, findings }
}

/** The record without the keys that have no value: an absent option is left out, not set to nothing. */
export function present<T extends object>(record: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>
  }
}
