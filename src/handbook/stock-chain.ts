import { type Formula, formula, type Input } from '../formula.ts'

/**
 * The radial chain of turning, hardening, grinding and honing: what stock every piece of the batch has, at its best and its
 * worst place. Stock is on diameter unless it says per side. Growth is per side, positive where metal grows.
 */
const diameter = (meaning: string): Input<'mm'> => ({ meaning, unit: 'mm', from: 0, upTo: 1000 })
const small = (meaning: string): Input<'mm'> => ({ meaning, unit: 'mm', from: -1000, upTo: 1000 })
const error = (meaning: string): Input<'mm'> => ({ meaning, unit: 'mm', from: 0, upTo: 1000 })

const SIDES = 'derived: geometry, both sides of the diameter grow'
const g_least = small('least growth per side')
const g_most = small('most growth per side')
const g = small('nominal growth per side')
const e = error('eccentricity of the surface to the axis it is cut about, radial')
const f = error('form error, radial')
const r = error('what must go for the surface to clean up, per side')

export const outsideStockLeast: Formula<{ d_before: 'mm'; g_least: 'mm'; d_after: 'mm' }, 'mm'> = formula({
  symbol: 'S_least',
  meaning: 'least stock on an outside diameter',
  unit: 'mm',
  expression: 'd_before + 2 * g_least - d_after',
  inputs: { d_before: diameter('lower limit before'), g_least, d_after: diameter('upper limit after') },
  source: SIDES,
  example: { given: { d_before: 56.13, g_least: 0.005, d_after: 56 }, gives: 0.14, digits: 3 },
  value: ({ d_before, g_least, d_after }) => d_before + 2 * g_least - d_after,
})

export const outsideStockMost: Formula<{ d_before: 'mm'; g_most: 'mm'; d_after: 'mm' }, 'mm'> = formula({
  symbol: 'S_most',
  meaning: 'most stock on an outside diameter',
  unit: 'mm',
  expression: 'd_before + 2 * g_most - d_after',
  inputs: { d_before: diameter('upper limit before'), g_most, d_after: diameter('lower limit after') },
  source: SIDES,
  example: { given: { d_before: 56.18, g_most: 0.015, d_after: 55.981 }, gives: 0.229, digits: 3 },
  value: ({ d_before, g_most, d_after }) => d_before + 2 * g_most - d_after,
})

export const boreStockLeast: Formula<{ d_after: 'mm'; d_before: 'mm'; g_least: 'mm' }, 'mm'> = formula({
  symbol: 'S_least',
  meaning: 'least stock in a bore',
  unit: 'mm',
  expression: 'd_after - (d_before - 2 * g_least)',
  inputs: { d_after: diameter('lower limit after'), d_before: diameter('upper limit before'), g_least },
  source: SIDES,
  example: { given: { d_after: 47.97, d_before: 47.85, g_least: 0.0025 }, gives: 0.125, digits: 3 },
  value: ({ d_after, d_before, g_least }) => d_after - (d_before - 2 * g_least),
})

export const boreStockMost: Formula<{ d_after: 'mm'; d_before: 'mm'; g_most: 'mm' }, 'mm'> = formula({
  symbol: 'S_most',
  meaning: 'most stock in a bore',
  unit: 'mm',
  expression: 'd_after - (d_before - 2 * g_most)',
  inputs: { d_after: diameter('upper limit after'), d_before: diameter('lower limit before'), g_most },
  source: SIDES,
  example: { given: { d_after: 47.985, d_before: 47.8, g_most: 0.0125 }, gives: 0.21, digits: 3 },
  value: ({ d_after, d_before, g_most }) => d_after - (d_before - 2 * g_most),
})

/** What the arithmetic sum asks of the least stock. */
export const leastStock: Formula<{ e: 'mm'; f: 'mm'; r: 'mm' }, 'mm'> = formula({
  symbol: 'S_least',
  meaning: 'least stock on diameter that cleans up at the worst place',
  unit: 'mm',
  expression: '2 * (e + f + r)',
  inputs: { e, f, r },
  source: 'derived: arithmetic sum of eccentricity, form and layer',
  example: { given: { e: 0.02, f: 0.02, r: 0.03 }, gives: 0.14 },
  value: ({ e, f, r }) => 2 * (e + f + r),
})

/** Middle of one tolerance to middle of the next, with growth counted. */
export const nominalStock: Formula<{ S_least: 'mm'; T_before: 'mm'; T_after: 'mm'; g: 'mm'; g_least: 'mm' }, 'mm'> =
  formula({
    symbol: 'S',
    meaning: 'nominal stock on diameter, middle to middle with growth',
    unit: 'mm',
    expression: 'S_least + (T_before + T_after) / 2 + 2 * (g - g_least)',
    inputs: {
      S_least: small('least stock on diameter'),
      T_before: error('tolerance on diameter before'),
      T_after: error('tolerance on diameter after'),
      g,
      g_least,
    },
    source: 'derived: geometry',
    example: { given: { S_least: 0.14, T_before: 0.05, T_after: 0.019, g: 0.01, g_least: 0.005 }, gives: 0.1845 },
    value: ({ S_least, T_before, T_after, g, g_least }) => S_least + (T_before + T_after) / 2 + 2 * (g - g_least),
  })

export const outsideBefore: Formula<{ D: 'mm'; S: 'mm'; g: 'mm' }, 'mm'> = formula({
  symbol: 'D_before',
  meaning: 'middle of an outside diameter before, so that the stock is left',
  unit: 'mm',
  expression: 'D + S - 2 * g',
  inputs: { D: diameter('middle of the diameter after'), S: small('nominal stock on diameter'), g },
  source: SIDES,
  example: { given: { D: 55.9905, S: 0.1845, g: 0.01 }, gives: 56.155 },
  value: ({ D, S, g }) => D + S - 2 * g,
})

export const boreBefore: Formula<{ d: 'mm'; S: 'mm'; g: 'mm' }, 'mm'> = formula({
  symbol: 'd_before',
  meaning: 'middle of a bore before, so that the stock is left',
  unit: 'mm',
  expression: 'd - S + 2 * g',
  inputs: { d: diameter('middle of the bore after'), S: small('nominal stock on diameter'), g },
  source: SIDES,
  example: { given: { d: 47.9775, S: 0.1675, g: 0.0075 }, gives: 47.825 },
  value: ({ d, S, g }) => d - S + 2 * g,
})

/** Ground and honed together the tolerance of the ground bore cancels: closer than the sum of the two worst cases. */
export const depthThroughBoreChain: Formula<
  { N_asked: 'mm'; d_final: 'mm'; d_soft: 'mm'; g_most: 'mm'; e: 'mm' },
  'mm'
> = formula({
  symbol: 'N',
  meaning: 'case depth that leaves the depth asked for, ground and honed from end to end',
  unit: 'mm',
  expression: 'N_asked + (d_final - (d_soft - 2 * g_most)) / 2 + e',
  inputs: {
    N_asked: error('depth asked for after finishing'),
    d_final: diameter('upper limit of the finished bore'),
    d_soft: diameter('lower limit of the bore before hardening'),
    g_most,
    e,
  },
  source: 'derived: geometry, eccentricity of grinding only, since the hone follows the bore',
  example: { given: { N_asked: 0.25, d_final: 48.016, d_soft: 47.8, g_most: 0.0125, e: 0.0125 }, gives: 0.383 },
  value: ({ N_asked, d_final, d_soft, g_most, e }) => N_asked + (d_final - (d_soft - 2 * g_most)) / 2 + e,
})
