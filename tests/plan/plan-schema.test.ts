import { readFileSync } from 'node:fs'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import { readPart } from '../../src/part/read-part.ts'
import { readShop } from '../../src/part/read-shop.ts'
import schema from '../../src/plan/plan.schema.json' with { type: 'json' }
import { EVERY_FIELD } from './every-field.ts'

const validate = new Ajv2020({ strict: true, allErrors: true }).compile(schema)
const faults = (plan: unknown) => {
  validate(plan)
  return (validate.errors ?? []).map(
    ({ instancePath, message, params }) => `${instancePath} ${message} ${JSON.stringify(params)}`,
  )
}

/** A copy in which nothing is shared. */
const copied = (): unknown => JSON.parse(JSON.stringify(EVERY_FIELD))

type Json = { [key: string]: unknown }
const isObject = (value: unknown): value is Json => typeof value === 'object' && value !== null && !Array.isArray(value)

/** Every mapping in the value, with its pointer. */
function mappings(value: unknown, path = ''): readonly { readonly path: string; readonly map: Json }[] {
  if (Array.isArray(value)) return value.flatMap((item, index) => mappings(item, `${path}/${index}`))
  if (!isObject(value)) return []
  return [{ path, map: value }, ...Object.entries(value).flatMap(([key, inner]) => mappings(inner, `${path}/${key}`))]
}

describe('the schema of the Plan, JSON Schema 2020-12', () => {
  it('describes every field that a plan may have', () => {
    expect(faults(EVERY_FIELD)).toEqual([])
  })

  it('describes no other: a key that nobody knows is a fault wherever it stands', () => {
    const plan = copied()
    for (const { path, map } of mappings(plan)) {
      map['unheardOf'] = 1
      expect(faults(plan), path).toHaveLength(1)
      delete map['unheardOf']
    }
    expect(faults(plan)).toEqual([])
  })

  it('knows what each field holds: text in the place of a number, or the other way about, is a fault', () => {
    const plan = copied()
    for (const { path, map } of mappings(plan)) {
      for (const [key, value] of Object.entries(map)) {
        map[key] = typeof value === 'number' ? 'text' : 1.5
        expect(faults(plan).length, `${path}/${key}`).toBeGreaterThan(0)
        map[key] = value
      }
    }
  })
})

describe('plans of the demo parts are as the schema says', () => {
  it.each(['OX-098-21', 'OX-105-02', 'OX-112-03'])('%s', async number => {
    const { makePlan } = await import('../../src/plan/make-plan.ts')
    const { part } = readPart(readFileSync(`parts/${number}.yaml`, 'utf8'), number)
    const { shop } = readShop(readFileSync('parts/shop.yaml', 'utf8'), 'shop.yaml')
    if (!part || !shop) throw new Error('the demo does not read')
    const issue = { date: '2026-11-25', fingerprint: '0123456789ab', program: 'linerwright 0.1.0' }
    const { plan } = makePlan({ part, shop, batch: { number: '2631', quantity: 12 }, issue })
    // As --json gives it: what is absent is left out.
    expect(faults(JSON.parse(JSON.stringify(plan)))).toEqual([])
  })
})
