import { type Formula, formula } from '../formula.ts'

/**
 * Specific energy above which a ground surface is likely to burn. A screen to compare settings with, never a limit to
 * trust: the constants are from memory, for plain carbon steel and a conventional wheel under coolant. At equal infeed a
 * faster work speed lowers it; at equal removal rate a faster work speed with less infeed raises it.
 */
export const burnThreshold: Formula<{ de: 'mm'; ae: 'mm'; vw: 'm/min' }, 'J/mm³'> = formula({
  symbol: 'u_burn',
  meaning: 'specific energy from which burning is likely',
  unit: 'J/mm³',
  expression: '6.2 + 7.2 * de^(1/4) * ae^(-3/4) * (vw * 1000 / 60)^(-1/2)',
  inputs: {
    de: { meaning: 'equivalent diameter', unit: 'mm', over: 0, upTo: 1_000_000 },
    ae: { meaning: 'infeed, radial', unit: 'mm', over: 0, upTo: 0.5 },
    vw: { meaning: 'work speed', unit: 'm/min', over: 0, upTo: 200 },
  },
  source: 'memory: Malkin and Lenz 1978, constants not verified',
  example: { given: { de: 51.22, ae: 0.01, vw: 20 }, gives: 39.56 },
  value: ({ de, ae, vw }) => 6.2 + (7.2 * de ** (1 / 4) * ae ** (-3 / 4)) / ((vw * 1000) / 60) ** (1 / 2),
})

/** The coolant hardly reaches a bore: an assumption, no source, until the works has data of its own. */
export const BORE_BURN_SHARE = 0.6

/** What a wheel spends, J/mm³. Source: memory: 20 to 35 a sharp roughing wheel, 30 to 60 a fine one; middle taken. */
export const SPECIFIC_ENERGY = { roughing: 30, finishing: 45 } as const
