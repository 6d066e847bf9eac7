import { type Formula, formula, type Input } from '../formula.ts'

/**
 * Hardness against depth of a surface that is hardened by induction: level almost to the depth, then steep. It meets the
 * limit hardness at the depth and has lost three hundredths of its rise at a share p of it.
 */
const SOURCE =
  'estimate: plateau profiles of induction hardening; meets the limit hardness at the depth by its definition'

/** Share of the depth at which the plateau ends: long heating or low frequency, usual, short heating. Estimate. */
export const PLATEAU_SHARE = { low: 0.6, expected: 0.8, high: 0.85 } as const
/** Share of the rise that is left there. Estimate. */
const PLATEAU_LEFT = 0.97

const hardness = (meaning: string): Input<'HV'> => ({ meaning, unit: 'HV', over: 0, upTo: 1500 })
const H_s = hardness('surface hardness')
const H_c = hardness('core hardness')
const H_L = hardness('hardness where the depth ends')
const SHD: Input<'mm'> = { meaning: 'surface hardening depth', unit: 'mm', over: 0, upTo: 10 }
const q: Input<'mm'> = { meaning: 'width of the fall of hardness', unit: 'mm', over: 0, upTo: 10 }
const z_0: Input<'mm'> = { meaning: 'depth where half of the rise is left', unit: 'mm', over: 0, upTo: 10 }

/** (0.97 / 0.03): the plateau's end, three hundredths down. */
const END = Math.log(PLATEAU_LEFT / (1 - PLATEAU_LEFT))
/** 1/y - 1, of the share y of the rise where the depth ends. */
const odds = (H_s: number, H_c: number, H_L: number): number => Math.log((H_s - H_c) / (H_L - H_c) - 1)

export const plateauWidth: Formula<{ SHD: 'mm'; H_s: 'HV'; H_c: 'HV'; H_L: 'HV'; p: '' }, 'mm'> = formula({
  symbol: 'q',
  meaning: 'width of the fall of hardness',
  unit: 'mm',
  expression: '(1 - p) * SHD / (log((H_s - H_c) / (H_L - H_c) - 1) + log(0.97 / 0.03))',
  inputs: {
    SHD,
    H_s,
    H_c,
    H_L,
    p: { meaning: 'share of the depth where the plateau ends', unit: '', over: 0, under: 1 },
  },
  source: SOURCE,
  example: { given: { SHD: 2, H_s: 620, H_c: 260, H_L: 440, p: 0.8 }, gives: 0.115072, digits: 6 },
  value: ({ SHD, H_s, H_c, H_L, p }) => ((1 - p) * SHD) / (odds(H_s, H_c, H_L) + END),
})

export const plateauMiddle: Formula<{ SHD: 'mm'; H_s: 'HV'; H_c: 'HV'; H_L: 'HV'; q: 'mm' }, 'mm'> = formula({
  symbol: 'z_0',
  meaning: 'depth where half of the rise is left',
  unit: 'mm',
  expression: 'SHD - q * log((H_s - H_c) / (H_L - H_c) - 1)',
  inputs: { SHD, H_s, H_c, H_L, q },
  source: SOURCE,
  example: { given: { SHD: 1.5, H_s: 640, H_c: 230, H_L: 464, q: 0.0940067 }, gives: 1.52678, digits: 5 },
  value: ({ SHD, H_s, H_c, H_L, q }) => SHD - q * odds(H_s, H_c, H_L),
})

export const plateauHardness: Formula<{ H_s: 'HV'; H_c: 'HV'; z: 'mm'; z_0: 'mm'; q: 'mm' }, 'HV'> = formula({
  symbol: 'H',
  meaning: 'hardness at a depth below the surface as hardened',
  unit: 'HV',
  expression: 'H_c + (H_s - H_c) / (1 + exp((z - z_0) / q))',
  inputs: {
    H_s,
    H_c,
    z: { meaning: 'depth below the surface as hardened', unit: 'mm', from: 0, upTo: 20 },
    z_0,
    q,
  },
  source: SOURCE,
  example: { given: { H_s: 620, H_c: 260, z: 1.6, z_0: 2, q: 0.115072 }, gives: 609.2, digits: 1 },
  value: ({ H_s, H_c, z, z_0, q }) => H_c + (H_s - H_c) / (1 + Math.exp((z - z_0) / q)),
})

/** The depth whose plateau still holds a hardness where s is taken off; every length of the profile goes with the depth. */
export const depthForPlateau: Formula<{ s: 'mm'; H: 'HV'; H_s: 'HV'; H_c: 'HV'; H_L: 'HV'; p: '' }, 'mm'> = formula({
  symbol: 'SHD_order',
  meaning: 'surface hardening depth to order so that a hardness is held where most is taken off',
  unit: 'mm',
  expression:
    's / (1 + (1 - p) * (log((H_s - H_c) / (H - H_c) - 1) - log((H_s - H_c) / (H_L - H_c) - 1)) / (log((H_s - H_c) / (H_L - H_c) - 1) + log(0.97 / 0.03)))',
  inputs: {
    s: { meaning: 'taken off per side at the worst place', unit: 'mm', over: 0, upTo: 5 },
    H: hardness('hardness asked after finishing'),
    H_s,
    H_c,
    H_L,
    p: { meaning: 'share of the depth where the plateau ends', unit: '', over: 0, under: 1 },
  },
  source: `derived: inverse of the plateau profile; ${SOURCE}`,
  // 609.2 HV stand at 1.6 of a depth of 2.
  example: { given: { s: 1.6, H: 609.2, H_s: 620, H_c: 260, H_L: 440, p: 0.8 }, gives: 2, digits: 2 },
  value: ({ s, H, H_s, H_c, H_L, p }) =>
    s / (1 + ((1 - p) * (odds(H_s, H_c, H) - odds(H_s, H_c, H_L))) / (odds(H_s, H_c, H_L) + END)),
})

/** On the plateau no more than three hundredths of the rise are lost. */
export const surfaceForPlateau: Formula<{ H: 'HV'; H_c: 'HV' }, 'HV'> = formula({
  symbol: 'H_order',
  meaning: 'least surface hardness to order so that a hardness is held to the end of the plateau',
  unit: 'HV',
  expression: 'H_c + (H - H_c) / 0.97',
  inputs: { H: hardness('hardness asked after finishing'), H_c },
  source: SOURCE,
  example: { given: { H: 550, H_c: 260 }, gives: 559, digits: 0 },
  value: ({ H, H_c }) => H_c + (H - H_c) / PLATEAU_LEFT,
})
