import { type Formula, formula, type Input } from '../formula.ts'

/** Engagement, chip and feed of a small end mill. */
const r: Input<''> = { meaning: 'radial engagement over cutter diameter, ae/D', unit: '', over: 0, upTo: 1 }
const fz: Input<'mm'> = { meaning: 'feed per tooth', unit: 'mm', over: 0, upTo: 10 }
const z: Input<''> = { meaning: 'teeth', unit: '', from: 1, upTo: 100, whole: true }
const vf: Input<'mm/min'> = { meaning: 'table feed', unit: 'mm/min', over: 0, upTo: 1_000_000 }

/** Of the smallest chip that cuts, and of the smallest feed. Source: Cheng et al., Int. J. Adv. Manuf. Technol. 97 (2018),
 * 0.14 to 0.43 of the edge radius; memory: small coated tools have an edge radius of 3 to 6 µm. */
export const THINNEST_MILLING_CHIP = { feedPerTooth: 0.004, chip: 0.002 } as const

/** Under 3 mm runout rules, so the feed is raised for a thin chip by no more than this. Source: common practice, no source. */
export const MOST_FEED_FOR_THINNING = 2.5

export const meanChip: Formula<{ fz: 'mm'; r: '' }, 'mm'> = formula({
  symbol: 'hm',
  meaning: 'mean chip thickness',
  unit: 'mm',
  expression: 'fz * 2 * r / acos(1 - 2 * r)',
  inputs: { fz, r },
  source: 'memory: Sandvik Coromant; derived: geometry',
  example: { given: { fz: 0.01, r: 1 }, gives: 0.006366, digits: 6 },
  value: ({ fz, r }) => (fz * 2 * r) / Math.acos(1 - 2 * r),
})

export const feedForChip: Formula<{ hmax: 'mm'; r: '' }, 'mm'> = formula({
  symbol: 'fz',
  meaning: 'feed per tooth that gives the thickest chip wanted in a side cut',
  unit: 'mm',
  expression: 'hmax / (2 * sqrt(r * (1 - r)))',
  inputs: { hmax: { meaning: 'thickest chip', unit: 'mm', over: 0, upTo: 10 }, r: { ...r, upTo: 0.5 } },
  source: 'derived: geometry',
  example: { given: { hmax: 0.02, r: 0.1 }, gives: 0.03333, digits: 5 },
  value: ({ hmax, r }) => hmax / (2 * Math.sqrt(r * (1 - r))),
})

export const millingFeed: Formula<{ fz: 'mm'; z: ''; n: 'rpm' }, 'mm/min'> = formula({
  symbol: 'vf',
  meaning: 'table feed',
  unit: 'mm/min',
  expression: 'fz * z * n',
  inputs: { fz, z, n: { meaning: 'spindle speed', unit: 'rpm', over: 0, upTo: 1_000_000 } },
  source: 'derived: kinematics',
  example: { given: { fz: 0.01, z: 4, n: 12_000 }, gives: 480 },
  value: ({ fz, z, n }) => fz * z * n,
})

export const millingPower: Formula<{ ap: 'mm'; ae: 'mm'; vf: 'mm/min'; kc: 'N/mm²' }, 'kW'> = formula({
  symbol: 'Pc',
  meaning: 'power at the cut',
  unit: 'kW',
  expression: 'ap * ae * vf * kc / 60 / 10^6',
  inputs: {
    ap: { meaning: 'axial depth of cut', unit: 'mm', from: 0, upTo: 500 },
    ae: { meaning: 'radial depth of cut', unit: 'mm', from: 0, upTo: 500 },
    vf,
    kc: { meaning: 'specific cutting force at the mean chip', unit: 'N/mm²', from: 200, upTo: 1_000_000 },
  },
  source: 'Mitsubishi Materials, face-milling power; memory: Tschätsch',
  example: { given: { ap: 0.2, ae: 2, vf: 480, kc: 5974 }, gives: 0.01912, digits: 5 },
  value: ({ ap, ae, vf, kc }) => (ap * ae * vf * kc) / 60 / 10 ** 6,
})

/** The centre runs on a smaller radius than the wall: at R = r it would stand and wrap the corner. Keep r under 0.8 R. */
export const insideCornerFeed: Formula<{ vf: 'mm/min'; R: 'mm'; rc: 'mm' }, 'mm/min'> = formula({
  symbol: 'vf_c',
  meaning: "feed of the cutter's centre in an inside corner",
  unit: 'mm/min',
  expression: 'vf * (R - rc) / R',
  inputs: {
    vf,
    R: { meaning: 'radius of the corner', unit: 'mm', over: 0, upTo: 500 },
    rc: { meaning: 'radius of the cutter', unit: 'mm', over: 0, upTo: 250 },
  },
  source: 'derived: geometry',
  example: { given: { vf: 991.1, R: 1.5, rc: 1 }, gives: 330.4 },
  value: ({ vf, R, rc }) => (vf * (R - rc)) / R,
})

export const LARGEST_CUTTER_IN_CORNER = 0.8

/** The mean of the adjacent-tooth difference; at most t for two teeth. */
export const runoutChip: Formula<{ t: 'mm'; z: '' }, 'mm'> = formula({
  symbol: 'Delta',
  meaning: 'thicker chip of the worst tooth',
  unit: 'mm',
  expression: 't * sin(pi / z)',
  inputs: { t: { meaning: 'total indicated runout at the tip', unit: 'mm', from: 0, upTo: 1 }, z: { ...z, from: 2 } },
  source: 'derived: geometry',
  example: { given: { t: 0.01, z: 4 }, gives: 0.00707, digits: 5 },
  value: ({ t, z }) => t * Math.sin(Math.PI / z),
})

export const runoutForce: Formula<{ Delta: 'mm'; fz: 'mm'; mc: '' }, ''> = formula({
  symbol: 'K_t',
  meaning: 'force of the worst tooth over that of an even one',
  unit: '',
  expression: '(1 + Delta / fz)^(1 - mc)',
  inputs: {
    Delta: { meaning: 'thicker chip of the worst tooth', unit: 'mm', from: 0, upTo: 1 },
    fz: { ...fz, over: 0, upTo: 10 },
    mc: { meaning: 'exponent of chip thickness', unit: '', from: 0, upTo: 0.5 },
  },
  source: 'derived: force after Kienzle',
  example: { given: { Delta: 0.007071, fz: 0.01, mc: 0.24 }, gives: 1.501 },
  value: ({ Delta, fz, mc }) => (1 + Delta / fz) ** (1 - mc),
})
