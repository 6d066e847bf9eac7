import { expect, it } from 'vitest'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { cut, partOf, stateOf, tube, withoutTools } from './hand-made.ts'

it('plans with a drill that is sold and names it, where the works has none', () => {
  const state = stateOf('rough-turn', tube(65, 0), tube(61, 46))
  const { findings } = cut(partOf(), state, withoutTools(BUILT_IN_SHOP, 'drill'))
  const [message = ''] = findings.flatMap(({ code, message }) => (code === 'cutting/to-get' ? [message] : []))
  const [, most, over, deep] = /^to get: drill ([\d.]+), (\d+) D; ([\d.]+) mm deep/.exec(message) ?? []
  expect(Number(deep)).toBeGreaterThanOrEqual(80)
  // What is left for the boring bar must still round the hole: under the finished 46 by some, common practice, no source.
  expect(Number(most)).toBeLessThan(46)
  expect(Number(most)).toBeGreaterThan(40)
  expect(Number(over) * Number(most)).toBeGreaterThan(Number(deep))
  expect(findings.filter(({ severity }) => severity === 'error')).toEqual([])
})
