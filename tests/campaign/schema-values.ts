import type { Random } from './random.ts'

/** As much of a JSON Schema as our files use. */
export type Schema = {
  readonly $ref?: string
  readonly $defs?: Readonly<Record<string, Schema>>
  readonly type?: string | readonly string[]
  readonly enum?: readonly unknown[]
  readonly properties?: Readonly<Record<string, Schema>>
  readonly items?: Schema
}

/** Texts and figures that a key of each kind may well be given, some of them at the end of what is sensible. */
const VALUES: Readonly<Record<string, readonly unknown[]>> = {
  label: [
    'seat',
    'bore',
    'outside',
    'top',
    'bottom',
    'flange',
    'exhaust',
    '42CrMo4',
    '16MnCr5',
    '100Cr6',
    'C45',
    'S355',
    'CuSn8',
  ],
  size: ['48 H6', '12 ±0.1', '3.5', '50 h5', '5 ±2', '92 ±0.001', '200 h11', '30 +0.1/-0'],
  length: [0.001, 0.01, 0.05, 0.2, 0.5, 1, 2, 3, 5, 10, 30, 80, 200, 1000, 0, -1],
  zone: [0.0005, 0.002, 0.01, 0.05, 0.5, 2],
  angle: [0, 1, 15, 32, 60, 79, 90, 106, 135, 180, 270, -30],
  roughness: [0.01, 0.05, 0.1, 0.4, 0.8, 1.6, 6.3, 25, 100],
  Ra: [0.01, 0.05, 0.1, 0.4, 0.8, 1.6, 6.3, 25, 100],
  hardness: ['50 HV', '180 HV', '300 HV', 'min 550 HV', '60 HRC', '20 HRC', '250 HB', '1200 HV'],
  temperature: [20, 180, 250, 400, 480, 520, 560, 600, 680, 720, 880, 1100],
  least: ['min 0.01', 'min 0.1', 'min 0.3', 0.8, 'min 1.5', 4],
  speed: [10, 200, 1000, 3500, 12000, 40000],
  minutes: [0, 0.1, 1, 5, 60, 1000],
  hours: [0, 0.1, 1, 5, 60, 1000],
  days: [0, 1, 10, '3 weeks', 1000],
  power: [0.01, 0.5, 5, 50, 900],
  ratio: [0.001, 0.1, 0.5, 0.9, 0.999, 1],
  volume: [0.01, 1, 11.5, 100, 5000],
  date: ['2026-11-25', '2026-02-30'],
}

/** A copy in which a key that its file has words for, and that stood elsewhere or nowhere, is given a likely value. */
export function withAnother(random: Random, value: unknown, schema: Schema): unknown {
  const data: unknown = structuredClone(value)
  const open = mappingsOf(data, schema, schema)
  const place = random.any(open)
  if (!place) return data
  const key = random.any(Object.keys(place.schema.properties ?? {}))
  const inner = key === undefined ? undefined : place.schema.properties?.[key]
  if (key !== undefined && inner) place.map[key] = likely(random, inner, schema, key, 0)
  return data
}

type Open = { readonly map: Record<string, unknown>; readonly schema: Schema }

function mappingsOf(value: unknown, written: Schema, root: Schema): readonly Open[] {
  const schema = resolved(written, root)
  if (Array.isArray(value)) return value.flatMap(item => mappingsOf(item, schema.items ?? {}, root))
  if (typeof value !== 'object' || value === null) return []
  const map = value as Record<string, unknown>
  return [
    { map, schema },
    ...Object.entries(map).flatMap(([key, inner]) => mappingsOf(inner, schema.properties?.[key] ?? {}, root)),
  ]
}

const resolved = (schema: Schema, root: Schema): Schema =>
  schema.$ref === undefined ? schema : (root.$defs?.[schema.$ref.split('/').at(-1) ?? ''] ?? {})

function likely(random: Random, written: Schema, root: Schema, key: string, depth: number): unknown {
  const named = VALUES[key] ?? VALUES[written.$ref?.split('/').at(-1) ?? '']
  if (named) return random.any(named)
  const schema = resolved(written, root)
  if (schema.enum) return random.any(schema.enum)
  const types = [schema.type ?? 'string'].flat()
  if (schema.properties && types.includes('object') && (types.length === 1 || random.chance(0.4)) && depth < 3) {
    const keys = Object.entries(schema.properties).filter(() => random.chance(0.6))
    return Object.fromEntries(keys.map(([name, inner]) => [name, likely(random, inner, root, name, depth + 1)]))
  }
  if (schema.items && types.includes('array') && depth < 3) {
    const items = schema.items
    return Array.from({ length: random.whole(0, 3) }, () => likely(random, items, root, key, depth + 1))
  }
  if (types.includes('boolean')) return random.chance(0.5)
  if (types.includes('integer')) return random.pick([0, 1, 2, 5, 100])
  return random.any(types.includes('number') ? (VALUES['length'] ?? []) : (VALUES['label'] ?? []))
}
