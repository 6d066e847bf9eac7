import { type Formula, formula } from '../formula.ts'
import type { Spread } from '../limits.ts'

/** Change of diameter by quenched processes, fraction of the diameter. Common practice, no source, but where a row says more. */
export const QUENCH_CHANGE = {
  /** Either way: a carburised and quenched sleeve of 40 to 80 mm. Shops see 0.05 to 0.15 %. */
  carburising: { least: -0.001, nominal: 0, most: 0.001, source: 'common practice, no source: ±0.1 % of diameter' },
  'induction hardening': {
    least: 0.0005,
    nominal: 0.00075,
    most: 0.001,
    source: 'common practice, no source: 0.05 to 0.1 % of diameter, local',
    // Hardened near the surface only, the length follows less.
    length: {
      least: -0.0003,
      nominal: 0.0002,
      most: 0.0007,
      source: 'common practice, no source: 0.02 ±0.05 % of the length',
    },
  },
  'through hardening': {
    least: 0.001,
    nominal: 0.0015,
    most: 0.002,
    source: 'memory: bars and rings of 100Cr6 grow 0.10 to 0.20 % by quench and temper',
  },
} as const

/** Change of a length by a quenched process, fraction of it: as of a diameter where the row says nothing else. */
export function lengthChange(process: string): (Spread & { readonly source: string }) | undefined {
  if (!isQuenched(process)) return undefined
  const row = QUENCH_CHANGE[process]
  const { least, nominal, most, source } = 'length' in row ? row.length : row
  return { least, nominal, most, source }
}

const isQuenched = (process: string): process is keyof typeof QUENCH_CHANGE => Object.hasOwn(QUENCH_CHANGE, process)

export const quenchGrowth: Formula<{ c: ''; D: 'mm' }, 'mm'> = formula({
  symbol: 'g',
  meaning: 'change per side of an outside diameter by quench and temper',
  unit: 'mm',
  expression: 'c * D / 2',
  inputs: {
    c: { meaning: 'change as a fraction of the diameter', unit: '', from: -0.005, upTo: 0.005 },
    D: { meaning: 'diameter', unit: 'mm', over: 0, upTo: 1000 },
  },
  source: 'derived: half of the change on diameter',
  example: { given: { c: 0.0015, D: 30 }, gives: 0.0225 },
  value: ({ c, D }) => (c * D) / 2,
})
