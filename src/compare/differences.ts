/** One place at which two pieces of plain data differ. */
export type Difference = {
  /** Names from the outside in; entries of lists go by what they are called, not by where they stand. */
  readonly path: readonly string[]
  readonly was?: Value
  readonly is?: Value
}

/** A text or number; of what is there on one side only and has things inside, how many. */
export type Value = string | number | boolean | null

/** Figures closer than this share of themselves are one figure: an inch written out is no change. */
const SAME = 1e-9
/** Points of a curve: told as one. */
const CURVE = 12

/**
 * What is not told: reasons, sources and hints follow from what they speak of; numbers that things are counted by move where
 * something is put in before them; where a value stands in its file is no part of it.
 */
const PASSED_OVER: ReadonlySet<string> = new Set([
  'basis',
  'because',
  'cautions',
  'characteristic',
  'decidedBy',
  'drivenBy',
  'file',
  'fingerprint',
  'judge',
  'limitedBy',
  'number',
  'path',
  'places',
  'program',
  'records',
  'references',
  'remark',
  'remarks',
  'replaces',
  'shape',
  'source',
  'waits',
  'weighed',
  'workings',
  'written',
])

/** What an entry of a list is called by, as far as it has it. */
const CALLED_BY = [
  'name',
  'feature',
  'surface',
  'edge',
  'measure',
  'what',
  'title',
  'label',
  'state',
  'figure',
  'action',
  'kind',
  'tool',
  'work',
  'port',
  'role',
  'roles',
  'window',
  'symbol',
  'end',
  'expression',
  'stage',
  'cure',
  'serial',
] as const

type Data = Readonly<Record<string, unknown>>

const isData = (value: unknown): value is Data =>
  typeof value === 'object' && value !== null && !Array.isArray(value) && !(value instanceof Map)
const isValue = (value: unknown): value is Value =>
  value === null || ['string', 'number', 'boolean'].includes(typeof value)

/** Every place at which the two differ, in the order of the second. */
export function differencesOf(was: unknown, is: unknown, path: readonly string[] = []): readonly Difference[] {
  if (was === is || was instanceof Map || is instanceof Map) return []
  if (Array.isArray(was) && Array.isArray(is)) return inLists(was, is, path)
  if (isData(was) && isData(is)) {
    const keys = [...new Set([...Object.keys(is), ...Object.keys(was)])].filter(
      // A drawing has a number too, which is a name and no count.
      key => !PASSED_OVER.has(key) || (key === 'number' && typeof is[key] === 'string'),
    )
    return keys.flatMap(key => differencesOf(was[key], is[key], [...path, key]))
  }
  if (
    typeof was === 'number' &&
    typeof is === 'number' &&
    Math.abs(was - is) <= SAME * Math.max(1, Math.abs(was), Math.abs(is))
  )
    return []
  return [{ path, ...told('was', was), ...told('is', is) }]
}

const told = (side: 'was' | 'is', value: unknown) =>
  value === undefined
    ? {}
    : { [side]: isValue(value) ? value : Array.isArray(value) ? `${value.length} of them` : 'there' }

function inLists(was: readonly unknown[], is: readonly unknown[], path: readonly string[]): readonly Difference[] {
  if (![...was, ...is].every(isData)) {
    const [old, now] = [was, is].map(list => list.map(String).join(', '))
    return sameList(was, is) ? [] : [{ path, was: old ?? '', is: now ?? '' }]
  }
  const [old, now] = [called(was.filter(isData)), called(is.filter(isData))]
  if ([...now.keys()].every(name => /^#\d+$/.test(name)) && Math.max(was.length, is.length) > CURVE) {
    const moved = [...now].filter(([name, entry]) => differencesOf(old.get(name), entry).length > 0).length
    return moved === 0 && was.length === is.length
      ? []
      : [{ path, was: `${was.length} points`, is: `${is.length} points, others` }]
  }
  const names = [...new Set([...now.keys(), ...old.keys()])]
  const inside = names.flatMap(name => differencesOf(old.get(name), now.get(name), [...path, name]))
  const order = (list: ReadonlyMap<string, Data>, other: ReadonlyMap<string, Data>) =>
    [...list.keys()].filter(name => other.has(name)).join(', ')
  const [before, after] = [order(old, now), order(now, old)]
  return before === after ? inside : [...inside, { path: [...path, 'order'], was: before, is: after }]
}

const sameList = (was: readonly unknown[], is: readonly unknown[]): boolean =>
  was.length === is.length && was.every((value, i) => differencesOf(value, is[i]).length === 0)

/** Entries by their names; a name that comes again is counted, an entry without one goes by its place. */
function called(list: readonly Data[]): ReadonlyMap<string, Data> {
  const seen = new Map<string, number>()
  return new Map(
    list.map((entry, index) => {
      const words = CALLED_BY.flatMap(key => {
        const value = entry[key]
        return typeof value === 'string' || typeof value === 'number' ? [String(value)] : []
      })
      if (words.length === 0) return [`#${index + 1}`, entry]
      const name = [...new Set(words)].join(' ')
      const times = (seen.get(name) ?? 0) + 1
      seen.set(name, times)
      return [times === 1 ? name : `${name} (${times})`, entry]
    }),
  )
}
