import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { sizeByMaster, sizeByScale, soakFrom, soakTime } from '../../src/record/at-twenty.ts'
import { formOf, ovalOf } from '../../src/record/places-measured.ts'
import { chanceInLimits, distanceToLimit, judge, meanUncertainty, worst } from '../../src/record/verdict.ts'

describe('a reading', () => {
  test('has the chance of JCGM 106:2012, 7.4, to lie within its limits', () => {
    expect(chanceInLimits(13.6, 1.8, { lower: 12.5, upper: 16.3 })).toBeCloseTo(0.6626, 4)
  })

  test('of a 48 H6 bore near its limit', () => {
    const H6 = { lower: 48, upper: 48.016 }
    expect(chanceInLimits(48.014, 0.00148, H6)).toBeCloseTo(0.9117, 4)
    expect(chanceInLimits(48.014, 0.00067, H6)).toBeCloseTo(0.9986, 4)
    expect(chanceInLimits(48.015, 0.00148, H6)).toBeCloseTo(0.7504, 4)
    expect(chanceInLimits(48.015, 0.00067, H6)).toBeCloseTo(0.9322, 4)
  })

  test('is in limits inside both by the guard band, out outside by it, in doubt between', () => {
    const zone = { lower: 48, upper: 48.016, guard: 0.0015 }
    expect([47.9984, 47.9985, 48.0014, 48.0015, 48.0145, 48.0146, 48.0175, 48.0176].map(y => judge(y, zone))).toEqual([
      'out',
      'in doubt',
      'in doubt',
      'in limits',
      'in limits',
      'in doubt',
      'in doubt',
      'out',
    ])
    expect(distanceToLimit(48.0146, zone)).toBeCloseTo(0.0014, 6)
  })

  test('with one limit has no other: a run-out of 0 is in limits', () => {
    expect(judge(0, { upper: 0.015, guard: 0.001 })).toBe('in limits')
    expect(judge(0.42, { lower: 0.4, guard: 0.01 })).toBe('in limits')
  })

  test('a wider uncertainty never turns doubt into in limits', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 9.9, max: 10.1, noNaN: true }),
        fc.double({ min: 0, max: 0.02, noNaN: true }),
        fc.double({ min: 0, max: 0.02, noNaN: true }),
        (value, guard, more) => {
          const limits = { lower: 9.95, upper: 10.05 }
          const before = judge(value, { ...limits, guard })
          const after = judge(value, { ...limits, guard: guard + more })
          return before === after || after === 'in doubt'
        },
      ),
    )
  })

  test('the worst place decides about a size', () => {
    expect(worst(['in limits', 'out', 'in doubt'])).toBe('out')
    expect(worst(['in limits', 'in doubt'])).toBe('in doubt')
  })

  test('repeating takes down only what repeats', () => {
    expect(2 * meanUncertainty(0.8, 1.1, 5)).toBeCloseTo(2.31, 2)
  })
})

describe('places of a surface', () => {
  const at = (depth: number, values: readonly number[], directions: readonly number[]) =>
    values.map((value, index) => ({ depth, direction: directions[index] ?? 0, value }))

  test('four directions give the oval exactly, with where it lies', () => {
    const oval = ovalOf(at(12, [8, 9.1, 5, 3.5], [0, 45, 90, 135]), 1)
    expect(oval?.ovality).toBeCloseTo(6.353, 3)
    expect(oval?.at).toBeCloseTo(30.9, 1)
  })

  test('so do three at 60 degrees', () => {
    const oval = ovalOf(at(12, [8.43, 7.53, 3.55], [0, 60, 120]))
    expect(oval?.ovality).toBeCloseTo(5.997, 3)
    expect(oval?.at).toBeCloseTo(25, 1)
  })

  test('four directions that fit no oval give the largest less the smallest', () => {
    const form = formOf(at(12, [8, 20, 5, 3.5], [0, 45, 90, 135]))
    expect(form.ovality).toBe(16.5)
    expect(form.lowerBound).toBe(true)
  })

  test('three heights in two directions: the worked bore, µm over 48', () => {
    const form = formOf([...at(12, [8, 5], [0, 90]), ...at(46, [9.5, 7.5], [0, 90]), ...at(80, [12, 10], [0, 90])])
    expect(form.levels.map(({ mean }) => mean)).toEqual([6.5, 8.5, 11])
    expect(form.mean).toBeCloseTo(8.67, 2)
    expect(form.levels.map(({ ovality }) => ovality)).toEqual([3, 2, 2])
    expect([form.least, form.most]).toEqual([5, 12])
    expect(form.taper).toEqual({ by: 4.5, over: 68 })
    expect(form.barrel).toBeCloseTo(-0.25, 6)
    expect(form.cylindricityAtLeast).toBe(3.5)
  })
})

describe('at 20 °C', () => {
  const STEEL = 11.7e-6

  test('a bore set on a ring', () => {
    const size = sizeByMaster(
      { master: 48.0005, deviation: 0.014 },
      { temperature: 21.5, expansion: STEEL },
      { temperature: 24, expansion: STEEL },
    )
    expect(size).toBeCloseTo(48.0131, 4)
  })

  test('a piston read with a steel micrometer', () => {
    const gauge = { temperature: 23, expansion: STEEL }
    expect(sizeByScale(47.935, gauge, { temperature: 26, expansion: 19.5e-6 })).toBeCloseTo(47.93107, 5)
    expect(sizeByScale(47.935, gauge, { temperature: 26, expansion: 11e-6 })).toBeCloseTo(47.93352, 5)
  })

  test('a 3 mm steel wall soaks half an hour from 40 °C', () => {
    const tau = soakTime({ wall: 3, density: 7850, heat: 460, transfer: 10 })
    expect(tau).toBeCloseTo(9.03, 2)
    expect(soakFrom(tau, 40, 20.5)).toBeCloseTo(33.3, 1)
  })
})
