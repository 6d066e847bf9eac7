import { type Formula, formula } from '../formula.ts'
import type { Millimetre } from '../units.ts'

/** Grinding on an axis farther off than this is stopped whatever the stock, radial. Common practice, no source. */
export const USUAL_STOP: Millimetre = 0.03

/** What a grinder may find at set-up before he stops: what was planned for and what the smaller margin still bears. */
export const setUpStop: Formula<{ e: 'mm'; m: 'mm'; e_0: 'mm' }, 'mm'> = formula({
  symbol: 'e_stop',
  meaning: 'off axis at set-up, radial, over which to stop and ring',
  unit: 'mm',
  expression: 'min(e_0, e + max(0, m))',
  inputs: {
    e: { meaning: 'off axis as planned for, radial', unit: 'mm', from: 0, upTo: 1000 },
    m: {
      meaning: 'to spare, a side: the least of what cleans up and of what must stay',
      unit: 'mm',
      from: -1000,
      upTo: 1000,
    },
    e_0: { meaning: 'stopped over this whatever the stock', unit: 'mm', from: 0, upTo: 1000 },
  },
  source: 'derived: every further micrometre off axis takes one from the margin on either side',
  example: { given: { e: 0.0125, m: 0.00575, e_0: 0.03 }, gives: 0.01825 },
  value: ({ e, m, e_0 }) => Math.min(e_0, e + Math.max(0, m)),
})
