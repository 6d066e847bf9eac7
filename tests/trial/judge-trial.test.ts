import { readFileSync } from 'node:fs'
import jstat from 'jstat'
import { describe, expect, it } from 'vitest'
import { airDensity, vapourPressure } from '../../src/handbook/air.ts'
import { armPower, fuelFlow, steadyEnd, steadyTime, tipMach, waterPower } from '../../src/handbook/engine-load.ts'
import { CORRECTIONS, referenceSpeed } from '../../src/handbook/power-correction.ts'
import { readTrial } from '../../src/part/read-trial.ts'
import type { Trial } from '../../src/part/trial.ts'
import { budgetOf } from '../../src/trial/budget.ts'
import { fittingsToSettle, halfInterval, smallestShown } from '../../src/trial/fittings-needed.ts'
import { judgeTrial } from '../../src/trial/judge-trial.ts'
import { ordersOf, planTrial } from '../../src/trial/plan-trial.ts'
import { verdictOf } from '../../src/trial/verdict-of.ts'

const demo = readFileSync('parts/trial-2655.yaml', 'utf8')
const trialOf = (text: string): Trial => {
  const { trial, findings } = readTrial(text, 'trial.yaml')
  if (!trial) throw new Error(JSON.stringify(findings))
  return trial
}
const judged = (text: string) => {
  const { result, findings } = judgeTrial(trialOf(text))
  if (!result) throw new Error(JSON.stringify(findings))
  return result
}

describe('the worked trial on a pump, computed twice by hand', () => {
  const { main } = judged(demo.replace(/budget:[\s\S]*?(?=runs:)/, ''))
  const [b] = main.differences

  it('has the difference of the fittings with the drift taken out', () => {
    expect(main.fittings.map(({ mean }) => mean)).toEqual([
      4185.5, 4194.5, 4202.5, 4174.5, 4201.5, 4167.5, 4161.5, 4180,
    ])
    expect(b?.difference).toBeCloseTo(22.375, 3)
    expect(b?.s).toBeCloseTo(5.835, 3)
    expect(b?.se).toBeCloseTo(4.126, 3)
    expect(b?.half).toBeCloseTo(10.61, 2)
    expect(b?.p).toBeCloseTo(0.0029, 4)
    expect(main.drift[0]?.each).toBeCloseTo(-3.351, 3)
  })
  it('has the power that goes with it', () => {
    expect(100 * (b?.power?.difference ?? 0)).toBeCloseTo(1.62, 2)
    expect(100 * (b?.power?.half ?? 0)).toBeCloseTo(0.76, 2)
  })
  it('has the interval that the drift left in would give, the spreads, and the permutation', () => {
    expect(b?.withoutDrift?.half).toBeCloseTo(17.9, 2)
    expect(main.spreadOfRuns).toBeCloseTo(5.14, 2)
    expect(b?.ofFittings).toBeCloseTo(4.56, 2)
    expect(b?.power?.permutation).toEqual({ labels: 70, byDifference: 4 / 70, byT: 2 / 70 })
  })
  it('has the budget of the worked example, with its degrees of freedom', () => {
    const whole = judged(demo).main.differences[0]?.power
    expect(100 * (whole?.budget.shares[0]?.u ?? 0)).toBeCloseTo(0.297, 3)
    expect(whole?.budget.freedom).toBe(6)
    expect(100 * (whole?.half ?? 0)).toBeCloseTo(0.78, 2)
  })
})

it('gives the interval of a general library (jstat) for the same fit', () => {
  const b = judged(demo).main.differences[0]
  expect(b?.half).toBeCloseTo(jstat.studentt.inv(0.975, 5) * (b?.se ?? 0), 6)
  expect(b?.p).toBeCloseTo(2 * (1 - jstat.studentt.cdf((b?.difference ?? 0) / (b?.se ?? 1), 5)), 9)
})

