import type { Spread } from './limits.ts'
import type { Quantity, Unit } from './units.ts'

/**
 * Who gave a figure: the built-in works, the shop file, a measurement of the works, the part file, the batch as
 * asked for, a table of the handbook, or a formula from other figures.
 */
export type From = 'built in' | 'shop' | 'measured' | 'part' | 'batch' | 'handbook' | 'formula'

export type Origin = {
  readonly from: From
  /** Document and page, the key of the file, the batch that was measured. */
  readonly source: string
}

/** A figure with its unit and where it comes from, made where it is chosen and carried along from there. */
export type Known<U extends Unit = Unit> = Origin & { readonly value: Quantity<U>; readonly unit: U }

/** A known figure under the name that it has on paper. */
export type Figure<U extends Unit = Unit> = Known<U> & { readonly figure: string }

/** A spread whose three ends come from one place; lengths, per side. */
export type KnownSpread = Spread & Origin

export const known = <U extends Unit>(value: Quantity<U>, unit: U, { from, source }: Origin): Known<U> => ({
  value,
  unit,
  from,
  source,
})

export const named = <U extends Unit>(figure: string, { value, unit, from, source }: Known<U>): Figure<U> => ({
  figure,
  value,
  unit,
  from,
  source,
})

export const fromHandbook = (source: string): Origin => ({ from: 'handbook', source })

/** `path` points at the key: `/body/outside/0`. */
export const fromPart = (path: string): Origin => ({ from: 'part', source: `part file: ${path.replace(/^\//, '')}` })

/** Worked out by the planner; the workings have the sum. */
export const worked = (source: string): Origin => ({ from: 'formula', source })

/** Nothing to count: no such error, no such layer. */
export const none = (source: string): Known<'mm'> => known(0, 'mm', worked(source))

/** A figure with where it comes from, in the unit that the formula it is given to asks for. */
export type Told<Q extends number = number> = Origin & { readonly value: Q; readonly unit?: never }

/** Figures of one origin, under the symbols that a formula has for them: `...told(book, { kc11, mc })`. */
export function told<F extends Readonly<Record<string, number>>>(
  { from, source }: Origin,
  figures: F,
): { readonly [name in keyof F]: Told<F[name]> } {
  const all: Record<string, Told> = {}
  for (const symbol in figures) all[symbol] = { value: Number(figures[symbol]), from, source }
  return all as { readonly [name in keyof F]: Told<F[name]> }
}

export const fromBuiltIn = (source: string): Origin => ({ from: 'built in', source })

/** `key` names the entry: `machines/lathe`. */
export const fromShop = (key: string): Origin => ({ from: 'shop', source: `shop file: ${key}` })

export const isKnown = (given: number | Known | Told): given is Known | Told => typeof given === 'object'
