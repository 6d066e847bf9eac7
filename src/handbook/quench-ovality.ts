import { type Formula, formula } from '../formula.ts'

/** How a ring comes round from the quench: free in oil, through-hardened; in a press; on a plug. Estimate. */
export const QUENCHED_RING = { free: 1.8, press: 0.3, plug: 0.25 } as const

/** What the misfit and the side load of a quench leave of roundness. The range is half of it to twice. */
export const quenchOvality: Formula<{ k: ''; D: 'mm'; t: 'mm' }, 'mm'> = formula({
  symbol: 'o',
  meaning: 'ovality of a quenched ring, largest less smallest diameter',
  unit: 'mm',
  expression: 'max(0.02, k * 0.000111 * D^2 / t)',
  inputs: {
    k: { meaning: 'how it is quenched', unit: '', over: 0, upTo: 4 },
    D: { meaning: 'outside diameter', unit: 'mm', over: 0, upTo: 500 },
    t: { meaning: 'wall', unit: 'mm', over: 0, upTo: 100 },
  },
  source:
    'estimate: stiffness against a side load goes with D/t, the misfit with D; set so that a carburised 60 by 4 free in oil has the 0.10 of practice',
  example: { given: { k: 1.8, D: 60, t: 4 }, gives: 0.18, digits: 2 },
  value: ({ k, D, t }) => Math.max(0.02, (k * 0.000111 * D ** 2) / t),
})
