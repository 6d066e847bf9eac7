import { type Formula, formula, type Input } from '../formula.ts'

/** Speeds, feeds, times and roughness of a turned surface. */
const vc: Input<'m/min'> = { meaning: 'cutting speed', unit: 'm/min', over: 0, upTo: 20_000 }
const n: Input<'rpm'> = { meaning: 'spindle speed', unit: 'rpm', over: 0, upTo: 1_000_000 }
const f: Input<'mm/rev'> = { meaning: 'feed', unit: 'mm/rev', over: 0, upTo: 4 }
const r: Input<'mm'> = { meaning: 'nose radius', unit: 'mm', over: 0, upTo: 50 }

/** `D` is the diameter being cut: the start diameter of a pass, not the finished one. */
export const spindleSpeed: Formula<{ vc: 'm/min'; D: 'mm' }, 'rpm'> = formula({
  symbol: 'n',
  meaning: 'spindle speed',
  unit: 'rpm',
  expression: '1000 * vc / (pi * D)',
  inputs: { vc, D: { meaning: 'diameter cut, or of the cutter', unit: 'mm', over: 0, upTo: 10_000 } },
  source: 'Kyocera catalogues 2016 to 2022, turning and milling formulas',
  example: { given: { vc: 160, D: 65 }, gives: 783.5 },
  value: ({ vc, D }) => (1000 * vc) / (Math.PI * D),
})

export const cuttingSpeed: Formula<{ n: 'rpm'; D: 'mm' }, 'm/min'> = formula({
  symbol: 'vc',
  meaning: 'cutting speed at the spindle speed that the machine reaches',
  unit: 'm/min',
  expression: 'pi * D * n / 1000',
  inputs: { n, D: { meaning: 'diameter cut, or of the cutter', unit: 'mm', over: 0, upTo: 10_000 } },
  source: 'Kyocera catalogues 2016 to 2022, turning and milling formulas',
  example: { given: { n: 12_000, D: 2 }, gives: 75.4 },
  value: ({ n, D }) => (Math.PI * D * n) / 1000,
})

export const feedRate: Formula<{ f: 'mm/rev'; n: 'rpm' }, 'mm/min'> = formula({
  symbol: 'vf',
  meaning: 'feed rate',
  unit: 'mm/min',
  expression: 'f * n',
  inputs: { f, n },
  source: 'derived: kinematics',
  example: { given: { f: 0.25, n: 783.5 }, gives: 195.9 },
  value: ({ f, n }) => f * n,
})

export const turningTime: Formula<{ L: 'mm'; La: 'mm'; Lo: 'mm'; i: ''; f: 'mm/rev'; n: 'rpm' }, 'min'> = formula({
  symbol: 't',
  meaning: 'cutting time along the length',
  unit: 'min',
  expression: '(La + L + Lo) * i / (f * n)',
  inputs: {
    L: { meaning: 'length cut', unit: 'mm', from: 0, upTo: 10_000 },
    La: { meaning: 'approach, 1 to 3 mm', unit: 'mm', from: 0, upTo: 20 },
    Lo: { meaning: 'overtravel, 1 to 2 mm', unit: 'mm', from: 0, upTo: 20 },
    i: { meaning: 'passes', unit: '', from: 1, upTo: 100_000, whole: true },
    f,
    n,
  },
  source: 'derived: kinematics; approach and overtravel: common practice, no source',
  example: { given: { L: 85, La: 2, Lo: 2, i: 1, f: 0.25, n: 783.5 }, gives: 0.4544 },
  value: ({ L, La, Lo, i, f, n }) => ((La + L + Lo) * i) / (f * n),
})

/** At constant cutting speed until the spindle reaches its limit, then at the limit: to the centre it would need no end. */
export const facingTime: Formula<{ Do: 'mm'; Di: 'mm'; vc: 'm/min'; f: 'mm/rev'; n: 'rpm' }, 'min'> = formula({
  symbol: 't',
  meaning: 'time of one facing pass at constant cutting speed, the spindle speed limited',
  unit: 'min',
  expression:
    'pi * (Do^2 - min(Do, max(Di, 1000 * vc / (pi * n)))^2) / (4000 * vc * f) + (min(Do, max(Di, 1000 * vc / (pi * n))) - Di) / (2 * f * n)',
  inputs: {
    Do: { meaning: 'diameter where the pass begins', unit: 'mm', over: 0, upTo: 10_000 },
    Di: { meaning: 'diameter where it ends', unit: 'mm', from: 0, upTo: 10_000 },
    vc,
    f,
    n: { ...n, meaning: 'spindle speed limit' },
  },
  source: 'derived: kinematics',
  example: { given: { Do: 65, Di: 50, vc: 160, f: 0.2, n: 3000 }, gives: 0.04234 },
  value: ({ Do, Di, vc, f, n }) => {
    const limited = Math.min(Do, Math.max(Di, (1000 * vc) / (Math.PI * n)))
    return (Math.PI * (Do ** 2 - limited ** 2)) / (4000 * vc * f) + (limited - Di) / (2 * f * n)
  },
})

export const feedForRoughness: Formula<{ Rz: 'µm'; r: 'mm' }, 'mm/rev'> = formula({
  symbol: 'f',
  meaning: 'feed that leaves ridges of the height wanted',
  unit: 'mm/rev',
  expression: 'sqrt(8 * r * Rz / 1000)',
  inputs: { Rz: { meaning: 'height of the ridges', unit: 'µm', over: 0, upTo: 10_000 }, r },
  source: 'Kyocera catalogues 2016 to 2022, turning formulas, solved for the feed',
  example: { given: { Rz: 9.766, r: 0.8 }, gives: 0.25 },
  value: ({ Rz, r }) => Math.sqrt((8 * r * Rz) / 1000),
})

/** What is measured over what the nose alone would leave: 1.5 to 2. Common practice, no source. */
export const RIDGES_OVER_THEORY = 1.5

export const ridgesInTheory: Formula<{ Rz: 'µm'; k: '' }, 'µm'> = formula({
  symbol: 'Rz_0',
  meaning: 'height of the ridges in theory, so that what is measured is no more than wanted',
  unit: 'µm',
  expression: 'Rz / k',
  inputs: {
    Rz: { meaning: 'roughness height wanted', unit: 'µm', over: 0, upTo: 10_000 },
    k: { meaning: 'what is measured over what theory has', unit: '', from: 1, upTo: 3 },
  },
  source:
    'common practice, no source: a worn nose, chatter and built-up edges leave 1.5 to 2 times what the feed would',
  example: { given: { Rz: 6.3, k: 1.5 }, gives: 4.2 },
  value: ({ Rz, k }) => Rz / k,
})

/** A parabolic ridge of height Rz lies Rz/3 from its mean line on average in height, and 4·Rz/(9·√3) in deviation. */
export const ridgeHeightOfRa: Formula<{ Ra: 'µm' }, 'µm'> = formula({
  symbol: 'Rz',
  meaning: 'height of the ridges of a turned surface of this Ra',
  unit: 'µm',
  expression: '9 * sqrt(3) / 4 * Ra',
  inputs: { Ra: { meaning: 'arithmetical mean deviation', unit: 'µm', over: 0, upTo: 50 } },
  source: 'derived: geometry, arithmetical mean deviation of ridges that are parabolic arcs',
  example: { given: { Ra: 1.6 }, gives: 6.2354 },
  value: ({ Ra }) => ((9 * Math.sqrt(3)) / 4) * Ra,
})
