import { type Formula, formula, type Input } from '../formula.ts'

const sides: Readonly<Record<'g_o' | 'g_b', Input<'mm'>>> = {
  g_o: { meaning: 'growth per side outside', unit: 'mm', from: -5, upTo: 5 },
  g_b: { meaning: 'growth per side in the bore', unit: 'mm', from: -5, upTo: 5 },
}
const across = (meaning: string): Input<'mm'> => ({ meaning, unit: 'mm', over: 0, upTo: 1000 })
const stretch: Input<''> = { meaning: 'stretch along the length', unit: '', from: -0.1, upTo: 0.1 }

/** What a treated surface moves outward, the stretch of the core apart. */
export const freeGrowth: Formula<{ g_o: 'mm'; g_b: 'mm'; D: 'mm'; d: 'mm' }, 'mm'> = formula({
  symbol: 'F',
  meaning: 'free growth at a treated surface',
  unit: 'mm',
  expression: '(g_o * d + g_b * D) / (D + d)',
  inputs: { ...sides, D: across('outside diameter'), d: across('bore') },
  source: 'derived: growth outside is free growth plus half the stretch of D, in the bore less half the stretch of d',
  example: { given: { g_o: 0.0149, g_b: 0.0048, D: 60, d: 52 }, gives: 0.009489, digits: 6 },
  value: ({ g_o, g_b, D, d }) => (g_o * d + g_b * D) / (D + d),
})

export const stretchOfSides: Formula<{ g_o: 'mm'; g_b: 'mm'; D: 'mm'; d: 'mm' }, ''> = formula({
  symbol: 'epsilon',
  meaning: 'stretch of the core, from both sides',
  unit: '',
  expression: '2 * (g_o - g_b) / (D + d)',
  inputs: { ...sides, D: across('outside diameter'), d: across('bore') },
  source: 'derived: free growth cancels between the sides, and the core stretches alike across and along',
  example: { given: { g_o: 0.0149, g_b: 0.0048, D: 60, d: 52 }, gives: 0.00018036, digits: 8 },
  value: ({ g_o, g_b, D, d }) => (2 * (g_o - g_b)) / (D + d),
})

/** A masked side of a nitrided part, and either side of a quenched one, moves by the stretch alone. */
export const stretchOfSide: Formula<{ w: 'mm'; D: 'mm' }, ''> = formula({
  symbol: 'epsilon',
  meaning: 'stretch, from a side that moves by it alone',
  unit: '',
  expression: '2 * w / D',
  inputs: {
    w: { meaning: 'growth of the radius', unit: 'mm', from: -5, upTo: 5 },
    D: across('diameter of that side'),
  },
  source: 'derived: the radius moves by half of the stretch times the diameter',
  example: { given: { w: 0.03, D: 60 }, gives: 0.001, digits: 4 },
  value: ({ w, D }) => (2 * w) / D,
})

/** Two faces that look away from one another part by twice this. */
export const endGrowth: Formula<{ F: 'mm'; epsilon: ''; L: 'mm' }, 'mm'> = formula({
  symbol: 'g_f',
  meaning: 'growth at each end of a length',
  unit: 'mm',
  expression: 'F + epsilon * L / 2',
  inputs: {
    F: { meaning: 'free growth at a treated surface', unit: 'mm', from: -5, upTo: 5 },
    epsilon: stretch,
    L: across('length between the two faces'),
  },
  source: 'derived: each face rises by free growth, and the metal between stretches',
  example: { given: { F: 0.01, epsilon: 0.0001, L: 100 }, gives: 0.015, digits: 3 },
  value: ({ F, epsilon, L }) => F + (epsilon * L) / 2,
})

/**
 * How much further below the top face a face stands after hardening. A face that looks down sinks as far as the top rises,
 * one that looks up rises with it; the metal between stretches with its length, whatever the part's own.
 */
export const depthGrowth: Formula<{ n: ''; F: 'mm'; epsilon: ''; z: 'mm' }, 'mm'> = formula({
  symbol: 'G',
  meaning: 'growth of a depth below the top face',
  unit: 'mm',
  expression: 'n * F + epsilon * z',
  inputs: {
    n: {
      meaning: 'treated faces that grow apart: 2 where the face looks down, 0 where it looks up',
      unit: '',
      from: 0,
      upTo: 2,
    },
    F: { meaning: 'free growth at a treated surface', unit: 'mm', from: -5, upTo: 5 },
    epsilon: stretch,
    z: { meaning: 'depth below the top face', unit: 'mm', from: 0, upTo: 1000 },
  },
  source: 'derived: each treated face rises by free growth, and the metal between stretches',
  example: { given: { n: 2, F: 0.0095, epsilon: 0.0002039, z: 5 }, gives: 0.02002, digits: 5 },
  value: ({ n, F, epsilon, z }) => n * F + epsilon * z,
})
