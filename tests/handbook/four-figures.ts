import { expect } from 'vitest'

/** The value agrees with a figure printed to so many significant figures: half a unit of the last. */
export function expectFigures(value: number, printed: number, figures = 4): void {
  const unit = 10 ** (Math.floor(Math.log10(Math.abs(printed))) - figures + 1)
  expect(Math.abs(value - printed), `${value} against ${printed}`).toBeLessThanOrEqual(unit * (0.5 + 1e-9))
}
