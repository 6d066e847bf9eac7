import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { partFrom, readPart } from '../../src/part/read-part.ts'
import { readShop, shopFrom } from '../../src/part/read-shop.ts'
import { openForNumbers, setValues } from '../../src/part/set-values.ts'

const LINER = readFileSync('parts/OX-098-21.yaml', 'utf8')
const SHOP = readFileSync('parts/shop.yaml', 'utf8')
// Places move by the length of the number: all else must be the same.
const plain = (read: object) =>
  JSON.parse(JSON.stringify({ ...read, findings: [] }), (key, value) => (key === 'at' ? undefined : value))

const PART_PATHS = ['stock.bore', 'hardening.depth', 'ports.exhaust.opens', 'body.bore.Ra', 'engine.speed']
const SHOP_PATHS = ['habits.turned-roughness', 'fixture.face-distance', 'machines.lathe.power', 'measured.0.ovality']

describe('a file opened once for many numbers', () => {
  it('reads as the file with the number written into it, places apart', () => {
    fc.assert(
      fc.property(fc.constantFrom(...PART_PATHS), fc.integer({ min: 1, max: 20_000 }), (path, thousandths) => {
        const value = thousandths / 100
        const { withNumber } = openForNumbers(LINER, 'part.yaml', path, 'part')
        const { text = '' } = setValues(LINER, 'part.yaml', [{ path, value: String(value) }])
        if (!withNumber) throw new Error(path)
        expect(plain(partFrom(withNumber(value)))).toEqual(plain(readPart(text, 'part.yaml')))
      }),
      { numRuns: 60 },
    )
  })

  it.each(SHOP_PATHS)('%s of a shop file', path => {
    const { withNumber } = openForNumbers(SHOP, 'shop.yaml', path, 'shop')
    const { text = '' } = setValues(SHOP, 'shop.yaml', [{ path, value: '0.02' }], 'shop')
    if (!withNumber) throw new Error(path)
    expect(plain(shopFrom(withNumber(0.02)))).toEqual(plain(readShop(text, 'shop.yaml')))
  })

  it('says which path there is not', () => {
    const { withNumber, findings } = openForNumbers(LINER, 'part.yaml', 'stock.boar', 'part')
    expect(withNumber).toBeUndefined()
    expect(findings).toMatchObject([{ code: 'input/unknown-setting', hint: expect.stringContaining('bore') }])
  })
})
