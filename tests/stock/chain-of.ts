import { type Known, type KnownSpread, known, worked } from '../../src/known.ts'
import type { Limits } from '../../src/limits.ts'
import type { Operation } from '../../src/route/operation.ts'
import type { Finish, FinishChain } from '../../src/stock/finish-chain.ts'
import { task } from '../route/task.ts'

const operation = (number: number, purpose: Operation['purpose']): Operation => {
  const { why: _, ...rest } = task(purpose)
  return { ...rest, number, because: [], waits: [] }
}

const ORIGIN = worked('worked sleeve')
const given = (value: number): Known<'mm'> => known(value, 'mm', ORIGIN)

export const finish = (
  purpose: 'grind-outside' | 'grind-bore' | 'hone-bore',
  { eccentricity, form, needed }: Readonly<Record<'eccentricity' | 'form' | 'needed', number>>,
): Finish => ({
  operation: operation(purpose === 'grind-outside' ? 50 : purpose === 'grind-bore' ? 60 : 70, purpose),
  stockKey: purpose === 'grind-outside' ? 'outside' : purpose === 'grind-bore' ? 'bore' : 'hone',
  tolerance: given(0.015),
  told: given(0.001),
  eccentricity: given(eccentricity),
  form: given(form),
  needed: given(needed),
  rests: [],
})

export const limits = (lower: number, upper: number): Limits => ({ nominal: (lower + upper) / 2, lower, upper })

/** The worked sleeve: Ø56 h6 over 48 H6, turned to 0.05, ground outside on a mandrel, ground and honed in the bore. */
export const OUTSIDE: FinishChain = {
  surface: 'seat',
  kind: 'outside',
  path: '',
  final: limits(55.981, 56),
  finalTolerance: given(0.019),
  softTolerance: given(0.05),
  cased: true,
  hard: true,
  finishes: [finish('grind-outside', { eccentricity: 0.015 + 0.005, form: 0.02, needed: 0.02 + 0.01 })],
}
export const OUTSIDE_GROWTH: KnownSpread = { least: 0.005, nominal: 0.01, most: 0.015, ...ORIGIN }

export const BORE: FinishChain = {
  surface: 'bore',
  kind: 'bore',
  path: '',
  final: limits(48, 48.016),
  finalTolerance: given(0.016),
  softTolerance: given(0.05),
  cased: true,
  hard: true,
  finishes: [
    finish('grind-bore', { eccentricity: 0.005 + 0.0075, form: 0.02, needed: 0.02 + 0.01 }),
    // Rz 3 and T 4; half a micrometre is left for form.
    finish('hone-bore', { eccentricity: 0, form: 0.0005, needed: 0.007 }),
  ],
}
export const BORE_GROWTH: KnownSpread = { least: 0.0025, nominal: 0.0075, most: 0.0125, ...ORIGIN }
