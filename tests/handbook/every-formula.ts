/// <reference types="vite/types/importMeta.d.ts" />
import type { Formula } from '../../src/formula.ts'

/** Every formula that a module of the handbook, or a second model kept beside the tests, exports, alone or inside a list or record, with where it was found. */
export function everyFormula(): readonly { readonly where: string; readonly formula: Formula }[] {
  const modules = import.meta.glob<Record<string, unknown>>(['../../src/handbook/*.ts', './second-models/*.ts'], {
    eager: true,
  })
  const found = Object.entries(modules).flatMap(([path, module]) => formulasIn(module, path.replace(/^.*\//, '')))
  // A formula used by two modules is listed where it was found first.
  return found.filter(({ formula }, index) => found.findIndex(other => other.formula === formula) === index)
}

function formulasIn(value: unknown, where: string): { where: string; formula: Formula }[] {
  if (isFormula(value)) return [{ where, formula: value }]
  if (value === null || typeof value !== 'object' || value instanceof Map || value instanceof Set) return []
  return Object.entries(value).flatMap(([key, inner]) => formulasIn(inner, `${where} ${key}`))
}

const isFormula = (value: unknown): value is Formula =>
  value !== null &&
  typeof value === 'object' &&
  ['symbol', 'expression', 'inputs', 'source', 'example', 'value'].every(key => key in value)
