import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { chanceOfEnough } from '../../src/handbook/start-quantity.ts'
import batchSchema from '../../src/part/batch.schema.json' with { type: 'json' }
import { readPart } from '../../src/part/read-part.ts'
import { readShop } from '../../src/part/read-shop.ts'

const LINER = readFileSync('parts/OX-098-21.yaml', 'utf8')
const SHOP = readFileSync('parts/shop.yaml', 'utf8')
const faultsOf = (text: string) => readPart(text, 'part.yaml').findings.map(({ code }) => code)
const shopFaults = (text: string) => readShop(text, 'shop.yaml').findings.map(({ code }) => code)

describe('the reader takes no more than the formulas do', () => {
  it.each([
    ['a temper in the room of austenite', 'temper: 620', 'temper: 721'],
    ['a temper that tempers nothing', 'temper: 620', 'temper: 90'],
    ['an engine that hardly turns', 'speed: 4200', 'speed: 1e-308'],
    ['a liner of sixty metres', 'length: 92 ±0.05', 'length: 92000 ±0.05'],
    ['a roughness that no tool leaves', 'Ra: 0.8, runout', 'Ra: 52, runout'],
    ['a corner that no cutter is small enough for', 'width: 27, corner: 3', 'width: 27, corner: 1e-308'],
    ['the same in the plane of the cutter', 'corner: {cut: 1.5}', 'corner: {cut: 0.04}'],
    ['a finishing stock of 5 mm', 'hardening:', 'stock: {top: 5}\nhardening:'],
  ])('%s', (_, from, to) => {
    expect(faultsOf(LINER)).not.toContain('input/out-of-range')
    expect(faultsOf(LINER.replace(from, to))).toContain('input/out-of-range')
  })

  it.each([
    ['a clean-up of 2 mm to spare', 'saw-kerf: 1.6', 'saw-kerf: 1.6\n  clean-up-allowance: 2'],
    ['a drill with a point like a needle', 'point: 140', 'point: 20'],
    [
      'a regulating wheel like a button',
      'kind: regulating wheel, diameter: 300',
      'kind: regulating wheel, diameter: 30',
    ],
    ['an end mill like a hair', 'diameter: 1.5, teeth', 'diameter: 0.01, teeth'],
    ['a lathe with no power', 'speed-limit: 3500, power: 9', 'speed-limit: 3500, power: 0.000001'],
    ['a last soft cut within a centimetre', 'finish-turning-tolerance: 0.03', 'finish-turning-tolerance: 10'],
    ['a turned face without roughness', 'turned-roughness: 8', 'turned-roughness: 0'],
    ['a batch bent by 2 mm', 'bow: 0.010', 'bow: 2'],
  ])('%s', (_, from, to) => {
    expect(shopFaults(SHOP)).not.toContain('input/out-of-range')
    expect(shopFaults(SHOP.replace(from, to))).toContain('input/out-of-range')
  })

  it('as many pieces as the start quantity is reckoned for', () => {
    expect(batchSchema.properties.batch.properties.quantity.maximum).toBe(chanceOfEnough.inputs.Q.upTo)
  })
})
