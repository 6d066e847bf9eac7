import { parse, stringify } from 'yaml'
import batchSchema from '../../src/part/batch.schema.json' with { type: 'json' }
import partSchema from '../../src/part/part.schema.json' with { type: 'json' }
import shopSchema from '../../src/part/shop.schema.json' with { type: 'json' }
import { BATCHES, PARTS, SHOPS } from './bases.ts'
import { damaged } from './damage.ts'
import type { Case } from './judge.ts'
import { changedValue, STRANGE_KEYS } from './odd-values.ts'
import { type Random, randomOf } from './random.ts'
import { type Schema, withAnother } from './schema-values.ts'

/** One file of the demo or of `new`, damaged somewhere, with the others beside it as they are. */
export function mutantOf(seed: number, number: number): Case {
  const random = randomOf(seed, number)
  const part = random.any(PARTS) ?? ''
  const shop = random.any(SHOPS) ?? ''
  const batch = random.any(BATCHES) ?? ''
  const which = random.pick(['part', 'part', 'part', 'part', 'part', 'shop', 'shop', 'batch'])
  const withShop = which === 'shop' || random.chance(0.6)
  const withBatch = which === 'batch' || random.chance(0.2)
  return {
    files: {
      'part.yaml': which === 'part' ? mutated(random, part, partSchema) : part,
      ...(withShop && { 'shop.yaml': which === 'shop' ? mutated(random, shop, shopSchema) : shop }),
      ...(withBatch && { 'batch.yaml': which === 'batch' ? mutated(random, batch, batchSchema) : batch }),
    },
    commands: [
      ['plan', 'part.yaml', '--json', ...(withBatch ? ['--batch', 'batch.yaml'] : [])],
      ...(random.chance(0.02) ? [['traveller', 'part.yaml', '--format', 'html']] : []),
    ],
  }
}

function mutated(random: Random, text: string, schema: Schema): string {
  if (random.chance(0.2)) return damaged(random, text)
  const data: unknown = parse(text)
  const changed = Array.from({ length: random.pick([1, 1, 1, 2, 3]) }).reduce<unknown>(
    value => (random.chance(0.35) ? withAnother(random, value, schema) : mutatedData(random, value)),
    data,
  )
  const written = stringify(changed, { aliasDuplicateObjects: false })
  return random.chance(0.05) ? damaged(random, written) : written
}

type Holder = { readonly holder: unknown[] | Record<string, unknown>; readonly key: string }

/** Every place that holds a value. */
function placesIn(value: unknown): readonly Holder[] {
  if (typeof value !== 'object' || value === null) return []
  const holder = value as Record<string, unknown>
  return Object.keys(holder).flatMap(key => [{ holder, key }, ...placesIn(holder[key])])
}

function mutatedData(random: Random, original: unknown): unknown {
  const data: unknown = structuredClone(original)
  const places = placesIn(data)
  const place = random.any(places)
  if (!place) return data
  const holder = place.holder as Record<string, unknown>
  const { key } = place
  const remove = (): void => {
    if (Array.isArray(place.holder)) place.holder.splice(Number(key), 1)
    else delete holder[key]
  }
  const how = random.pick([
    'value',
    'value',
    'value',
    'value',
    'value',
    'drop',
    'drop',
    'swap',
    'rename',
    'repeat',
    'many',
    'deep',
    'add',
  ])
  if (how === 'value') holder[key] = changedValue(random, holder[key])
  if (how === 'drop') remove()
  if (how === 'swap') {
    const other = random.any(places)
    if (other) holder[key] = structuredClone((other.holder as Record<string, unknown>)[other.key])
  }
  if (how === 'rename' && !Array.isArray(place.holder)) {
    const value = holder[key]
    delete holder[key]
    holder[random.any(STRANGE_KEYS) ?? `${key}x`] = value
  }
  if (how === 'repeat' && Array.isArray(place.holder)) place.holder.push(structuredClone(holder[key]))
  if (how === 'many' && !Array.isArray(place.holder))
    for (let more = random.whole(10, 400); more > 0; more--) holder[`key-${more}`] = more
  if (how === 'deep') {
    let inner: unknown = holder[key]
    for (let level = random.whole(5, 60); level > 0; level--) inner = random.chance(0.5) ? [inner] : { inner }
    holder[key] = inner
  }
  if (how === 'add' && !Array.isArray(place.holder))
    holder[random.any(STRANGE_KEYS) ?? 'more'] = changedValue(random, 1)
  return data
}
