import { describe, expect, it } from 'vitest'
import { cheapestLife, TAYLOR_EXPONENT, taylorConstant, toolLife } from '../../src/handbook/tool-life.ts'
import { expectFigures } from './four-figures.ts'

describe("Taylor's law (memory: Taylor; figures derived, worked by hand)", () => {
  const C = taylorConstant.value({ vc: 175, T: 15, n: TAYLOR_EXPONENT.carbide })

  it('gives C and the lives at other speeds, carbide', () => {
    expectFigures(C, 344.4)
    expectFigures(toolLife.value({ C, vc: 140, n: 0.25 }), 36.62)
    expectFigures(toolLife.value({ C, vc: 200, n: 0.25 }), 8.793)
    expectFigures(toolLife.value({ C, vc: 225, n: 0.25 }), 5.489)
  })

  it('gives C and the lives at other speeds, high-speed steel', () => {
    const slow = taylorConstant.value({ vc: 24.4, T: 60, n: 0.125 })
    expectFigures(slow, 40.71)
    expectFigures(toolLife.value({ C: slow, vc: 20, n: 0.125 }), 294.5)
    expectFigures(toolLife.value({ C: slow, vc: 30, n: 0.125 }), 11.49)
  })

  it('has its least cost at 12 min where an edge costs three minutes and its change one', () => {
    expectFigures(cheapestLife.value({ n: 0.25, tc: 1, Ce: 3 }), 12)
  })

  it('gives back the life that the constant was made from', () => {
    expect(toolLife.value({ C, vc: 175, n: 0.25 })).toBeCloseTo(15, 10)
  })
})
