import { basisOf, without } from './least-squares.ts'

/** How often labels put on otherwise would show as large a difference. A look beside the interval, no verdict: the order was not drawn from all. */
export type Permutation = {
  readonly labels: number
  /** Share of the labels with a difference of the means as large. */
  readonly byDifference: number
  /** The same by Student's t of the fit. */
  readonly byT: number
}

/** More labels than this are not tried. */
const MOST = 200_000
/** Figures that agree but for the last digits count as alike. */
const SLACK = 1e-9

/**
 * Of fittings `y` those marked in `among` carry one of two labels, `isNew` the one. Labels change places within a block alone.
 * `others` are the columns of the fit beside that of the label.
 */
export function permutationOf({
  y,
  isNew,
  among,
  blocks,
  others,
}: {
  readonly y: readonly number[]
  readonly isNew: readonly boolean[]
  readonly among: readonly boolean[]
  readonly blocks: readonly string[]
  readonly others: readonly (readonly number[])[]
}): Permutation | undefined {
  const groups = [...new Set(blocks)].map(block => {
    const places = y.flatMap((_, i) => (blocks[i] === block && among[i] ? [i] : []))
    return { places, count: places.filter(i => isNew[i]).length }
  })
  const labels = groups.reduce((product, { places, count }) => product * choose(places.length, count), 1)
  if (labels > MOST) return undefined
  const basis = basisOf(others)
  const rest = without(y, basis)
  const all = rest.reduce((sum, value) => sum + value * value, 0)
  if (all === 0) return undefined
  const judged = (chosen: readonly number[]): readonly [number, number] => {
    const label = y.map(() => 0)
    for (const i of chosen) label[i] = 1
    const [sum, oldSum] = y.reduce(
      ([a, b], value, i) => (label[i] === 1 ? [a + value, b] : among[i] ? [a, b + value] : [a, b]),
      [0, 0],
    )
    const old = among.filter(Boolean).length - chosen.length
    const own = without(label, basis)
    const weight = own.reduce((total, value) => total + value * value, 0)
    const share = own.reduce((total, value, i) => total + value * (rest[i] ?? 0), 0) ** 2
    // The share of what is left that the label takes: it rises with |t|, and has no root and no freedom in it.
    return [Math.abs(sum / chosen.length - oldSum / old), weight < SLACK ? 0 : share / weight / all]
  }
  const [difference, t] = judged(y.flatMap((_, i) => (isNew[i] ? [i] : [])))
  let [asFar, asLarge] = [0, 0]
  for (const chosen of chosenOf(groups)) {
    const [otherDifference, otherT] = judged(chosen)
    if (otherDifference >= difference * (1 - SLACK)) asFar += 1
    if (otherT >= t * (1 - SLACK)) asLarge += 1
  }
  return { labels, byDifference: asFar / labels, byT: asLarge / labels }
}

function choose(n: number, k: number): number {
  let result = 1
  for (let i = 1; i <= k; i++) result = (result * (n - k + i)) / i
  return Math.round(result)
}

/** Every way to choose so many places of every group. */
function* chosenOf(
  groups: readonly { readonly places: readonly number[]; readonly count: number }[],
): Generator<readonly number[]> {
  const [first, ...others] = groups
  if (!first) {
    yield []
    return
  }
  for (const chosen of combinations(first.places, first.count))
    for (const rest of chosenOf(others)) yield [...chosen, ...rest]
}

function* combinations(places: readonly number[], count: number): Generator<readonly number[]> {
  if (count === 0) {
    yield []
    return
  }
  for (let i = 0; i + count <= places.length; i++)
    for (const rest of combinations(places.slice(i + 1), count - 1)) yield [places[i] ?? 0, ...rest]
}
