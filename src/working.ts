import type { Formula, Given } from './formula.ts'

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
}

export type About = { readonly operation?: number; readonly about?: string }

/** Keeps every use of a formula as a working while it computes. One a capability; its list goes out with the result. */
export type Notebook = {
  readonly use: <K extends string>(formula: Formula<K>, given: Given<K>, about?: About) => number
  /** A figure that is chosen, read or looked up rather than computed by a formula. */
  readonly note: (entry: Omit<Working, 'formula'>) => void
  readonly workings: readonly Working[]
}

type Use = { readonly formula: Formula; readonly given: Given; readonly about: About; readonly value: number }

export function openNotebook(): Notebook {
  // Kept as used and written out only when read: a planner that tries fifty figures pays for the text of the one it keeps.
  const entries: (Use | Working)[] = []
  return {
    get workings() {
      return entries.map(entry => ('given' in entry ? written(entry) : entry))
    },
    use: (formula, given, about = {}) => {
      const value = formula.value(given)
      entries.push({ formula, given, about, value })
      return value
    },
    note: entry => {
      entries.push({ ...entry, formula: '' })
    },
  }
}

function written({ formula, given, about: { operation, about }, value }: Use): Working {
  const { symbol, meaning, unit, expression, source } = formula
  const figure = { symbol, meaning, value, unit, expression: filledIn(expression, given), formula: expression, source }
  // Spelt out: the spread of objects of many shapes takes as long as all the rest.
  if (operation === undefined) return about === undefined ? figure : Object.assign(figure, { about })
  return about === undefined ? Object.assign(figure, { operation }) : Object.assign(figure, { operation, about })
}

/** Computes and keeps nothing: for trials whose figures do not go out. */
export const SCRATCH: Notebook = {
  use: (formula, given) => formula.value(given),
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

const known = new Map<string, readonly string[]>()

/** What stands between the names, and the names, in turn. An expression is taken apart once, however often it is used. */
function piecesOf(expression: string): readonly string[] {
  const pieces = known.get(expression) ?? expression.split(/([\p{L}_][\p{L}\p{N}_]*)/u)
  known.set(expression, pieces)
  return pieces
}

/** A whole number is its own text: most figures of a plan are, and rounding them by way of text takes most of the time. */
const eightDigits = (value: number): string =>
  Number.isInteger(value) && Math.abs(value) < 1e8 ? String(value) : String(Number(value.toPrecision(8)))
