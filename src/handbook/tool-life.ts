import { type Formula, formula, type Input } from '../formula.ts'

/** Taylor's law: speed falls as a power of the life wanted. A works logs its own lives and puts them here. */
const n: Input = { meaning: "Taylor's exponent", unit: '', from: 0.05, upTo: 0.7 }
const T: Input = { meaning: 'tool life', unit: 'min', over: 0, upTo: 1000 }
const vc: Input = { meaning: 'cutting speed', unit: 'm/min', over: 0, upTo: 2000 }

/** Source: ranges of textbooks, HSS 0.08 to 0.20, carbide 0.20 to 0.30, ceramic and CBN 0.40 to 0.60; middle: common practice. */
export const TAYLOR_EXPONENT = { highSpeedSteel: 0.125, carbide: 0.25, ceramic: 0.5 } as const

export const taylorConstant: Formula<'vc' | 'T' | 'n'> = formula({
  symbol: 'C',
  meaning: 'cutting speed that gives a life of one minute',
  unit: 'm/min',
  expression: 'vc * T^n',
  inputs: { vc, T, n },
  source: 'memory: Taylor',
  example: { given: { vc: 175, T: 15, n: 0.25 }, gives: 344.4 },
  value: ({ vc, T, n }) => vc * T ** n,
})

export const toolLife: Formula<'C' | 'vc' | 'n'> = formula({
  symbol: 'T',
  meaning: 'tool life',
  unit: 'min',
  expression: '(C / vc)^(1 / n)',
  inputs: {
    C: { meaning: 'speed for a life of one minute', unit: 'm/min', over: 0, upTo: 3000 },
    vc: { ...vc, from: 5 },
    n,
  },
  source: 'memory: Taylor',
  example: { given: { C: 344.4, vc: 200, n: 0.25 }, gives: 8.793 },
  value: ({ C, vc, n }) => (C / vc) ** (1 / n),
})

/** The cost of an edge goes in as the minutes that the machine could have run for it. */
export const cheapestLife: Formula<'n' | 'tc' | 'Ce'> = formula({
  symbol: 'T_c',
  meaning: 'tool life of least cost',
  unit: 'min',
  expression: '(1 / n - 1) * (tc + Ce)',
  inputs: {
    n,
    tc: { meaning: 'time to change the tool', unit: 'min', from: 0, upTo: 60 },
    Ce: { meaning: 'cost of an edge over the cost of a minute', unit: 'min', from: 0, upTo: 600 },
  },
  source: 'memory: production texts',
  example: { given: { n: 0.25, tc: 1, Ce: 3 }, gives: 12 },
  value: ({ n, tc, Ce }) => (1 / n - 1) * (tc + Ce),
})
