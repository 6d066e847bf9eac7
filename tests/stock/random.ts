import { probit } from 'simple-statistics'

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

/** How the numbers of a piece are drawn: each from least to most, and how far it may be off centre or out of true of one. */
export type Draws = {
  /** About nothing; one is the limit, or the end of the range of growth. */
  readonly size: (random: Random) => number
  readonly growth: (random: Random) => number
  readonly runout: (random: Random) => number
  readonly form: (random: Random) => number
}

const clear = (random: Random): number => Math.min(1 - 1e-9, Math.max(1e-9, random()))
/** In two directions that know nothing of each other. */
const rayleigh = (random: Random): number => Math.sqrt(-2 * Math.log(1 - clear(random)))

/**
 * Without ends, as chances are stated: sizes at three sigma, growth of a record at 1.96 (19 of 20), run-out at three, ovality and
 * bow at 2.448 (95 % of a Rayleigh). Normal numbers by the statistics library's own quantiles.
 */
export const WITHOUT_END: Draws = {
  size: random => probit(clear(random)) / 3,
  growth: random => probit(clear(random)) / 1.96,
  runout: random => rayleigh(random) / 3,
  form: random => rayleigh(random) / 2.448,
}

/** Off centre by two bell-shaped components, never more than 1: how far a set-up runs out. */
export const offCentre = (random: Random): number => Math.sqrt(-2 * Math.log(1 - random() * WITHIN)) / 3

/** Share of a Rayleigh distribution of sigma 1/3 that lies within 1. */
const WITHIN = 1 - Math.exp(-4.5)

/** None beyond its limits: pieces that were sorted out are gone. */
export const AT_THE_LIMITS: Draws = { size: bell, growth: bell, runout: offCentre, form: random => random() }
