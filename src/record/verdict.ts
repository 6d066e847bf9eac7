import { normalBelow } from '../handbook/normal.ts'

/** A limit that is left out does not exist: the other side is without an end, never 0. */
export type Zone = { readonly lower?: number; readonly upper?: number; readonly guard: number }

/** Uncertainty counts against whoever makes the claim, so a reading near a limit settles nothing. */
export type Verdict = 'in limits' | 'in doubt' | 'out'

/** In thousandths of the last place that anybody reads: a reading typed equal to the edge of a zone is inside it. */
const whole = (value: number): number => Math.round(value * 1e6)

/**
 * In limits where the reading lies inside by the guard band, out where it lies outside by it. To release his own work the maker
 * needs "in limits"; to send back a firm's work the receiver needs "out". Source: ISO 14253-1 (read in secondary summaries).
 */
export function judge(value: number, { lower, upper, guard }: Zone): Verdict {
  const [y, g] = [whole(value), whole(guard)]
  const low = lower === undefined ? Number.NEGATIVE_INFINITY : whole(lower)
  const high = upper === undefined ? Number.POSITIVE_INFINITY : whole(upper)
  if (y < low - g || y > high + g) return 'out'
  return y >= low + g && y <= high - g ? 'in limits' : 'in doubt'
}

const RANK: Readonly<Record<Verdict, number>> = { 'in limits': 0, 'in doubt': 1, out: 2 }

/** A size is every local size: the worst place decides. */
export const worst = (verdicts: readonly Verdict[]): Verdict =>
  verdicts.reduce<Verdict>((so, next) => (RANK[next] > RANK[so] ? next : so), 'in limits')

/** Distance from the reading to the limit that it is in doubt about: a gauge less uncertain than this settles it. */
export function distanceToLimit(value: number, { lower, upper }: Zone): number {
  const ends = [lower, upper].filter(end => end !== undefined)
  return Math.min(...ends.map(end => Math.abs(value - end)))
}

/**
 * Chance that the piece lies within its limits, given the reading and nothing else: normal error of standard uncertainty u, nothing
 * known of the process. Source: JCGM 106:2012, 7.4.
 */
export function chanceInLimits(value: number, u: number, { lower, upper }: Omit<Zone, 'guard'>): number {
  const below = (limit: number | undefined, without: number) =>
    limit === undefined ? without : u > 0 ? normalBelow((limit - value) / u) : value <= limit ? 1 : 0
  return Math.max(0, below(upper, 1) - below(lower, 0))
}

/** Standard uncertainty of the mean of m readings: repeating takes down what repeats, not what the master brings. */
export const meanUncertainty = (repeatability: number, systematic: number, m: number): number =>
  Math.sqrt(repeatability ** 2 / m + systematic ** 2)
