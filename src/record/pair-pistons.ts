import { normalBelow } from '../handbook/normal.ts'
import type { Millimetre } from '../units.ts'

/** A piece to pair: the least bore, or the largest skirt. Micrometres are whole thousandths of the size as given. */
export type ToPair = { readonly serial: string; readonly size: Millimetre; readonly wants?: Millimetre }

export type Pair = {
  readonly bore: string
  readonly piston: string
  readonly clearance: Millimetre
  /** From what is wanted. */
  readonly off: Millimetre
  /** That it truly lies inside, by the uncertainty of both readings. */
  readonly chance: number
}

export type Pairing = {
  readonly pairs: readonly Pair[]
  readonly worst: Millimetre
  /** Sum of the squares of what they are off by, mm². */
  readonly squares: number
  /** Of all pairs, how many are expected to lie outside. */
  readonly expectedOutside: number
  readonly bores: readonly Left[]
  readonly pistons: readonly Left[]
}

/** One without a partner, and the size of partner that would use it. */
export type Left = {
  readonly serial: string
  readonly size: Millimetre
  readonly partner: { readonly from: Millimetre; readonly to: Millimetre }
}

/** Least and most clearance, and the one wanted: the middle where nobody says. */
export type Clearance = { readonly least: Millimetre; readonly most: Millimetre; readonly wanted: Millimetre }

/** In thousandths of a micrometre, so that equal sums are equal. */
const fine = (value: Millimetre): number => Math.round(value * 1e6)

/**
 * Pistons to bores: most pairs inside the limits, then the least worst deviation, then the least sum of squares. Bores and pistons
 * sorted by size keep their order in the best answer, since uncrossing two pairs never makes either aim worse; so it is found by
 * going through both lists once for every threshold. `u` is the standard uncertainty of a clearance.
 */
export function pairPistons(
  bores: readonly ToPair[],
  pistons: readonly ToPair[],
  clearance: Clearance,
  u: Millimetre,
): Pairing {
  const sizeOf = (piston: ToPair) => piston.size + (piston.wants ?? clearance.wanted)
  const B = bores.toSorted((one, other) => one.size - other.size || byName(one, other))
  const P = pistons.toSorted((one, other) => sizeOf(one) - sizeOf(other) || byName(one, other))
  const offs = B.map(bore => P.map(piston => fine(bore.size - sizeOf(piston))))
  const inside = B.map(bore =>
    P.map(piston => {
      const C = fine(bore.size - piston.size)
      return C >= fine(clearance.least) && C <= fine(clearance.most)
    }),
  )
  const within = (limit: number) => bestInOrder(offs, inside, limit)
  const most = within(Number.POSITIVE_INFINITY).length
  const thresholds = [...new Set(offs.flat().map(Math.abs))].toSorted((one, other) => one - other)
  let [low, high] = [0, thresholds.length - 1]
  while (low < high) {
    const middle = (low + high) >> 1
    if (within(thresholds[middle] ?? 0).length === most) high = middle
    else low = middle + 1
  }
  const chosen = most === 0 ? [] : within(thresholds[low] ?? 0)
  const pairs = chosen.flatMap(([i, j]): readonly Pair[] => {
    const [bore, piston] = [B[i], P[j]]
    if (!bore || !piston) return []
    const C = bore.size - piston.size
    return [
      {
        bore: bore.serial,
        piston: piston.serial,
        clearance: C,
        off: (offs[i]?.[j] ?? 0) / 1e6,
        chance: chanceInside(C, clearance, u),
      },
    ]
  })
  const used = { bores: new Set(chosen.map(([i]) => i)), pistons: new Set(chosen.map(([, j]) => j)) }
  const { least, most: mostC } = clearance
  return {
    pairs: pairs.toSorted((one, other) => one.bore.localeCompare(other.bore, 'en', { numeric: true })),
    worst: Math.max(0, ...pairs.map(({ off }) => Math.abs(off))),
    squares: pairs.reduce((sum, { off }) => sum + off ** 2, 0),
    expectedOutside: pairs.reduce((sum, { chance }) => sum + 1 - chance, 0),
    bores: B.flatMap(({ serial, size }, i) =>
      used.bores.has(i) ? [] : [{ serial, size, partner: { from: size - mostC, to: size - least } }],
    ),
    pistons: P.flatMap(({ serial, size }, j) =>
      used.pistons.has(j) ? [] : [{ serial, size, partner: { from: size + least, to: size + mostC } }],
    ),
  }
}

const byName = (one: ToPair, other: ToPair): number => one.serial.localeCompare(other.serial, 'en', { numeric: true })

const chanceInside = (C: Millimetre, { least, most }: Clearance, u: Millimetre): number =>
  u > 0 ? normalBelow((most - C) / u) - normalBelow((least - C) / u) : 1

/** Most pairs in sorted order with no deviation over the limit, of those the least sum of squares: indices of bore and piston. */
function bestInOrder(
  offs: readonly (readonly number[])[],
  inside: readonly (readonly boolean[])[],
  limit: number,
): readonly (readonly [number, number])[] {
  const [rows, columns] = [offs.length, offs[0]?.length ?? 0]
  const width = columns + 1
  // One line of the table after the other: so many pairs, the sum of their squares, and the step that led there.
  const pairs = new Int32Array((rows + 1) * width)
  const squares = new Float64Array((rows + 1) * width)
  const steps = new Uint8Array((rows + 1) * width)
  for (let i = 1; i <= rows; i++) {
    const [row, free] = [offs[i - 1], inside[i - 1]]
    for (let j = 1; j <= columns; j++) {
      const [here, above, left, before] = [
        i * width + j,
        (i - 1) * width + j,
        i * width + j - 1,
        (i - 1) * width + j - 1,
      ]
      let [from, step] = [above, BORE]
      // The first stays where both are as good.
      if (isBetter(pairs, squares, left, above)) [from, step] = [left, PISTON]
      let [most, least] = [pairs[from] ?? 0, squares[from] ?? 0]
      const off = row?.[j - 1] ?? 0
      if (free?.[j - 1] && Math.abs(off) <= limit) {
        const [count, sum] = [(pairs[before] ?? 0) + 1, (squares[before] ?? 0) + off ** 2]
        if (count > most || (count === most && sum <= least)) [most, least, step] = [count, sum, PAIR]
      }
      pairs[here] = most
      squares[here] = least
      steps[here] = step
    }
  }
  const chosen: (readonly [number, number])[] = []
  for (let [i, j] = [rows, columns]; i > 0 && j > 0; ) {
    const step = steps[i * width + j]
    if (step === PAIR) chosen.unshift([i - 1, j - 1])
    if (step !== PISTON) i--
    if (step !== BORE) j--
  }
  return chosen
}

/** Steps through both lists: a bore without a piston, a piston without a bore, a pair. */
const [BORE, PISTON, PAIR] = [0, 1, 2]

const isBetter = (pairs: Int32Array, squares: Float64Array, one: number, other: number): boolean => {
  const [more, fewer] = [pairs[one] ?? 0, pairs[other] ?? 0]
  return more > fewer || (more === fewer && (squares[one] ?? 0) < (squares[other] ?? 0))
}

/** Standard uncertainty of a clearance, of those of bore and piston. */
export const clearanceUncertainty = (bore: Millimetre, piston: Millimetre): Millimetre => Math.hypot(bore, piston)
