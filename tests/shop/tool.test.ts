import { describe, expect, expectTypeOf, it } from 'vitest'
import { readShop } from '../../src/part/read-shop.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { type Drill, type Hone, type Tool, toolsOf } from '../../src/shop/tool.ts'

const read = (tool: string) => readShop(`tools: [{name: one, ${tool}}]`, 'shop.yaml')
const faults = (tool: string) => read(tool).findings.map(({ message }) => message)
const tool = (text: string): Tool | undefined => read(text).shop?.tools[0]

describe('a tool has the fields of its kind and no others', () => {
  it('in the types: a drill has a point and no stones, a hone stones and no point', () => {
    expectTypeOf<Drill>().toHaveProperty('point')
    expectTypeOf<Drill>().not.toHaveProperty('stones')
    expectTypeOf<Hone>().not.toHaveProperty('diameter')
    expectTypeOf(toolsOf(BUILT_IN_SHOP, 'drill')).toEqualTypeOf<readonly Drill[]>()
  })

  it.each([
    ['kind: end mill, diameter: 2', ['teeth', 'flute-length', 'shank', 'reach']],
    ['kind: drill, diameter: 2.2', ['flute-length', 'reach']],
    ['kind: turning tool', ['nose-radius']],
    ['kind: boring bar, diameter: 16', ['reach', 'nose-radius']],
    ['kind: hone, length: 60', ['teeth', 'grade']],
    ['kind: ring lap, diameter: 16, length: 30', ['grade']],
    ['kind: grinding wheel, diameter: 350', ['length']],
  ])('{%s} is told what it lacks', (text, keys) => {
    expect(faults(text)).toEqual(keys.map(key => `one has no "${key}"`))
  })

  it('a slip of the pen is named, and the key is not called missing besides', () => {
    expect(faults('kind: turning tool, nose-radios: 0.4')).toEqual(['unknown key "nose-radios"'])
  })

  it.each([
    ['kind: hone, length: 60, teeth: 6, grade: fine', 'grade cannot be read: "fine"'],
    ['kind: ring lap, diameter: 16, length: 30, grade: fine', 'grade cannot be read: "fine"'],
    [
      'kind: end mill, diameter: 2, teeth: 4, flute-length: 9, shank: 6, reach: 8',
      /stands out 8 mm, less than its flutes/,
    ],
    [
      'kind: end mill, diameter: 2, teeth: 4, flute-length: 9, shank: 6, reach: 20, neck: 1.9',
      'one has no "edge-length"',
    ],
    [
      'kind: end mill, diameter: 2, teeth: 4, flute-length: 9, shank: 6, reach: 20, neck: 2, edge-length: 3',
      /has a neck of 2 mm, no thinner than its 2 mm/,
    ],
    [
      'kind: end mill, diameter: 2, teeth: 4, flute-length: 9, shank: 6, reach: 20, neck: 1.9, edge-length: 9',
      /has edges of 9 mm, as long as its flutes and neck of 9 mm/,
    ],
  ])('{%s} cannot be', (text, message) => {
    expect(faults(text)).toEqual([typeof message === 'string' ? message : expect.stringMatching(message)])
  })
})

describe('what a shop file may leave out is filled in where it is read', () => {
  it('a drill has a point of 140° and a straight shank', () => {
    expect(tool('kind: drill, diameter: 2.2, flute-length: 14, reach: 28')).toEqual({
      name: 'one',
      kind: 'drill',
      diameter: 2.2,
      fluteLength: 14,
      reach: 28,
      shank: 2.2,
      point: 140,
    })
  })

  it('a bar is of steel unless its grade says carbide, heavy metal or damped', () => {
    const material = (grade: string) => tool(`kind: boring bar, diameter: 16, reach: 60, nose-radius: 0.4${grade}`)
    expect(material('')).toMatchObject({ material: 'steel' })
    expect(material(', grade: solid carbide')).toMatchObject({ material: 'carbide' })
    expect(material(', grade: heavy metal')).toMatchObject({ material: 'heavyMetal' })
    expect(material(', grade: damped on carbide')).toMatchObject({ material: 'damped' })
  })

  it('stones are read from their marking', () => {
    expect(tool('kind: hone, length: 60, teeth: 6, grade: CBN 280')).toMatchObject({
      stones: { count: 6, length: 60, abrasive: 'CBN', grit: 280 },
    })
  })

  it('a quill is known whole or not at all', () => {
    expect(tool('kind: internal wheel, diameter: 36, length: 25, shank: 20, reach: 80')).toMatchObject({
      quill: { diameter: 20, length: 80 },
    })
    expect(tool('kind: internal wheel, diameter: 36, length: 25')).not.toHaveProperty('quill')
  })
})
