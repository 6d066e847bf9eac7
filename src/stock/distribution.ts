import { normalBelow } from '../handbook/normal.ts'
import type { Spread } from '../limits.ts'
import type { Millimetre } from '../units.ts'

/** Chances of lengths that lie a fixed step apart. The weights add up to 1. */
export type Distribution = { readonly start: Millimetre; readonly step: Millimetre; readonly weights: Float64Array }

/** Chance that a bell-shaped number in [-1, 1] is below: three even spreads added. */
function bellBelow(value: number): number {
  const x = 1.5 * (Math.min(1, Math.max(-1, value)) + 1)
  if (x < 1) return x ** 3 / 6
  if (x < 2) return (-2 * x ** 3 + 9 * x ** 2 - 9 * x + 3) / 6
  return 1 - (3 - x) ** 3 / 6
}

function fromBelow(
  step: Millimetre,
  low: Millimetre,
  high: Millimetre,
  below: (value: Millimetre) => number,
): Distribution {
  const first = Math.round(low / step)
  const last = Math.round(high / step)
  const weights = new Float64Array(last - first + 1)
  let from = 0
  for (let cell = first; cell <= last; cell++) {
    const to = cell === last ? 1 : below((cell + 0.5) * step)
    weights[cell - first] = Math.max(0, to - from)
    from = to
  }
  return { start: first * step, step, weights }
}

/** Bell-shaped from least to most, as likely below the nominal as above it. */
export const bellShaped = (step: Millimetre, { least, nominal, most }: Spread): Distribution =>
  fromBelow(step, least, most, value =>
    value < nominal
      ? bellBelow((value - nominal) / Math.max(nominal - least, 1e-12))
      : bellBelow((value - nominal) / Math.max(most - nominal, 1e-12)),
  )

/** Where a distribution without an end is cut off: fewer than one in a hundred million lie beyond. */
const FAR = 6

/** Normal, with least and most so many sigma from the nominal, each on its own side. */
export const bellWithoutEnd = (step: Millimetre, { least, nominal, most }: Spread, sigmas: number): Distribution => {
  const [low, high] = [(nominal - least) / sigmas, (most - nominal) / sigmas]
  return fromBelow(step, nominal - FAR * low, nominal + FAR * high, value => {
    const sigma = value < nominal ? low : high
    return sigma < 1e-12 ? (value < nominal ? 0 : 1) : normalBelow((value - nominal) / sigma)
  })
}

/** How far off, when both components are normal and the figure is so many sigma (Rayleigh). */
export const offCentreWithoutEnd = (step: Millimetre, figure: Millimetre, sigmas: number): Distribution =>
  fromBelow(step, 0, (FAR * figure) / sigmas, value =>
    figure === 0 ? 1 : value <= 0 ? 0 : 1 - Math.exp(-(((sigmas * value) / figure) ** 2) / 2),
  )

/** Any length up to the most, all as likely. */
export const evenlySpread = (step: Millimetre, most: Millimetre): Distribution =>
  fromBelow(step, 0, most, value => (most === 0 ? 1 : Math.min(1, Math.max(0, value / most))))

/** Of the sum of two lengths that know nothing of each other, both in the same steps. */
export function added(a: Distribution, b: Distribution): Distribution {
  const weights = new Float64Array(a.weights.length + b.weights.length - 1)
  for (let i = 0; i < a.weights.length; i++) {
    const p = a.weights[i] ?? 0
    for (let j = 0; j < b.weights.length; j++) weights[i + j] = (weights[i + j] ?? 0) + p * (b.weights[j] ?? 0)
  }
  return { start: a.start + b.start, step: a.step, weights }
}

export const negated = ({ start, step, weights }: Distribution): Distribution => ({
  start: -(start + step * (weights.length - 1)),
  step,
  weights: weights.toReversed(),
})

/** Chance of less than a length; of the cell that holds it, the share below. */
export function chanceBelow({ start, step, weights }: Distribution, length: Millimetre): number {
  let chance = 0
  for (const [index, weight] of weights.entries()) {
    const share = (length - (start + step * (index - 0.5))) / step
    if (share <= 0) break
    chance += weight * Math.min(1, share)
  }
  return Math.min(1, Math.max(0, chance))
}

/** The length that a share of the distribution lies below; the cell that holds it is taken as even. */
export function lengthBelow({ start, step, weights }: Distribution, share: number): Millimetre {
  let below = 0
  for (const [index, weight] of weights.entries()) {
    if (weight > 0 && below + weight >= share) return start + step * (index - 0.5 + (share - below) / weight)
    below += weight
  }
  return start + step * (weights.length - 0.5)
}
