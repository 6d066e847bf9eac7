import { significant } from '../../figures.ts'
import type { From } from '../../known.ts'
import type { Plan } from '../../plan/plan.ts'
import type { WorkingInput } from '../../working.ts'
import { FROM } from './odds-rows.ts'

export type WorkingsView = {
  readonly workings: readonly {
    /** Operation and what the figure is about, where it differs from the row above. */
    readonly about: string
    readonly symbol: string
    readonly meaning: string
    readonly value: string
    readonly expression: string
    /** Whose the numbers are that no formula gave: `Rz shop file; m built in`. */
    readonly given: string
    /** Number of the source in the list below. */
    readonly source: string
  }[]
  readonly sources: readonly { readonly number: string; readonly source: string }[]
}

/** Enough to check the sum by hand, and no gauge is read by them. */
const SIX = 6

/** Every figure with its numbers and its source, in the order in which the planner came to them. */
export function workingsView({ workings }: Plan): WorkingsView {
  const sources = [...new Set(workings.map(({ source }) => source))]
  let above = ''
  return {
    workings: workings.map(({ operation, about, symbol, meaning, value, unit, expression, source, inputs = [] }) => {
      const here = [operation === undefined ? '' : String(operation), about ?? ''].filter(text => text !== '').join(' ')
      const changed = here !== above
      above = here
      return {
        about: changed ? here : '',
        symbol,
        meaning,
        value: `${significant(value, SIX)} ${unit}`.trim(),
        expression,
        given: givenIn(inputs),
        source: String(sources.indexOf(source) + 1),
      }
    }),
    sources: sources.map((source, index) => ({ number: String(index + 1), source })),
  }
}

/** By who gave them, in the order of the expression. */
function givenIn(inputs: readonly WorkingInput[]): string {
  const symbols = new Map<From, readonly string[]>()
  for (const { symbol, from } of inputs) {
    if (from !== 'formula') symbols.set(from, [...(symbols.get(from) ?? []), symbol])
  }
  return [...symbols].map(([from, own]) => `${own.join(', ')} ${FROM[from]}`).join('; ')
}
