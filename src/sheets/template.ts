import { Refusal } from '../refusal.ts'

/** A template as it was read. */
export type Template = { readonly file: string; readonly text: string }

/** Line and column count from 1. */
export type Spot = { readonly line: number; readonly column: number }

/** A slip in a template: the works can mend it, and nothing is printed before that. */
export class TemplateProblem extends Refusal {
  override readonly name = 'TemplateProblem'
  /** Where in the file, when that is known. */
  readonly at: Spot | undefined
  constructor(file: string, what: string, at?: Spot) {
    super(`${file}${at ? `:${at.line}:${at.column}` : ''}: ${what}`)
    this.at = at
  }
}
