/** Numbers in [0, 1), the same ones for the same seed. */
export type Random = () => number

/** Mulberry32: 32 bits of state, for pieces of a batch and not for secrets. Source: T. Ettinger, public domain. */
export function seededRandom(seed: number): Random {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}

/**
 * Bell-shaped in [-1, 1] with a standard deviation of exactly a third: the sum of three even spreads of a third each. A
 * process that fills its tolerance with three sigma a side, whose pieces outside the limits have been sorted out.
 */
export const bell = (random: Random): number => (2 * (random() + random() + random())) / 3 - 1

/** Off centre by two bell-shaped components, never more than 1: how far a set-up runs out. */
export const offCentre = (random: Random): number => Math.sqrt(-2 * Math.log(1 - random() * WITHIN)) / 3

/** Share of a Rayleigh distribution of sigma 1/3 that lies within 1. */
const WITHIN = 1 - Math.exp(-4.5)
