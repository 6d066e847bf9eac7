/** A stream of chance that is the same for the same seed and number, so that one input of a campaign can be made again alone. */
export type Random = {
  /** From 0 up to but not 1. */
  readonly next: () => number
  readonly whole: (from: number, to: number) => number
  readonly between: (from: number, to: number) => number
  readonly chance: (share: number) => boolean
  readonly pick: <T>(list: readonly [T, ...T[]]) => T
  /** Nothing of an empty list. */
  readonly any: <T>(list: readonly T[]) => T | undefined
}

/** Mulberry32, a public-domain generator of 32 bits; seed and number are mixed by its own step. */
export function randomOf(seed: number, number: number): Random {
  let state = (Math.imul(seed, 0x9e3779b1) ^ Math.imul(number + 1, 0x85ebca6b)) >>> 0
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
  const any = <T>(list: readonly T[]): T | undefined => list[Math.floor(next() * list.length)]
  return {
    next,
    any,
    pick: list => any(list) ?? list[0],
    whole: (from, to) => from + Math.floor(next() * (to - from + 1)),
    between: (from, to) => from + next() * (to - from),
    chance: share => next() < share,
  }
}
