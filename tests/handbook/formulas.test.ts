import fc from 'fast-check'
import { all, create, type MathNode, type SymbolNode } from 'mathjs'
import { describe, expect, it } from 'vitest'
import type { Formula, Given, Input } from '../../src/formula.ts'
import { everyFormula } from './every-formula.ts'

const math = create(all ?? {}, {})
const FORMULAS = everyFormula()

/**
 * A value inside the input's range. An open end lies as far from the worked example as the example is large, since a
 * formula without a stated range is still about sizes like those of its example.
 */
function valueIn({ over, from, under, upTo, whole }: Input, example: number): fc.Arbitrary<number> {
  const reach = Math.max(Math.abs(example), 1)
  const least = Math.max(over ?? Number.NEGATIVE_INFINITY, from ?? Number.NEGATIVE_INFINITY)
  const most = Math.min(under ?? Number.POSITIVE_INFINITY, upTo ?? Number.POSITIVE_INFINITY)
  const lowest = Number.isFinite(least) ? least : Math.min(example, most) - reach
  const highest = Number.isFinite(most) ? most : Math.max(example, lowest) + reach
  if (whole) {
    return fc.integer({
      min: over === lowest ? Math.floor(lowest) + 1 : Math.ceil(lowest),
      max: under === highest ? Math.ceil(highest) - 1 : Math.floor(highest),
    })
  }
  const open = (highest - lowest) * 1e-3
  return fc.double({
    min: over === lowest ? lowest + open : lowest,
    max: under === highest ? highest - open : highest,
    noNaN: true,
  })
}

const valuesOf = ({ inputs, example }: Formula): fc.Arbitrary<Given> =>
  fc.record(
    Object.fromEntries(
      Object.entries(inputs).map(([symbol, input]) => [symbol, valueIn(input, example.given[symbol] ?? 0)]),
    ),
  )

/** Read once, for some hundred evaluations each. */
const COMPILED = new Map(FORMULAS.map(({ formula: { expression } }) => [expression, math.compile(expression)]))

/** What the general maths library makes of the text; nothing where it is no real number, as for a rod shorter than its crank. */
function evaluated(expression: string, given: Given): number | undefined {
  try {
    const value: unknown = COMPILED.get(expression)?.evaluate({ ...given })
    return typeof value === 'number' && Number.isFinite(value) ? value : undefined
  } catch {
    // The library will not choose five of three, or add up nothing.
    return undefined
  }
}

/** Inputs that are each in their range may not go together: more bad pieces than the lot has. Then the function refuses. */
function accepted(value: Formula['value'], given: Given): number | undefined {
  try {
    return value(given)
  } catch (error) {
    if (error instanceof RangeError) return undefined
    throw error
  }
}

/** How far the text itself moves when the last digits of its inputs do: an arc cosine near 1 has few digits left. */
function unsteadiness({ expression, inputs }: Formula, given: Given, text: number): number {
  const moved = Object.entries(given).flatMap(([name, value]) => {
    if (inputs[name]?.whole) return []
    return [-1e-14, 1e-14].map(by =>
      evaluated(expression, { ...given, [name]: value + by * Math.max(Math.abs(value), 1) }),
    )
  })
  return Math.max(0, ...moved.map(value => (value === undefined ? 1e-6 : 10 * Math.abs(value - text))))
}

/** Symbols that the expression leaves for its inputs: not functions, their parameters, or π. */
function freeSymbols(expression: string): readonly string[] {
  const symbols = new Set<string>()
  const bound = new Set(['pi'])
  math.parse(expression).traverse((node: MathNode, path: string) => {
    if (node.type === 'FunctionAssignmentNode')
      for (const name of (node as never)['params'] as string[]) bound.add(name)
    if (node.type === 'SymbolNode' && path !== 'fn') symbols.add((node as SymbolNode).name)
  })
  return [...symbols].filter(name => !bound.has(name)).toSorted()
}

/** Values that the range forbids: just past each stated end, and no number at all. */
function forbidden({ over, from, under, upTo, whole }: Input): readonly number[] {
  const past = (end: number) => Math.max(Math.abs(end), 1) * 1e-6
  return [
    Number.NaN,
    Number.POSITIVE_INFINITY,
    ...(over === undefined ? [] : [over]),
    ...(from === undefined ? [] : [from - past(from)]),
    ...(under === undefined ? [] : [under]),
    ...(upTo === undefined ? [] : [upTo + past(upTo)]),
    ...(whole ? [(from ?? over ?? 0) + 0.5] : []),
  ]
}

it('finds the formulas of the handbook', () => {
  expect(FORMULAS.length).toBeGreaterThan(0)
})

describe.each(FORMULAS)('$where: $formula.meaning', ({ formula }) => {
  const { symbol, unit, meaning, expression, inputs, source, example, value } = formula

  it('gives its worked example, to the digits printed', () => {
    const digits = example.digits ?? String(example.gives).split('.')[1]?.length ?? 0
    expect(value(example.given).toFixed(digits)).toBe(example.gives.toFixed(digits))
  })

  it('uses every input in its expression, and nothing else', () => {
    expect(freeSymbols(expression)).toEqual(Object.keys(inputs).toSorted())
  })

  it('computes what its expression says', () => {
    let compared = 0
    const agrees = fc.property(valuesOf(formula), given => {
      const text = evaluated(expression, given)
      const code = accepted(value, given)
      if (text === undefined || code === undefined) return
      compared += 1
      const scale = Math.max(Math.abs(code), Math.abs(text))
      expect(Math.abs(code - text)).toBeLessThanOrEqual(1e-9 * scale + 1e-12 + unsteadiness(formula, given, text))
    })
    fc.assert(agrees)
    // A formula that is hardly ever real inside its own ranges would pass unseen.
    expect(compared).toBeGreaterThan(40)
  })

  it('refuses what lies outside its range', () => {
    for (const [name, input] of Object.entries(inputs)) {
      for (const wrong of forbidden(input)) {
        expect(() => value({ ...example.given, [name]: wrong }), `${name} = ${wrong}`).toThrow(RangeError)
      }
    }
  })

  it('says what it is, in which unit, and where it comes from', () => {
    for (const text of [symbol, meaning, source]) expect(text.trim().length).toBeGreaterThan(0)
    expect(typeof unit).toBe('string')
    for (const input of Object.values(inputs)) expect(input.meaning.trim().length).toBeGreaterThan(0)
  })
})
