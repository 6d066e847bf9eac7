import { expect, it } from 'vitest'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { cut, partOf, stateOf, tube, withoutTools } from './hand-made.ts'

it('names a missing drill to the hundredth, as drills are sold, and how deep it must go beyond the length', () => {
  const state = stateOf('rough-turn', tube(65, 0), tube(61, 46))
  const { findings } = cut(partOf(), state, withoutTools(BUILT_IN_SHOP, 'drill'))
  const [message = ''] = findings.flatMap(({ code, message }) => (code === 'cutting/no-drill' ? [message] : []))
  const [, deep, most] = /goes ([\d.]+) mm deep at ([\d.]+) mm or less/.exec(message) ?? []
  expect(Number(deep)).toBeGreaterThanOrEqual(80)
  // What is left for the boring bar must still round the hole: under the finished 46 by some, common practice, no source.
  expect(Number(most)).toBeLessThan(46)
  expect(Number(most)).toBeGreaterThan(40)
  expect(most).toMatch(/^\d+(\.\d{1,2})?$/)
})
