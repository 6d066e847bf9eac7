import type { ErrorObject } from 'ajv/dist/2020.js'
import { errorAt, type Finding } from '../finding.ts'
import { suggestion, suggestionOrList } from './suggestion.ts'
import type { YamlSource } from './yaml-source.ts'
import { step } from './yaml-walk.ts'

/** A file with more faults than this is another kind of file; each is compared with the others. */
const MOST = 200
const WRONG_FILE = 'mend the first ones and look again; is it the right file?'

/** What the schema found, in the practitioner's words, at the value or the key that it is about. */
export function schemaFindings(all: readonly ErrorObject[], source: YamlSource): readonly Finding[] {
  // What fails under a condition is said by itself; that the condition was met says nothing.
  const plain = all.filter(({ keyword }) => keyword !== 'if')
  const errors = plain.slice(0, MOST)
  const misspelt = errors.filter(({ keyword }) => keyword === 'additionalProperties').map(fault => meant(fault, errors))
  const findings = errors.flatMap(fault =>
    // A key that is there under a slip of the pen is not missing besides.
    fault.keyword === 'required' && misspelt.includes(fault.instancePath + step(fault.params['missingProperty']))
      ? []
      : [schemaFinding(fault, errors, source)],
  )
  const rest = plain.length - errors.length
  if (rest === 0) return findings
  const at = { file: source.file, line: 1, column: 1 }
  return [...findings, errorAt('input/too-large', `${rest} more things are not as the file should be`, at, WRONG_FILE)]
}

/** Pointer of the key that an unknown one was meant for: rather a missing key than one that may be left out. */
function meant(
  { instancePath, params, parentSchema, data }: ErrorObject,
  errors: readonly ErrorObject[],
): string | undefined {
  const key = String(params['additionalProperty'])
  const missing = errors.filter(other => other.instancePath === instancePath && other.keyword === 'required')
  const free = Object.keys(parentSchema?.['properties'] ?? {}).filter(name => !Object.hasOwn(Object(data), name))
  const near =
    suggestion(
      key,
      missing.map(other => String(other.params['missingProperty'])),
    ) ?? suggestion(key, free)
  return near === undefined ? undefined : instancePath + step(near)
}

function schemaFinding(fault: ErrorObject, errors: readonly ErrorObject[], source: YamlSource): Finding {
  const { keyword, instancePath, params, data } = fault
  const at = source.places.get(instancePath) ?? { file: source.file, line: 1, column: 1 }
  const name = nameOf(instancePath)
  const allowed = Object.keys(fault.parentSchema?.['properties'] ?? {})
  switch (keyword) {
    case 'additionalProperties': {
      const key = String(params['additionalProperty'])
      const place = source.keys.get(instancePath + step(key)) ?? at
      const near = meant(fault, errors)?.slice(instancePath.length + 1)
      const hint = near === undefined ? `allowed here: ${allowed.join(', ')}` : `did you mean ${near}?`
      return errorAt('input/unknown-key', `unknown key "${key}"`, place, hint)
    }
    case 'required':
    case 'dependentRequired': {
      // A machine, a gauge or a tool goes by its own name.
      const own: unknown = Object(data)['name']
      return errorAt(
        'input/missing-key',
        `${typeof own === 'string' ? own : name} has no "${params['missingProperty']}"`,
        at,
      )
    }
    case 'enum': {
      const names = (params['allowedValues'] as readonly unknown[]).map(String)
      return errorAt(
        'input/not-one-of',
        `${name} ${shown(data)} is not known`,
        at,
        suggestionOrList(shownPlain(data), names, 'known'),
      )
    }
    case 'type': {
      const wanted = [params['type']].flat().map(type => KINDS[String(type)] ?? String(type))
      if (data === null)
        return errorAt('input/schema', `${name} has nothing written after it`, at, `wanted: ${wanted.join(' or ')}`)
      return errorAt('input/schema', `${name} must be ${wanted.join(' or ')}, got ${shown(data)}`, at)
    }
    case 'minimum':
    case 'maximum': {
      const end = keyword === 'minimum' ? 'at least' : 'at most'
      return errorAt('input/out-of-range', `${name} must be ${end} ${params['limit']}, got ${shown(data)}`, at)
    }
    case 'minItems':
    case 'maxItems': {
      const end = keyword === 'minItems' ? 'at least' : 'at most'
      const got = Array.isArray(data) ? data.length : 0
      return errorAt('input/schema', `${name} must have ${end} ${params['limit']} of them, got ${got}`, at)
    }
    default:
      return errorAt('input/schema', `${name} ${fault.message ?? keyword}`, at)
  }
}

/** `/ports/1/corner` reads `corner of ports 2`: entries count from 1 for people. */
function nameOf(pointer: string): string {
  const steps = pointer
    .split('/')
    .slice(1)
    .map(part => part.replaceAll('~1', '/').replaceAll('~0', '~'))
  const last = steps.at(-1)
  if (last === undefined) return 'the file'
  const above = steps.at(-2)
  return /^\d+$/.test(last) && above !== undefined ? `entry ${Number(last) + 1} of ${above}` : last
}

const KINDS: Readonly<Record<string, string>> = {
  number: 'a number',
  integer: 'a whole number',
  string: 'text',
  object: 'keys with values',
  array: 'a list',
  boolean: 'true or false',
}

const shownPlain = (data: unknown): string => (typeof data === 'string' ? data : (JSON.stringify(data) ?? ''))

function shown(data: unknown): string {
  if (Array.isArray(data)) return 'a list'
  if (typeof data === 'object' && data !== null) return 'keys with values'
  return typeof data === 'string' ? `"${data.slice(0, 60)}"` : String(data)
}
