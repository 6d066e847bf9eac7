import { expect } from 'vitest'

/** The value agrees with a printed figure to half a unit of its last digit. */
export function expectDigits(value: number, printed: string): void {
  const decimals = printed.split('.')[1]?.length ?? 0
  expect(Math.abs(value - Number(printed)), `${value} against ${printed}`).toBeLessThanOrEqual(
    0.5 * 10 ** -decimals + 1e-9,
  )
}
