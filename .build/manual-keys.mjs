// The keys of a file as tables, from its JSON schema.

/** What stands inside for a value of each kind, and so what a bare number is. */
const UNITS = {
  length: 'mm',
  zone: 'mm',
  size: 'mm',
  least: 'mm',
  roughness: 'µm',
  angle: '°',
  speed: 'rpm',
  temperature: '°C',
  volume: 'cm³',
  minutes: 'min',
  hours: 'h',
  days: 'd',
  power: 'kW',
}

/** A unit at the end of what is said of a key that is a plain number. */
const SAID = { mm: 'mm', degrees: '°', ms: 'ms', HV: 'HV', 'cm³': 'cm³', '°C': '°C' }

const cell = text => text.replaceAll('|', '\\|').replaceAll('\n', ' ')
const code = value => `\`${String(value)}\``
const refOf = schema => schema.$ref?.split('/').at(-1)

function written(schema, ref) {
  if (schema.enum) return schema.enum.length > 8 ? 'one of a list' : schema.enum.map(code).join(', ')
  if (ref) return ref === 'label' ? 'text' : ref
  const types = [schema.type].flat()
  const words = {
    integer: 'whole number',
    string: 'text',
    object: 'keys below',
    array: 'list',
    boolean: 'true or false',
  }
  return types.map(type => words[type] ?? type).join(' or ')
}

function leftOut(schema, said, required) {
  const [, value] = / Left out: (.*)\.$/.exec(said) ?? []
  if (value !== undefined) return value
  if (schema.default !== undefined) return String(schema.default)
  return required ? 'must be there' : ''
}

/** The unit by its kind, else as it is said; nothing where the value is a mapping of keys with units of their own. */
function unitOf(schema, ref, said) {
  if (ref) return UNITS[ref] ?? ''
  if (schema.type === 'object') return ''
  const [, word = ''] = /, ([\p{L}°³]+)(?:[.;,]|$)/u.exec(said) ?? []
  return SAID[word] ?? ''
}

function rowOf({ path, schema, meant, required }) {
  const said = schema.description ?? meant.description ?? ''
  const ref = refOf(schema)
  const plain = said.replace(/ Left out: .*$/, '')
  return [
    code(path),
    written(meant, ref),
    unitOf(schema, ref, plain),
    leftOut(schema, said, required),
    plain.replace(/, (?:mm|degrees|µm|rpm|min|h|kW|°C|cm³|ms)(?=\.$)/, ''),
  ]
}

function rowsBelow(schema, root, path) {
  const meant = { ...root.$defs?.[refOf(schema)], ...schema }
  const own = Object.entries(meant.properties ?? {}).flatMap(([key, below]) => {
    const here = path === '' ? key : `${path}.${key}`
    const known = { ...root.$defs?.[refOf(below)], ...below }
    const row = rowOf({ path: here, schema: below, meant: known, required: meant.required?.includes(key) })
    return [row, ...rowsBelow(below, root, here)]
  })
  // Keys that the user names: what stands below every one of them.
  const named = meant.additionalProperties?.properties ? rowsBelow(meant.additionalProperties, root, `${path}.…`) : []
  return [...own, ...named, ...(meant.items ? rowsBelow(meant.items, root, `${path}[]`) : [])]
}

const table = (head, rows) =>
  [head, head.map(() => '---'), ...rows].map(row => `| ${row.map(cell).join(' | ')} |\n`).join('')

/** What the kinds of value are that the table names. */
function kindsOf(root) {
  const told = Object.entries(root.$defs ?? {}).filter(
    ([name]) => name !== 'label' && name !== 'port' && name !== 'face',
  )
  return told
    .map(([name, { description, examples, enum: choices }]) => {
      const shown = (choices ?? examples ?? []).map(code).join(', ')
      return `- **${name}**: ${description}${shown ? ` ${shown}` : ''}\n`
    })
    .join('')
}

/** A table a section: the keys at the top of the file, each with all below it. */
export function keysOf(root) {
  const rows = rowsBelow(root, root, '')
  const kinds = kindsOf(root)
  const HEAD = ['key', 'written as', 'unit', 'left out', 'what it is']
  return `${root.description}\n\n${table(HEAD, rows)}\n${kinds ? `Kinds of value:\n\n${kinds}` : ''}`
}

/** What each kind of tool must have. */
export const toolsByKind = ({ properties }) =>
  table(
    ['kind', 'needs'],
    properties.tools.items.allOf.map(({ if: one, then }) => [
      one.properties.kind.const,
      then.required.map(code).join(', '),
    ]),
  )