describe('words', () => {
  const words = (delta: number, half: number, worthwhile = 1) => {
    // One share with so many degrees of freedom that the half is 1.96 of it.
    const budget = budgetOf([{ what: 'fittings', u: half / 195.996, freedom: 1e6 }])
    return verdictOf({ letter: 'B', delta: delta / 100, budget, worthwhile: worthwhile / 100, confidence: 0.95 }).says
  }
  it.each([
    [1.62, 0.76, 'B gives more power than A: between 0.86 and 2.38 %'],
    [-1.62, 0.76, 'B gives less power than A: between 0.86 and 2.38 %'],
    [0.5, 0.3, 'B gives more power than A: between 0.20 and 0.80 %, but less than the 1 % that matters'],
    [0.25, 0.7, 'B and A are alike within ±1 % of power'],
    [0.4, 0.9, 'B is not shown to differ from A: it may be anything from −0.50 to +1.30 % of power'],
  ])('%f ± %f', (delta, half, says) => expect(words(delta, half)).toBe(says))

  it('shows equivalence by two one-sided tests, worked example', () => {
    const budget = budgetOf([{ what: 'fittings', u: 0.00297, freedom: 5 }])
    expect(0.25 - 100 * budget.half(0.9)).toBeCloseTo(-0.348, 3)
    expect(0.25 + 100 * budget.half(0.9)).toBeCloseTo(0.848, 3)
    expect(verdictOf({ letter: 'B', delta: 0.0025, budget, worthwhile: 0.01, confidence: 0.95 }).outcome).toBe('alike')
  })
})

describe('how many fittings', () => {
  it('settle it, worked examples', () => {
    expect(fittingsToSettle({ s: 0.42, worthwhile: 1 })).toBe(7)
    expect(fittingsToSettle({ s: 0.42, worthwhile: 2 })).toBe(4)
    expect(
      fittingsToSettle({ s: 0.42, worthwhile: 1, others: [{ what: 'load', u: 0.5, freedom: 50 }] }),
    ).toBeUndefined()
  })
  // Exact and simulated, in units of the spread of a fitting's mean.
  it.each([
    [2, 16.3, 21.0, 12.7],
    [3, 3.47, 4.09, 2.6],
    [4, 2.48, 2.89, 1.82],
    [6, 1.82, 2.11, 1.31],
    [8, 1.52, 1.76, 1.08],
    [16, 1.02, 1.19, 0.72],
  ])('%i each show so much', (n, eighty, ninety, half) => {
    const digits = n === 2 ? 1 : 2
    expect(smallestShown(n, 0.8)).toBeCloseTo(eighty, digits)
    expect(smallestShown(n, 0.9)).toBeCloseTo(ninety, digits)
    expect(halfInterval(n)).toBeCloseTo(half, digits)
  })
})

describe('air', () => {
  const air = (t: number, hPa: number, humidity: number) => {
    const p_v = vapourPressure.value({ t, phi: humidity / 100 })
    return { p: hPa / 10, p_d: hPa / 10 - p_v / 1000, t, density: airDensity.value({ p: 100 * hPa, p_v, t }) }
  }
  it('has the worked densities', () => {
    expect(vapourPressure.value({ t: 20, phi: 1 })).toBeCloseTo(2338.1, 1)
    expect(air(20, 1013.25, 50).density).toBeCloseTo(1.19883, 5)
    expect(air(18, 1008.4, 61).density).toBeCloseTo(1.20086, 5)
    // Published: 1.156 at 30 °C, 1013.25 hPa, 50 %.
    expect(air(30, 1013.25, 50).density).toBeCloseTo(1.156, 2)
  })
  it('lies within 0.1 % of the CIPM-2007 equation from 5 to 35 °C', () => {
    for (const t of [5, 15, 20, 27, 35])
      for (const hPa of [940, 1013.25, 1040])
        for (const humidity of [0, 40, 90]) {
          const ours = air(t, hPa, humidity).density
          expect(Math.abs(ours / cipm2007(t, 100 * hPa, humidity / 100) - 1)).toBeLessThan(1e-3)
        }
  })
  it.each([
    [18, 1008.4, 61, 0.9793, 0.9792, 1.0014, 1 / 1.0201],
    [30, 1005, 60, 1.0226, 1.0233, 1.0253, 1 / 0.9771],
  ])('is corrected at %f °C as worked by hand', (t, hPa, humidity, ...factors) => {
    const here = air(t, hPa, humidity)
    const rules = ['SAE J1349', 'ISO 1585', 'DIN 70020', 'ISO 3046-1'] as const
    rules.forEach((rule, i) => {
      expect(CORRECTIONS[rule].factor(here)).toBeCloseTo(factors[i] ?? 0, 4)
    })
  })
  it('moves the factor as published by the worked slopes', () => {
    const factor = CORRECTIONS['SAE J1349'].factor
    expect(100 * (factor({ p: 98.9, p_d: 98.9, t: 25 }) - 1)).toBeCloseTo(0.119, 3)
    expect(100 * (factor({ p: 99, p_d: 99, t: 26 }) - 1)).toBeCloseTo(0.198, 3)
  })
  it('has the speeds of the worked day and day', () => {
    const at = (n: number, CF: number, rho: number, q: number) => referenceSpeed.value({ n, CF, r: rho / 1.15673, q })
    expect(at(11_120, 0.94936, 1.24223, 1)).toBeCloseTo(11_228, 0)
    expect(at(11_020, 1.02255, 1.14383, 1)).toBeCloseTo(11_081, 0)
    expect(at(11_120, 0.94936, 1.24223, 0)).toBeCloseTo(11_192, 0)
    expect(at(11_020, 1.02255, 1.14383, 0)).toBeCloseTo(11_061, 0)
  })
})

