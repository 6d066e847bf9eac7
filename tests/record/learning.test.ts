import { describe, expect, test } from 'vitest'
import { learnGrowth } from '../../src/record/learnt-growth.ts'
import { leaningMost, ovalityFromLengths, ovalityFromTwo, ovalityFromVectors } from '../../src/record/learnt-ovality.ts'

// Worked examples of learning from pairs, µm: computed twice, independently, in the reference of records.
const BEFORE = [62, 58.5, 66, 71.5, 64, 60.5, 69, 57, 63.5, 67.5, 61, 65.5]
const AFTER = [84, 79.5, 90, 94.5, 83, 80.5, 92, 82, 84.5, 89.5, 85, 85.5]
const PAIRS = BEFORE.map((before, index) => ({ serial: String(index + 1), before, after: AFTER[index] ?? 0 }))

describe('growth from pairs', () => {
  test('the worked load of twelve', () => {
    const learnt = learnGrowth({ kind: 'outside', pairs: PAIRS, more: 18 })
    expect(learnt.mean).toBeCloseTo(11, 2)
    expect(learnt.spread).toBeCloseTo(0.929, 3)
    expect(learnt.ofMean).toBeCloseTo(0.59, 3)
    expect(learnt.ofNext).toBeCloseTo(2.129, 3)
    expect(learnt.ofAll).toBeCloseTo(3.708, 3)
    expect(learnt.exchanged).toBeUndefined()
  })

  test('as two lists it would stand three times as wide', () => {
    expect(learnGrowth({ kind: 'outside', pairs: PAIRS, more: 18 }).unpaired).toBeCloseTo(1.905, 3)
  })

  test('less what the gauge puts in', () => {
    expect(learnGrowth({ kind: 'outside', pairs: PAIRS, more: 18, repeatability: 0.6 }).own).toBeCloseTo(0.827, 3)
  })

  test('a bore that closes grows', () => {
    const pairs = PAIRS.map(({ serial, before, after }) => ({ serial, before: after, after: before }))
    expect(learnGrowth({ kind: 'bore', pairs: pairs, more: 18 }).mean).toBeCloseTo(11, 2)
  })

  test('two serials whose later sizes are exchanged are named', () => {
    const exchanged = PAIRS.map((pair, index) => ({
      ...pair,
      after: AFTER[index === 3 ? 7 : index === 7 ? 3 : index] ?? 0,
    }))
    expect(learnGrowth({ kind: 'outside', pairs: exchanged, more: 18 }).exchanged).toEqual(['4', '8'])
  })
})

describe('ovality', () => {
  test('from lengths alone', () => {
    const learnt = ovalityFromLengths([6.5, 11, 4, 9, 14.5, 7.5, 3, 10, 8.5, 5.5, 12, 7], 18)
    expect(learnt.sigma).toBeCloseTo(6.229, 3)
    expect(learnt.most).toBeCloseTo(15.25, 2)
    expect(learnt.surely).toBeCloseTo(20.07, 2)
    expect(learnt.next).toBeCloseTo(16.25, 2)
    expect(learnt.all).toBeCloseTo(24.28, 2)
  })

  test('from two directions', () => {
    const learnt = ovalityFromTwo([5, -2.5, 3.5, -8, 1, 6.5, -3, 0.5, 4, -9.5, 2, -6])
    expect(learnt.sigma).toBeCloseTo(5.052, 3)
    expect(learnt.asRead).toBeCloseTo(9.9, 2)
    expect(learnt.most).toBeCloseTo(12.37, 2)
  })

  test('that leans one way', () => {
    expect(leaningMost(10, 3, 0.95)).toBeCloseTo(15.3, 2)
    const a = [6.1, 7.1, 3.9, 1.6, 12.6, 5.7, -1.5, 5, 8.4, -4.2, 11, 5.7]
    const c = [2.2, 8.4, -0.7, 8.9, 7.2, 4.8, -2.6, 8.7, 1.5, 3.5, 4.9, 4.1]
    const learnt = ovalityFromVectors(
      a.map((value, index) => ({ a: value, c: c[index] ?? 0 })),
      18,
    )
    expect(learnt.leans?.by).toBeCloseTo(6.65, 2)
    expect(learnt.leans?.at).toBeCloseTo(19.8, 1)
    expect(learnt.sigma).toBeCloseTo(4.28, 2)
    expect(learnt.leans?.F).toBeCloseTo(14.46, 1)
    expect(learnt.leans?.most).toBeCloseTo(14.6, 1)
    expect(learnt.leans?.all).toBeCloseTo(24.2, 1)
  })
})
