import { type Formula, formula, type Input } from '../formula.ts'

const stretch: Input<''> = { meaning: 'stretch along the length', unit: '', from: -0.1, upTo: 0.1 }

/** Two faces that look away from one another part by twice this. */
export const endGrowth: Formula<{ n: ''; F: 'mm'; epsilon: ''; L: 'mm' }, 'mm'> = formula({
  symbol: 'g_f',
  meaning: 'growth at each end of a length',
  unit: 'mm',
  expression: '(n * F + epsilon * L) / 2',
  inputs: {
    n: { meaning: 'treated faces of the two', unit: '', from: 0, upTo: 2 },
    F: { meaning: 'free growth at a treated surface', unit: 'mm', from: -5, upTo: 5 },
    epsilon: stretch,
    L: { meaning: 'length between the two faces, at the mean stretch', unit: 'mm', from: 0, upTo: 2000 },
  },
  source: 'derived: each face rises by free growth, and the metal between stretches',
  example: { given: { n: 2, F: 0.01, epsilon: 0.0001, L: 100 }, gives: 0.015, digits: 3 },
  value: ({ n, F, epsilon, L }) => (n * F + epsilon * L) / 2,
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
      meaning:
        'treated faces that grow apart, less those that grow together: 2 where the face looks down, 0 where it looks up',
      unit: '',
      from: -1,
      upTo: 2,
    },
    F: { meaning: 'free growth at a treated surface', unit: 'mm', from: -5, upTo: 5 },
    epsilon: stretch,
    z: { meaning: 'depth below the top face, at the mean stretch', unit: 'mm', from: 0, upTo: 2000 },
  },
  source: 'derived: each treated face rises by free growth, and the metal between stretches',
  example: { given: { n: 2, F: 0.0095, epsilon: 0.0002039, z: 5 }, gives: 0.02002, digits: 5 },
  value: ({ n, F, epsilon, z }) => n * F + epsilon * z,
})
