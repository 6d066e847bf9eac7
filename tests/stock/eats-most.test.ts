import { expect, it } from 'vitest'
import { eatsMost } from '../../src/stock/margin-words.ts'
import type { SolvedChain } from '../../src/stock/solve-chain.ts'
import { finish, limits, OUTSIDE, OUTSIDE_GROWTH } from './chain-of.ts'

/** What an error of place or of size takes of the stock on diameter, and of the case, halved: geometry of a thin and a deep side. */
const most = (figures: { eccentricity: number; form: number }, growth = OUTSIDE_GROWTH, soft = 0.05) => {
  const chain = { ...OUTSIDE, finishes: [finish('grind-outside', { ...figures, needed: 0.03 })] }
  const solved: SolvedChain = {
    chain,
    growth,
    stocks: [0.3],
    soft: limits(56.2, 56.2 + soft),
    hardened: limits(56, 57),
    after: [OUTSIDE.final],
  }
  return eatsMost(solved, 0, () => undefined)
}

it('an axis that is off by e takes 2e on diameter, and e of the case when halved', () => {
  const eats = most({ eccentricity: 0.1, form: 0.01 })
  expect(eats?.input).toBe('run-out')
  expect(eats?.stock).toBeCloseTo(0.2, 9)
  expect(eats?.halved.stock).toBeCloseTo(0.1, 9)
  expect(eats?.halved.case).toBeCloseTo(0.1, 9)
})
it('an error of form does the same', () => {
  const eats = most({ eccentricity: 0.01, form: 0.08 })
  expect(eats?.input).toBe('ovality and bow')
  expect([eats?.stock, eats?.halved.case]).toEqual([expect.closeTo(0.16, 9), expect.closeTo(0.08, 9)])
})
it('growth that falls short by d on the radius takes 2d; its whole spread counts on the case', () => {
  const eats = most({ eccentricity: 0.01, form: 0.01 }, { ...OUTSIDE_GROWTH, least: -0.06, nominal: 0.01, most: 0.03 })
  expect(eats?.input).toBe('spread of growth')
  expect([eats?.stock, eats?.halved.case]).toEqual([expect.closeTo(0.14, 9), expect.closeTo(0.045, 9)])
})
it('a tolerance on diameter takes half of itself, before and after', () => {
  const eats = most({ eccentricity: 0.001, form: 0.001 }, OUTSIDE_GROWTH, 0.2)
  expect(eats?.input).toBe('tolerance before')
  expect([eats?.stock, eats?.halved.case]).toEqual([expect.closeTo(0.1, 9), expect.closeTo(0.05, 9)])
})
