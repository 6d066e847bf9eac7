import { type Formula, formula, type Input } from '../formula.ts'

/**
 * Hardness against depth below the surface as hardened: a stretched exponential that meets the surface hardness at depth 0
 * and the limit hardness at the hardness depth. n 1 falls fastest and is the low bound above that depth, n 2 is the high
 * bound; beyond the hardness depth their order turns round.
 */
export const SHAPE = { low: 1, expected: 1.7, high: 2 } as const

export const SHAPE_SOURCE =
  'stretched exponential through surface and limit hardness; shape 1.7, band 1 to 2, memory/estimate: measured low-alloy profiles are flat near the surface'

const n: Input<''> = { meaning: 'shape of the profile', unit: '', from: 0.8, upTo: 4 }
const N: Input<'mm'> = { meaning: 'hardness depth as hardened', unit: 'mm', over: 0, upTo: 5 }
const p: Input<''> = {
  meaning: 'share of the rise over the core left at the hardness depth',
  unit: '',
  over: 0,
  under: 1,
}
const q: Input<''> = { meaning: 'share of the rise over the core that is asked', unit: '', over: 0, under: 1 }
const w: Input<'mm'> = { meaning: 'scale of the profile', unit: 'mm', over: 0, upTo: 10 }
const hardness = (meaning: string): Input<'HV'> => ({ meaning, unit: 'HV', over: 0, upTo: 1500 })

/** With H the limit hardness of the process, or the hardness asked after finishing. */
export const shareOfRise: Formula<{ H: 'HV'; H_s: 'HV'; H_c: 'HV' }, ''> = formula({
  symbol: 'p',
  meaning: 'share of the rise of hardness over the core',
  unit: '',
  expression: '(H - H_c) / (H_s - H_c)',
  inputs: { H: hardness('hardness'), H_s: hardness('surface hardness'), H_c: hardness('core hardness') },
  source: 'derived: definition',
  example: { given: { H: 370, H_s: 650, H_c: 320 }, gives: 0.15152 },
  value: ({ H, H_s, H_c }) => (H - H_c) / (H_s - H_c),
})

export const profileScale: Formula<{ N: 'mm'; p: ''; n: '' }, 'mm'> = formula({
  symbol: 'w',
  meaning: 'scale of the hardness profile',
  unit: 'mm',
  expression: 'N / log(1 / p)^(1 / n)',
  inputs: { N, p, n },
  source: SHAPE_SOURCE,
  example: { given: { N: 0.3, p: 50 / 330, n: 1.7 }, gives: 0.2065 },
  value: ({ N, p, n }) => N / Math.log(1 / p) ** (1 / n),
})

export const hardnessAtDepth: Formula<{ H_s: 'HV'; H_c: 'HV'; z: 'mm'; w: 'mm'; n: '' }, 'HV'> = formula({
  symbol: 'H',
  meaning: 'hardness at a depth below the surface as hardened',
  unit: 'HV',
  expression: 'H_c + (H_s - H_c) * exp(-(z / w)^n)',
  inputs: {
    H_s: hardness('surface hardness'),
    H_c: hardness('core hardness'),
    z: { meaning: 'depth below the surface as hardened', unit: 'mm', from: 0, upTo: 10 },
    w,
    n,
  },
  source: SHAPE_SOURCE,
  example: { given: { H_s: 650, H_c: 320, z: 0.1, w: 0.206487, n: 1.7 }, gives: 566.5 },
  value: ({ H_s, H_c, z, w, n }) => H_c + (H_s - H_c) * Math.exp(-((z / w) ** n)),
})

/** The surface hardness whose profile of shape n passes through the hardness asked where s is taken off. */
export const surfaceForHardness: Formula<{ H: 'HV'; H_c: 'HV'; H_L: 'HV'; s: 'mm'; N: 'mm'; n: '' }, 'HV'> = formula({
  symbol: 'H_order',
  meaning: 'least surface hardness to order so that a hardness is held where most is taken off',
  unit: 'HV',
  expression: 'H_c + (H_L - H_c) * ((H - H_c) / (H_L - H_c))^(1 / (1 - (s / N)^n))',
  inputs: {
    H: hardness('hardness asked after finishing'),
    H_c: hardness('core hardness'),
    H_L: hardness('hardness where the depth ends'),
    s: { meaning: 'taken off per side at the worst place', unit: 'mm', from: 0, upTo: 5 },
    N,
    n,
  },
  source: `derived: inverse of the ${SHAPE_SOURCE}`,
  // 566.5 HV are left of 650 where 0.1 goes off a case of 0.3.
  example: { given: { H: 566.5, H_c: 320, H_L: 370, s: 0.1, N: 0.3, n: 1.7 }, gives: 650, digits: 0 },
  value: ({ H, H_c, H_L, s, N, n }) => H_c + (H_L - H_c) * ((H - H_c) / (H_L - H_c)) ** (1 / (1 - (s / N) ** n)),
})

export const depthForHardness: Formula<{ s: 'mm'; p: ''; q: ''; n: '' }, 'mm'> = formula({
  symbol: 'N',
  meaning: 'hardness depth to order so that a hardness is held where most is taken off',
  unit: 'mm',
  expression: 's * (log(1 / p) / log(1 / q))^(1 / n)',
  inputs: { s: { meaning: 'taken off per side at the worst place', unit: 'mm', over: 0, upTo: 5 }, p, q, n },
  source: `derived: inverse of the ${SHAPE_SOURCE}`,
  // The case of 0.30 keeps 550 HV down to 0.1134 by the same profile.
  example: { given: { s: 0.1134, p: 50 / 330, q: 230 / 330, n: 1.7 }, gives: 0.3, digits: 3 },
  value: ({ s, p, q, n }) => s * (Math.log(1 / p) / Math.log(1 / q)) ** (1 / n),
})
