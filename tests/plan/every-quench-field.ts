import type { QuenchPlan } from '../../src/hardening/quench-plan.ts'
import { EVERY_CASE_FIELD } from './every-case-field.ts'
import type { EveryField } from './every-field-of.ts'

const RANGE = { least: 1, most: 3 }

/** What the hardener of a part that is hardened through is asked for, with a figure for every key. */
export const EVERY_QUENCH_FIELD: EveryField<QuenchPlan> = {
  process: 'through hardening',
  quench: { way: 'press', called: 'in a press', why: 'thin', ovality: { ...RANGE, nominal: 2 }, source: 'estimate' },
  asked: { HRC: 60, HV: 697 },
  expected: 62.4,
  temper: 180,
  stabilised: false,
  runsTo: 130,
  austenite: RANGE,
  hardening: RANGE,
  medium: 'oil',
  stressRelief: { ...RANGE, aim: 2 },
  barHardness: 200,
  growth: EVERY_CASE_FIELD.growth,
  records: EVERY_CASE_FIELD.records,
  basis: EVERY_CASE_FIELD.basis,
}
