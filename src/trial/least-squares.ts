/** Least squares of one column with all others taken out of it: the same figures as of the whole fit, one at a time. */
export type Estimate = {
  /** What one unit of the column adds. */
  readonly value: number
  /** Standard error of it. */
  readonly se: number
  /** Standard deviation that the fit leaves. */
  readonly s: number
  /** Degrees of freedom. */
  readonly freedom: number
}

type Column = readonly number[]

const dot = (a: Column, b: Column): number => a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0)
const minus = (a: Column, b: Column, factor: number): Column => a.map((value, i) => value - factor * (b[i] ?? 0))

/** Below this share of its own length a column says nothing that the others have not said. */
const NOTHING = 1e-9

/** What is left of a column when a list of columns at right angles to each other is taken out. */
export const without = (column: Column, basis: readonly Column[]): Column =>
  basis.reduce((left, one) => minus(left, one, dot(left, one)), column)

/** The columns at right angles, each of length 1; one that adds nothing is left out. */
export function basisOf(columns: readonly Column[]): readonly Column[] {
  const basis: Column[] = []
  for (const column of columns) {
    // Twice, since once leaves dust where two columns lie close together.
    const left = without(without(column, basis), basis)
    const long = Math.sqrt(dot(left, left))
    if (long > NOTHING * Math.sqrt(dot(column, column))) basis.push(left.map(value => value / long))
  }
  return basis
}

/**
 * The estimate of `column` beside `others`; nothing where the others say all of it, or no freedom is left.
 * Source: textbook statistics (Frisch, Waugh, Lovell).
 */
export function estimateOf(y: Column, column: Column, others: readonly Column[]): Estimate | undefined {
  const basis = basisOf(others)
  const own = without(without(column, basis), basis)
  const weight = dot(own, own)
  const freedom = y.length - basis.length - 1
  if (weight <= NOTHING * dot(column, column) || freedom < 1) return undefined
  const rest = without(y, basis)
  const value = dot(own, rest) / weight
  const left = minus(rest, own, value)
  const s = Math.sqrt(dot(left, left) / freedom)
  return { value, se: s / Math.sqrt(weight), s, freedom }
}
