import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { readPart } from '../../src/part/read-part.ts'
import { readShop } from '../../src/part/read-shop.ts'
import { fileOfSetting, setValues } from '../../src/part/set-values.ts'

const LINER = readFileSync('parts/OX-098-21.yaml', 'utf8')
const SHOP = readFileSync('parts/shop.yaml', 'utf8')
const set = (path: string, value: string, text = LINER) => {
  const { text: edited, findings } = setValues(text, 'part.yaml', [{ path, value }])
  if (edited === undefined) throw new Error(findings.map(({ message, hint }) => `${message} (${hint})`).join('; '))
  return edited
}
const isNumber = (text: string) => ['number', 'boolean'].includes(typeof yamlOr(text))
const yamlOr = (text: string): unknown => {
  try {
    return parse(text, { logLevel: 'error' })
  } catch {
    return text
  }
}
const partWith = (path: string, value: string) => readPart(set(path, value), 'part.yaml').part

describe('values set by path', () => {
  it('what the file has is replaced in its place, and nothing else moves', () => {
    expect(set('ports.exhaust.opens', '104')).toBe(LINER.replace('opens: 106 ±0.25', 'opens: 104'))
    expect(set('body.outside.seat.size', '55 h6')).toBe(LINER.replace('55 g6', '55 h6'))
    expect(set('ports.boost.corner.cut', '2')).toBe(LINER.replace('{cut: 1.5}', '{cut: 2}'))
    expect(set('ports.0.corner', '2.5')).toBe(LINER.replace('corner: 3,', 'corner: 2.5,'))
  })

  it('what the file leaves out is added', () => {
    expect(partWith('stock.bore', '0.16')?.stock).toEqual({ bore: 0.16 })
    expect(partWith('hardening.temperature', '515 °C')?.hardening?.temperature).toBe(515)
    expect(partWith('body.bottom.flatness', '0.02')?.bottom.flatness).toBe(0.02)
    expect(partWith('ports.main transfer.role', 'other')?.ports.map(({ role }) => role)).toEqual([
      'exhaust',
      'other',
      'other',
      'boost',
    ])
  })

  it('adding keeps the lines of the rest', () => {
    expect(set('stock.bore', '0.16')).toBe(`${LINER.trimEnd()}\nstock: {bore: 0.16}\n`)
    expect(set('hardening.temperature', '515')).toBe(
      LINER.replace('depth: min 0.25}', 'depth: min 0.25, temperature: 515}'),
    )
  })

  it('a short form gets its keys', () => {
    const short = LINER.replace('bore: {size: 48 H6, Ra: 0.3, cylindricity: 0.006}', 'bore: 48 H6')
    expect(set('body.bore.Ra', '0.4', short)).toContain('bore: {size: 48 H6, Ra: 0.4}')
    expect(set('ports.exhaust.corner.cut', '2')).toContain('corner: {cut: 2}')
  })

  it('brackets with nothing in them and keys with nothing after them are filled', () => {
    for (const empty of ['stock: {}', 'stock: { }', 'stock:', 'stock:  # none yet']) {
      const edited = set('stock.bore', '0.16', `${LINER}${empty}\n`)
      expect(readPart(edited, 'part.yaml').part?.stock, empty).toEqual({ bore: 0.16 })
    }
  })

  it('several at once, one after the other', () => {
    const settings = [
      { path: 'stock.bore', value: '0.16' },
      { path: 'stock.hone', value: '0.02' },
      { path: 'hardening.depth', value: '0.25' },
    ]
    const { text = '' } = setValues(LINER, 'part.yaml', settings)
    expect(readPart(text, 'part.yaml').part).toMatchObject({
      stock: { bore: 0.16, hone: 0.02 },
      hardening: { depth: { least: 0.25 } },
    })
  })

  it.each([
    ['stok.bore', 'stock'],
    ['stock.boer', 'bore'],
    ['ports.boots.up', 'boost'],
    ['body.bore.size.x', 'one value'],
    ['ports.7.up', 'entries'],
    ['', 'allowed'],
    ['ports', undefined],
  ])('"%s" is answered with %s', (path, answer) => {
    const { text, findings } = setValues(LINER, 'part.yaml', [{ path, value: '1' }])
    if (answer === undefined) expect(findings).toEqual([])
    else {
      expect(text).toBeUndefined()
      expect(findings).toMatchObject([{ code: 'input/unknown-setting', severity: 'error' }])
      expect(findings[0]?.hint).toContain(answer)
    }
  })

  it('faults of the file itself come first', () => {
    const { findings } = setValues('a: [1', 'part.yaml', [{ path: 'stock.bore', value: '1' }])
    expect(findings.map(({ code }) => code)).toEqual(['input/yaml'])
  })

  it('any text comes back as it was given, in any place of the file', () => {
    const places = fc.constantFrom('part.title', 'ports.exhaust.name', 'body.outside.flange.name', 'waive')
    const values = fc.string({ minLength: 1, maxLength: 20 }).map(text => text.trim())
    fc.assert(
      fc.property(places, values, (path, value) => {
        fc.pre(value !== '' && !/\p{Cc}/u.test(value))
        const edited = set(path, value)
        const found = path.split('.').reduce<unknown>(
          (at, key) => {
            const named = Array.isArray(at) ? at.find(entry => entry.name === key) : undefined
            return named ?? (at as Record<string, unknown>)?.[key] ?? (Array.isArray(at) ? at[0] : undefined)
          },
          parse(edited, { logLevel: 'error' }),
        )
        // What is YAML in brackets or quotes goes in as that; anything else as the text it is.
        const meant = /^[[{'"]/.test(value)
          ? [value, yamlOr(value)]
          : [value, ...(isNumber(value) ? [yamlOr(value)] : [])]
        expect(meant).toContainEqual(found)
      }),
    )
  })
})

describe('values of the shop', () => {
  it('a path says of which file it is', () => {
    expect(
      ['stock.bore', 'fixture.face-distance', 'habits.saw-kerf', 'part.title', 'nothing.here'].map(fileOfSetting),
    ).toEqual(['part', 'shop', 'shop', 'part', undefined])
  })

  it('entries go by name, points and all, and missing sections are added', () => {
    const settings = [
      { path: 'tools.end mill 1.5.reach', value: '19' },
      { path: 'tools.end mill 1.5, long reach.reach', value: '24' },
      { path: 'machines.mill.speed-limit', value: '10000' },
      { path: 'habits.yields.hone', value: '0.97' },
      { path: 'fixture.face-distance', value: '85' },
    ]
    const { text = '', findings } = setValues(SHOP, 'shop.yaml', settings, 'shop')
    expect(findings).toEqual([])
    const { shop } = readShop(text, 'shop.yaml')
    expect(shop?.tools.slice(0, 2).map(tool => 'reach' in tool && tool.reach)).toEqual([19, 24])
    expect(shop?.machines[2]?.speedLimit).toBe(10_000)
    expect(shop?.habits.yields).toMatchObject({ turn: 0.99, hone: 0.97 })
    expect(shop?.fixture.faceDistance).toBe(85)
  })

  it('an empty shop file can be set into', () => {
    const { text = '' } = setValues('', 'shop.yaml', [{ path: 'fixture.pivot-height', value: '51' }], 'shop')
    expect(readShop(text, 'shop.yaml').shop?.fixture.pivotHeight).toBe(51)
  })
})