it('has the loads of the worked examples', () => {
  expect(1000 * waterPower.value({ Q: 8.5, H: 32, eta: 0.62 })).toBeCloseTo(4302, 0)
  expect(armPower.value({ F: 21.4, F_0: 0, L: 250, n: 4180 })).toBeCloseTo(2.3418, 4)
  expect(fuelFlow.value({ V: 25, t: 52.4, rho: 0.742 })).toBeCloseTo(1.2744, 4)
  expect(steadyEnd.value({ T_1: 128, T_2: 139, T_3: 144.5 })).toBeCloseTo(150, 6)
  expect(steadyTime.value({ dt: 60, r: 0.5 })).toBeCloseTo(86.6, 1)
  expect(tipMach.value({ D: 254, n: 11_000, t: 15 })).toBeCloseTo(0.43, 3)
})

/** Density of moist air, kg/m³. Source: CIPM-2007, Metrologia 45 (2008) 149; constants from memory. */
function cipm2007(t: number, p: number, h: number): number {
  const T = t + 273.15
  const psv = Math.exp(1.2378847e-5 * T * T - 1.9121316e-2 * T + 33.93711047 - 6343.1645 / T)
  const x = ((1.00062 + 3.14e-8 * p + 5.6e-7 * t * t) * h * psv) / p
  const bracket =
    1.58123e-6 - 2.9331e-8 * t + 1.1043e-10 * t * t + (5.707e-6 - 2.051e-8 * t) * x + (1.9898e-4 - 2.376e-6 * t) * x * x
  const Z = 1 - (p / T) * bracket + (p / T) ** 2 * (1.83e-11 - 0.765e-8 * x * x)
  return ((3.48374e-3 * p) / (Z * T)) * (1 - 0.378 * x)
}

describe('the order of fittings', () => {
  // Derived: an order keeps a power of time out of the difference where the signed sum of that power is nought.
  const leanOf = (order: string, power: number): number =>
    [...order.replaceAll(' ', '')].reduce(
      (sum, letter, t) => sum + (letter === 'B' ? 1 : letter === 'A' ? -1 : 0) * t ** power,
      0,
    )
  it('keeps out a linear drift, with four each a square, with eight a cube', () => {
    expect(ordersOf(['A', 'B'], 2)).toEqual(['ABBA', 'BAAB'])
    expect(ordersOf(['A', 'B'], 4)).toEqual(['ABBA BAAB', 'BAAB ABBA'])
    for (const each of [2, 4, 6, 8, 10, 12])
      for (const order of ordersOf(['A', 'B'], each)) expect(leanOf(order, 1)).toBe(0)
    for (const order of ordersOf(['A', 'B'], 4)) expect(leanOf(order, 2)).toBe(0)
    for (const order of ordersOf(['A', 'B'], 8)) for (const power of [2, 3]) expect(leanOf(order, power)).toBe(0)
  })
  it('fits three liners as often as each other, a linear drift out of all', () => {
    for (const order of ordersOf(['A', 'B', 'C'], 4)) {
      expect(['A', 'B', 'C'].map(letter => order.split(letter).length - 1)).toEqual([4, 4, 4])
      expect(leanOf(order, 1)).toBe(0)
      expect(leanOf(order.replaceAll('B', 'x').replaceAll('C', 'B'), 1)).toBe(0)
    }
  })
  it('is as long as the difference that matters asks', () => {
    const trial = trialOf(
      demo
        .replace('  fittings-each: 4\n  order: ABBABAAB ', '  spread: 0.42 %\n #')
        .replace(/budget:[\s\S]*?(?=runs:)/, ''),
    )
    expect(planTrial(trial)).toMatchObject({ each: 8, orders: ['ABBA BAAB BAAB ABBA', 'BAAB ABBA ABBA BAAB'] })
  })
})
