import { type Formula, formula } from '../formula.ts'

/** How a ring hardened through comes round: free in oil, in hot oil or salt, in air or gas, in a press, on a plug. Estimate. */
export const QUENCHED_RING = { free: 1.8, hot: 0.6, gas: 0.5, press: 0.3, plug: 0.25 } as const
export type QuenchWay = keyof typeof QUENCHED_RING

/** The same of a ring that is carburised: its soft core gives, so that free in oil it comes rounder. Common practice/estimate. */
export const CARBURISED_RING: Readonly<Record<QuenchWay, number>> = {
  free: 1,
  hot: 0.6,
  gas: 0.6,
  press: QUENCHED_RING.press,
  plug: QUENCHED_RING.plug,
}

/** A hollow pin against a thin sleeve, by its stout wall. Estimate. */
export const HOLLOW_PIN_SHARE = 0.5

/** Solid pins, hung: largest less smallest diameter, mm. Common practice, no source. */
export const SOLID_PIN_OVALITY = 0.02

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
