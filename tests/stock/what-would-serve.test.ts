import { expect, it } from 'vitest'
import { known, worked } from '../../src/known.ts'
import { whatWouldServe } from '../../src/stock/what-would-serve.ts'
import { finish, OUTSIDE } from './chain-of.ts'

// A stock has to clean the thin side and to spare the deep one: eccentricity and form count on both, twice as much as what
// is missing; a tolerance on diameter counts half on a side (geometry).
const served = (
  figures: { eccentricity: number; form: number; tolerance: number },
  missing: number,
): readonly string[] =>
  whatWouldServe(
    {
      ...OUTSIDE,
      softTolerance: known(figures.tolerance, 'mm', worked('turned')),
      finishes: [finish('grind-outside', { ...figures, needed: 0.03 })],
    },
    missing,
    0.2,
  ).split('; ')

it('takes half of what is missing off an eccentricity or an error of form, and twice off a tolerance on diameter', () => {
  expect(served({ eccentricity: 0.02, form: 0.03, tolerance: 0.05 }, 0.012)).toEqual([
    'one of these would do: 0.012 mm less case asked',
    'eccentricity 0.014 for 0.020 mm',
    'form error 0.024 for 0.030 mm',
    'turned to 0.026 for 0.050 mm',
  ])
})

it('offers nothing that would have to be perfect', () => {
  expect(served({ eccentricity: 0.01, form: 0.01, tolerance: 0.04 }, 0.02)).toHaveLength(1)
  expect(served({ eccentricity: 0.011, form: 0.01, tolerance: 0.04 }, 0.02)).toContain(
    'eccentricity 0.001 for 0.011 mm',
  )
  expect(served({ eccentricity: 0.01, form: 0.011, tolerance: 0.04 }, 0.02)).toContain('form error 0.001 for 0.011 mm')
  expect(served({ eccentricity: 0.01, form: 0.01, tolerance: 0.041 }, 0.02)).toContain('turned to 0.001 for 0.041 mm')
})

it('offers no eccentricity or form of a surface that is not cut again', () => {
  const chain = { ...OUTSIDE, finishes: [], softTolerance: known(0.01, 'mm', worked('turned')) }
  expect(whatWouldServe(chain, 0.02, 0.2)).toBe('one of these would do: 0.020 mm less case asked')
})

// The order is the deepest there may be: no deeper one is offered, and no less case asked than none.
it('says what else to do where nothing would serve by itself', () => {
  const chain = { ...OUTSIDE, finishes: [], softTolerance: known(0.01, 'mm', worked('turned')) }
  expect(whatWouldServe(chain, 0.2, 0.2)).toMatch(/^nothing would do by itself: make the wall thicker/)
})
