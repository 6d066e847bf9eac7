import fc from 'fast-check'
import { erf } from 'mathjs'
import { expect, it } from 'vitest'
import { erfc, erfcInverse } from './second-models/error-function.ts'
import { SIGMOID_MIDDLE, sigmoidWidth } from './second-models/hardness-profile.ts'
import { expectDigits } from './to-the-digits.ts'

it('is one less the error function of a general maths library', () => {
  const agrees = fc.property(fc.double({ min: 0, max: 7, noNaN: true }), x => {
    expect(Math.abs(erfc(x) - (1 - erf(x)))).toBeLessThan(1e-14)
  })
  fc.assert(agrees)
  expectDigits(erfc(1), '0.15729920705')
})

it('is undone by its inverse', () => {
  for (const y of [1, 0.5, 0.15151515, 1e-6]) expect(erfc(erfcInverse(y))).toBeCloseTo(y, 12)
  expectDigits(erfcInverse(0.15151515), '1.0141')
})

it('refuses what lies outside its range', () => {
  expect(() => erfc(-1)).toThrow(RangeError)
  expect(() => erfcInverse(0)).toThrow(RangeError)
  expect(() => erfcInverse(1.1)).toThrow(RangeError)
})

it('finds the width of a sigmoid as far as it says, and no farther', () => {
  const N = 0.3
  const q = sigmoidWidth(N, 0.89)
  const z_0 = SIGMOID_MIDDLE * N
  expect((1 + Math.exp(-z_0 / q)) / (1 + Math.exp((N - z_0) / q))).toBeCloseTo(0.89, 9)
  expect(() => sigmoidWidth(N, 0.95)).toThrow(RangeError)
})
