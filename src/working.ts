import type { Formula, Given, Units } from './formula.ts'
import { isKnown, type Known, known, type Origin, type Told, worked } from './known.ts'
import type { Quantity, Unit } from './units.ts'

/** One figure with its formula, the numbers in it and where the formula comes from. */
export type Working = {
  readonly operation?: number
  /** What the figure is about: a surface, a port, the batch. */
  readonly about?: string
  readonly symbol: string
  readonly meaning: string
  readonly value: number
  readonly unit: string
  /** The expression with the numbers in it. */
  readonly expression: string
  /** The expression with its symbols. */
  readonly formula: string
  readonly source: string
  /** Where the numbers in it come from, of those that carry it. */
  readonly inputs?: readonly WorkingInput[]
}

/** A number of the expression and where it comes from. */
export type WorkingInput = Origin & { readonly symbol: string; readonly value: number; readonly unit: string }

export type About = { readonly operation?: number; readonly about?: string }

/** What a formula is fed: bare numbers, or figures that carry where they come from. */
export type Fed<I extends Units = Units> = {
  readonly [k in keyof I]: Quantity<I[k]> | Known<I[k]> | Told<Quantity<I[k]>>
}

/** Keeps every use of a formula as a working while it computes. One a capability; its list goes out with the result. */
export type Notebook = {
  readonly use: <I extends Units, U extends Unit>(
    formula: Formula<I, U>,
    given: Fed<NoInfer<I>>,
    about?: About,
  ) => Quantity<U>
  /** A figure that is chosen, read or looked up rather than computed by a formula. */
  readonly note: (entry: Omit<Working, 'formula'>) => void
  readonly workings: readonly Working[]
}

type Use = {
  readonly formula: Formula
  readonly given: Fed
  readonly about: About
  readonly value: number
}

/** What formulas gave before, by their symbols: a bare number under the same symbol is one of these. */
type Results = Map<string, Map<number, string>>

export function openNotebook(): Notebook {
  // Kept as used and written out only when read: a planner that tries fifty figures pays for the text of the one it keeps.
  const entries: (Use | Working)[] = []
  return {
    get workings() {
      const results: Results = new Map()
      return entries.map(entry => {
        const working = 'given' in entry ? written(entry, results) : entry
        const { symbol, value, meaning } = working
        results.set(symbol, (results.get(symbol) ?? new Map<number, string>()).set(value, meaning))
        return working
      })
    },
    use: (formula, given, about = {}) => {
      const value = formula.value(numbersOf(formula, given))
      entries.push({ formula, given, about, value })
      return value
    },
    note: entry => {
      entries.push({ ...entry, formula: '' })
    },
  }
}

function written({ formula, given, about: { operation, about }, value }: Use, results: Results): Working {
  const { symbol, meaning, unit, expression, source } = formula
  const text = filledIn(expression, numbersOf(formula, given))
  const figure = { symbol, meaning, value, unit, expression: text, formula: expression, source }
  const inputs = originsOf(formula, given, results)
  if (inputs.length > 0) Object.assign(figure, { inputs })
  // Spelt out: the spread of objects of many shapes takes as long as all the rest.
  if (operation === undefined) return about === undefined ? figure : Object.assign(figure, { about })
  return about === undefined ? Object.assign(figure, { operation }) : Object.assign(figure, { operation, about })
}

/** The numbers alone. A figure in another unit than the formula asks for is a fault of the planner. */
function numbersOf<I extends Units>(
  { symbol, inputs }: Pick<Formula<I>, 'symbol' | 'inputs'>,
  given: Fed<I>,
): Given<I> {
  const numbers: Record<string, number> = {}
  for (const key in given) {
    const input = given[key]
    if (isKnown(input) && input.unit !== undefined && input.unit !== inputs[key].unit)
      throw new Error(`${symbol}: ${key} is in ${inputs[key].unit}, got ${input.value} ${input.unit}`)
    numbers[key] = isKnown(input) ? input.value : input
  }
  return numbers as Given<I>
}

function originsOf({ inputs }: Formula, given: Fed, results: Results): readonly WorkingInput[] {
  return Object.entries(given).flatMap(([symbol, input]) => {
    const unit = inputs[symbol]?.unit ?? ''
    if (isKnown(input)) return [{ symbol, value: input.value, unit, from: input.from, source: input.source }]
    const meaning = results.get(symbol)?.get(input)
    return meaning === undefined ? [] : [{ symbol, value: input, unit, ...worked(`${symbol}, ${meaning}`) }]
  })
}

/** Uses a formula and gives its result as a figure that says so. */
export const reckoned = <I extends Units, U extends Unit>(
  notebook: Notebook,
  formula: Formula<I, U>,
  given: Fed<NoInfer<I>>,
  about?: About,
): Known<U> => known(notebook.use(formula, given, about), formula.unit, worked(`${formula.symbol}, ${formula.meaning}`))

/** Computes and keeps nothing: for trials whose figures do not go out. */
export const SCRATCH: Notebook = {
  use: (formula, given) => formula.value(numbersOf(formula, given)),
  note: () => undefined,
  workings: [],
}

/** `0.45 * cbrt(D)` with D 48 becomes `0.45 * cbrt(48)`; a negative number goes in with its brackets. */
function filledIn(expression: string, given: Given): string {
  let text = ''
  for (const [index, piece] of piecesOf(expression).entries()) {
    const value = index % 2 === 1 && Object.hasOwn(given, piece) ? given[piece] : undefined
    if (value === undefined) text += piece
    else text += value < 0 ? `(${eightDigits(value)})` : eightDigits(value)
  }
  return text
}

const taken = new Map<string, readonly string[]>()

/** What stands between the names, and the names, in turn. An expression is taken apart once, however often it is used. */
function piecesOf(expression: string): readonly string[] {
  const pieces = taken.get(expression) ?? expression.split(/([\p{L}_][\p{L}\p{N}_]*)/u)
  taken.set(expression, pieces)
  return pieces
}

/** A whole number is its own text: most figures of a plan are, and rounding them by way of text takes most of the time. */
const eightDigits = (value: number): string =>
  Number.isInteger(value) && Math.abs(value) < 1e8 ? String(value) : String(Number(value.toPrecision(8)))
