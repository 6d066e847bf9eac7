import { describe, expect, it } from 'vitest'
import batch from '../../src/part/batch.schema.json' with { type: 'json' }
import part from '../../src/part/part.schema.json' with { type: 'json' }
import { readShop } from '../../src/part/read-shop.ts'
import shop from '../../src/part/shop.schema.json' with { type: 'json' }
import { PORT_CHECKS } from '../../src/ports/checks/all-checks.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { habitKey } from '../../src/shop/habit-key.ts'

type Schema = {
  readonly description?: string
  readonly $ref?: string
  readonly $defs?: Readonly<Record<string, Schema>>
  readonly properties?: Readonly<Record<string, Schema>>
  readonly items?: Schema
}

/** Every key below a schema, by its path, with what is said of it: by itself, or by what it refers to. */
function keysOf(schema: Schema, root: Schema, path = ''): readonly (readonly [string, string])[] {
  const meant = { ...root.$defs?.[schema.$ref?.split('/').at(-1) ?? ''], ...schema }
  return [
    ...Object.entries(meant.properties ?? {}).flatMap(([key, below]) => {
      const here = path === '' ? key : `${path}.${key}`
      const said = below.description ?? root.$defs?.[below.$ref?.split('/').at(-1) ?? '']?.description ?? ''
      return [[here, said] as const, ...keysOf(below, root, here)]
    }),
    ...(meant.items ? keysOf(meant.items, root, path) : []),
  ]
}

const ofShop = new Map(keysOf(shop, shop))
const leftOut = (key: string): string | undefined => /Left out: (.*)\.$/.exec(ofShop.get(key) ?? '')?.[1]

describe('what an editor shows of a key', () => {
  it.each(Object.entries({ part, shop, batch }))(
    'the schema of the %s file says of every key what it is',
    (_, schema) => {
      const keys = keysOf(schema, schema)
      expect(keys.length).toBeGreaterThan(4)
      expect(keys.filter(([, said]) => !/^[A-Z{].*\.$/s.test(said)).map(([key]) => key)).toEqual([])
    },
  )

  it('of every habit what holds where it is left out', () => {
    const { yields, ...figures } = BUILT_IN_SHOP.habits
    for (const [habit, value] of Object.entries(figures))
      expect(leftOut(`habits.${habitKey(habit)}`), habit).toBe(String(value))
    const processes = [...ofShop.keys()].filter(key => key.startsWith('habits.yields.'))
    const given: Readonly<Record<string, number>> = yields
    for (const key of processes) expect(leftOut(key), key).toBe(String(given[key.slice(14)] ?? 1))
    expect(processes.length).toBeGreaterThan(10)
  })

  it('of the fixture likewise', () => {
    const { headFaces, faceDistance, pivotHeight, positiveRotary, rotaryLimits, tiltLimits, holder, chuck } =
      BUILT_IN_SHOP.fixture
    const built = {
      'head-faces': headFaces,
      'face-distance': faceDistance,
      'pivot-height': pivotHeight,
      'positive-rotary': positiveRotary,
      'rotary-limits': rotaryLimits.join(' to '),
      'tilt-limits': tiltLimits.join(' to '),
      'holder.diameter': holder.diameter,
      'holder.length': holder.length,
      'holder.spindle-diameter': holder.spindleDiameter,
      'chuck.diameter': chuck.diameter,
      'chuck.length': chuck.length,
    }
    for (const [key, value] of Object.entries(built)) expect(leftOut(`fixture.${key}`), key).toBe(String(value))
  })

  it('of a machine likewise', () => {
    const { shop: read } = readShop('machines: [{work-centre: saw, name: Saw, processes: [saw]}]', 'shop.yaml')
    const [machine] = read?.machines ?? []
    expect(leftOut('machines.setup')).toBe(String(machine?.setup))
    expect(leftOut('machines.handling')).toBe(String(machine?.handling))
  })

  it('of every rule about ports why it is asked', () => {
    const because = new Map(PORT_CHECKS.map(check => [check.name, check.because]))
    for (const rule of Object.keys(shop.properties['port-checks'].properties))
      expect(ofShop.get(`port-checks.${rule}`)?.toLowerCase(), rule).toBe(`${because.get(rule)?.toLowerCase()}.`)
  })
})
