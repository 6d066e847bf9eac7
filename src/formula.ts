import type { Quantity, Unit } from './units.ts'

/** One input of a published formula, with the range its source gives. */
export type Input<U extends Unit = Unit> = {
  readonly meaning: string
  readonly unit: U
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

/** The unit of each symbol. */
export type Units = { readonly [symbol: string]: Unit }
export type Given<I extends Units = Units> = { readonly [k in keyof I]: Quantity<I[k]> }

/**
 * A handbook formula. The workings print from it, so nothing is said twice: tests evaluate `expression` with a general
 * maths library and hold it against `value`, and run `example` to the digits printed.
 */
export type Formula<I extends Units = Units, U extends Unit = Unit> = {
  readonly symbol: string
  readonly meaning: string
  readonly unit: U
  /** In the syntax of a general maths library: `0.45 * cbrt(D) + 0.001 * D`; angles in radians inside functions. */
  readonly expression: string
  readonly inputs: { readonly [k in keyof I]: Input<I[k]> }
  /** Document, edition, clause; or `derived: …`; or `memory: …`; or `common practice, no source`. */
  readonly source: string
  readonly example: {
    readonly given: Given<NoInfer<I>>
    readonly gives: number
    readonly digits?: number
  }
  value(given: Given<NoInfer<I>>): Quantity<U>
}

export type OutOfRange = {
  readonly symbol: string
  readonly value: number
  readonly allowed: string
  readonly unit: string
}

/** The inputs that the formula's own source does not cover. The check that tells the user reads this first. */
export function outOfRange<I extends Units>(
  { inputs }: Pick<Formula<I>, 'inputs'>,
  given: Given<I>,
): readonly OutOfRange[] {
  return (Object.entries(inputs) as [keyof I & string, Input][]).flatMap(([symbol, input]) => {
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
export function formula<I extends Units, U extends Unit>(definition: Formula<I, U>): Formula<I, U> {
  const inputs = Object.entries(definition.inputs) as [keyof I & string, Input][]
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
