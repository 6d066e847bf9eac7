import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { stringify } from 'yaml'
import { readShop } from '../../src/part/read-shop.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { habit } from '../../src/shop/habit.ts'
import { habitKey } from '../../src/shop/habit-key.ts'
import { onHand } from '../../src/shop/origin.ts'
import type { Tool } from '../../src/shop/tool.ts'

const shopOf = (text: string) => {
  const { shop, findings } = readShop(text, 'shop.yaml')
  if (!shop) throw new Error(findings.map(({ message }) => message).join('; '))
  return shop
}

/** A record as the shop file writes it. */
const kebab = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(kebab)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [habitKey(key), kebab(inner)]))
}

/** A tool in the keys of a shop file. */
function written(tool: Tool): object {
  switch (tool.kind) {
    case 'boring bar': {
      const { material, ...bar } = tool
      return { ...bar, grade: material }
    }
    case 'internal wheel': {
      const { width, quill, ...wheel } = tool
      return { ...wheel, length: width, shank: quill?.diameter, reach: quill?.length }
    }
    case 'end mill': {
      const { neck, ...mill } = tool
      return { ...mill, ...(neck && { neck: neck.diameter, edgeLength: neck.edges }) }
    }
    case 'parting blade':
    case 'grinding wheel':
    case 'centreless wheel': {
      const { width, ...rest } = tool
      return { ...rest, length: width }
    }
    case 'hone': {
      const { stones, ...hone } = tool
      const grade = `${stones.abrasive} ${stones.grit}`
      return { ...hone, length: stones.length, teeth: stones.count, grade }
    }
    default:
      return tool
  }
}

describe('a shop file over the built-in shop', () => {
  it('the demo shop reads without a finding', () => {
    expect(readShop(readFileSync('parts/shop.yaml', 'utf8'), 'shop.yaml')).toMatchObject({
      shop: { name: 'Oxmere Pump Works' },
      findings: [],
    })
  })

  it('what the file leaves out is as built in', () => {
    const shop = shopOf('shop: {name: Oxmere Pump Works}')
    expect({ ...shop, set: 0, places: 0, file: 0 }).toEqual({
      ...BUILT_IN_SHOP,
      name: 'Oxmere Pump Works',
      set: 0,
      places: 0,
      file: 0,
    })
  })

  it('a list stands in place of the built-in one; fixture, habits and yields are laid over it key by key', () => {
    const shop = shopOf(`
firms: [{name: Quillfen Hardening, processes: [nitride], lead-time: 2 weeks}]
fixture: {head-faces: -X, face-distance: 3 in}
habits: {saw-kerf: 1.6 mm, confidence: 90 %, yields: {turn: 0.99}}`)
    expect(shop.firms).toEqual([{ name: 'Quillfen Hardening', processes: ['nitride'], leadTime: 14 }])
    expect(shop.fixture).toEqual({ ...BUILT_IN_SHOP.fixture, headFaces: '-X', faceDistance: 76.2 })
    const { habits } = BUILT_IN_SHOP
    expect(shop.habits).toEqual({ ...habits, sawKerf: 1.6, confidence: 0.9, yields: { ...habits.yields, turn: 0.99 } })
    expect(shop.tools).toBe(BUILT_IN_SHOP.tools)
  })

  it('a pocket that two tools are said to stand in is a finding at the second, unless they are the same tool twice', () => {
    const mill = 'kind: end mill, diameter: 3, teeth: 4, flute-length: 8, shank: 6, pocket: 4'
    const listed = (second: string) =>
      readShop(`tools:\n  - {name: end mill 3, ${mill}, reach: 22}\n  - {name: another, ${second}}\n`, 'shop.yaml')
        .findings
    expect(listed(`${mill}, reach: 22`)).toEqual([])
    expect(listed('kind: drill, diameter: 3.3, flute-length: 20, shank: 6, reach: 34, pocket: 5')).toEqual([])
    const drill = 'kind: drill, diameter: 3.3, flute-length: 20, shank: 6, reach: 34, pocket: 4'
    expect(listed(drill)).toMatchObject([
      { code: 'input/pocket-twice', severity: 'error', at: { line: 3, column: 96 } },
    ])
    // A longer one of the same diameter goes deeper than its program was written for.
    expect(listed(`${mill}, reach: 30`)).toMatchObject([{ code: 'input/pocket-twice', at: { line: 3 } }])
  })

  it('tells what the file itself sets', () => {
    const shop = shopOf('habits: {saw-kerf: 1.6}')
    const kerf = (one: typeof shop) => habit(one, 'sawKerf', 'mm').from
    expect([kerf(shop), habit(shop, 'barLength', 'mm').from, kerf(BUILT_IN_SHOP)]).toEqual([
      'shop',
      'built in',
      'built in',
    ])
    expect([...shop.set]).toEqual(['/habits', '/habits/saw-kerf'])
  })

  it('grades of earlier batches go by their European name', () => {
    const shop = shopOf("measured: [{process: nitride, grade: '4140', pieces: 12, date: 2026-06-12, ovality: 24 µm}]")
    expect(shop.measured).toEqual([
      { process: 'nitride', grade: '42CrMo4', pieces: 12, date: '2026-06-12', ovality: 0.024 },
    ])
  })

  it('the built-in shop written out as a file reads back the same: every value has its key, and passes its own checks', () => {
    const { set: _, places: __, file: ___, name, tools, ...rest } = BUILT_IN_SHOP
    const shop = shopOf(stringify({ shop: { name }, ...(kebab({ ...rest, tools: tools.map(written) }) as object) }))
    expect({ ...shop, set: 0, places: 0, file: 0 }).toEqual({ ...BUILT_IN_SHOP, set: 0, places: 0, file: 0 })
  })
})

describe('a list with built-in among its entries', () => {
  const TEXT = `shop: {name: Oxmere Pump Works}
tools:
  - built-in
  - {name: drill 10, kind: drill, diameter: 10, flute-length: 100, reach: 120, shank: 10, point: 140}
gauges: [built-in]
`
  it('adds to the built-in list, and the own of one name goes before the built-in one', () => {
    const { shop, findings } = readShop(TEXT, 'shop.yaml')
    expect(findings.filter(({ severity }) => severity === 'error')).toEqual([])
    expect(shop?.gauges).toEqual(BUILT_IN_SHOP.gauges)
    expect(shop?.tools).toHaveLength(BUILT_IN_SHOP.tools.length)
    expect(shop?.tools.filter(({ name }) => name === 'drill 10')).toMatchObject([{ fluteLength: 100 }])
  })

  it('says of each entry who gave it', () => {
    const { shop } = readShop(TEXT, 'shop.yaml')
    if (!shop) throw new Error('not read')
    expect(onHand(shop, 'tools', 'drill 10').from).toBe('shop')
    expect(onHand(shop, 'tools', 'drill 20').from).not.toBe('shop')
  })

  it('no other word is an entry', () => {
    expect(readShop('tools: [built-out]\n', 'shop.yaml').findings.some(({ severity }) => severity === 'error')).toBe(
      true,
    )
  })
})
