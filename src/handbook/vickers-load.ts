import { type Formula, formula, type Input } from '../formula.ts'

/** Loads of the hardness tester, kgf: HV0.1 to HV10. */
export const STANDARD_LOADS: readonly number[] = [0.1, 0.3, 0.5, 1, 3, 5, 10]

const HV: Input<'HV'> = { meaning: 'hardness', unit: 'HV', over: 0, upTo: 3000 }

/**
 * Largest load that a surface with a case is read with, kgf: the case is a gradient, and a higher load reads through it.
 * Common practice, no source.
 */
export const SURFACE_LOAD = 1

export const largestLoad: Formula<{ HV: 'HV'; N_r: 'mm' }, 'kgf'> = formula({
  symbol: 'F_max',
  meaning: 'largest test load that the case can bear',
  unit: 'kgf',
  expression: 'HV * (0.7 * N_r)^2 / 1.8544',
  inputs: { HV, N_r: { meaning: 'case left', unit: 'mm', over: 0, upTo: 5 } },
  source: 'Bueckle rule, a tenth of the layer (plating dictionary), with the indentation a seventh of its diagonal',
  example: { given: { HV: 650, N_r: 0.2 }, gives: 6.87 },
  value: ({ HV, N_r }) => (HV * (0.7 * N_r) ** 2) / 1.8544,
})

/** The standard load at or below; the smallest when even that is too much. */
export function standardLoad(largest: number): { readonly load: number; readonly borne: boolean } {
  const load = STANDARD_LOADS.findLast(standard => standard <= largest)
  return load === undefined ? { load: STANDARD_LOADS[0] ?? 0.1, borne: false } : { load, borne: true }
}
