/**
 * The complementary error function of a distance.
 *
 *     erfc x = 1 − 2/√π · e^(−x²) · Σ 2^k x^(2k+1) / (1·3·5·…·(2k+1))
 *
 * Range:   x ≥ 0, absolute error under 1e-15; past 6 it is nought to that error.
 * Source:  memory: Abramowitz & Stegun, 7.1.6.
 *
 * @example erfc(1) // 0.15729920705
 */
export function erfc(x: number): number {
  if (!(x >= 0)) throw new RangeError(`x must be from 0, got ${x}`)
  if (x > 6) return 0
  let term = x
  let sum = x
  for (let k = 1; term > sum * 1e-17; k++) {
    term *= (2 * x * x) / (2 * k + 1)
    sum += term
  }
  return 1 - (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * sum
}

/**
 * The distance at which the complementary error function has a value, found by halving.
 *
 * Range:   0 < y ≤ 1.
 * Source:  derived: inverse of `erfc`.
 *
 * @example erfcInverse(0.15151515) // 1.0141
 */
export function erfcInverse(y: number): number {
  if (!(y > 0 && y <= 1)) throw new RangeError(`y must be over 0 up to 1, got ${y}`)
  return rootOf(x => erfc(x) - y, 0, 6)
}

/** Where a falling function crosses nought between two ends, to the last digit. */
export function rootOf(falling: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to]
  for (let halvings = 0; halvings < 200 && low < high; halvings++) {
    const middle = (low + high) / 2
    if (middle === low || middle === high) break
    if (falling(middle) > 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}
