/** One input of a published formula, with the range its source gives. */
export type Input = {
  readonly meaning: string
  readonly unit: string
  /** Exclusive lower end. */
  readonly over?: number
  /** Inclusive lower end. */
  readonly from?: number
  /** Exclusive upper end. */
  readonly under?: number
  /** Inclusive upper end. */
  readonly upTo?: number
  /** A count: pieces, bars. */
  readonly whole?: true
}

export type Given<K extends string = string> = { readonly [k in K]: number }

/**
 * A handbook formula. The workings print from it, so nothing is said twice: tests evaluate `expression` with a general
 * maths library and hold it against `value`, and run `example` to the digits printed.
 */
export type Formula<K extends string = string> = {
  readonly symbol: string
  readonly meaning: string
  readonly unit: string
  /** In the syntax of a general maths library: `0.45 * cbrt(D) + 0.001 * D`; angles in radians inside functions. */
  readonly expression: string
  readonly inputs: { readonly [k in K]: Input }
  /** Document, edition, clause; or `derived: …`; or `memory: …`; or `common practice, no source`. */
  readonly source: string
  readonly example: {
    readonly given: Given<K>
    readonly gives: number
    readonly digits?: number
  }
  readonly value: (given: Given<K>) => number
}

export type OutOfRange = {
  readonly symbol: string
  readonly value: number
  readonly allowed: string
  readonly unit: string
}

/** The inputs that the formula's own source does not cover. The check that tells the user reads this first. */
export function outOfRange<K extends string>(
  { inputs }: Pick<Formula<K>, 'inputs'>,
  given: Given<K>,
): readonly OutOfRange[] {
  return (Object.entries(inputs) as [K, Input][]).flatMap(([symbol, input]) => {
    const value = given[symbol]
    return covers(input, value) ? [] : [{ symbol, value, allowed: allowed(input), unit: input.unit }]
  })
}

const covers = ({ over, from, under, upTo, whole }: Input, value: number): boolean =>
  Number.isFinite(value) &&
  (whole !== true || Number.isInteger(value)) &&
  (over === undefined || value > over) &&
  (from === undefined || value >= from) &&
  (under === undefined || value < under) &&
  (upTo === undefined || value <= upTo)

function allowed({ over, from, under, upTo, whole }: Input): string {
  const ends = [
    whole === true ? 'a whole number' : undefined,
    over === undefined ? undefined : `over ${over}`,
    from === undefined ? undefined : `from ${from}`,
    under === undefined ? undefined : `under ${under}`,
    upTo === undefined ? undefined : `up to ${upTo}`,
  ]
  return ends.filter(end => end !== undefined).join(' ') || 'a finite number'
}

/** Wraps `value` with the range check: a formula throws outside its range, since the caller should have asked first. */
export function formula<K extends string>(definition: Formula<K>): Formula<K> {
  const inputs = Object.entries(definition.inputs) as [K, Input][]
  return {
    ...definition,
    value: given => {
      for (const [symbol, input] of inputs) {
        const value = given[symbol]
        if (covers(input, value)) continue
        throw new RangeError(`${definition.symbol}: ${symbol} must be ${allowed(input)} ${input.unit}, got ${value}`)
      }
      return definition.value(given)
    },
  }
}
