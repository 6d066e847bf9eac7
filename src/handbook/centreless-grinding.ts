import { type Formula, formula, type Input } from '../formula.ts'

/** Where to start a pin through the wheels. */
export const CENTRELESS = {
  /** Of the regulating wheel: its tilt, degrees, and its speed, rpm. Common practice, no source. */
  tilt: 3,
  regulatingSpeed: 30,
  /** Best for rounding. Source: Hashimoto, Processes 13 (2025) 1103, after Miyashita. */
  centreHeightAngle: 7,
  /** Of the work blade, degrees; and the greatest height of the work, mm. Common practice, no source. */
  bladeAngle: 30,
  mostHeight: 13,
  /** A pass, on diameter, mm: 0.02 to 0.05 rough, 0.005 to 0.01 finish. Common practice, no source. */
  infeed: { rough: { least: 0.02, most: 0.05, usual: 0.03 }, finish: { least: 0.005, most: 0.01, usual: 0.01 } },
  /** Out of round, µm, and Ra, µm, that it leaves. Common practice, no source. */
  leaves: { roundness: [1, 2], roughness: [0.2, 0.4] },
  practice: 'common practice, no source',
} as const

/** Centreless grinding of pins, through feed. */
const dr: Input<'mm'> = { meaning: 'diameter of the regulating wheel', unit: 'mm', over: 0, upTo: 600 }
const nr: Input<'rpm'> = { meaning: 'speed of the regulating wheel', unit: 'rpm', over: 0, upTo: 500 }
const a: Input<'deg'> = { meaning: 'tilt of the regulating wheel', unit: 'deg', from: 0, upTo: 10 }
const dw: Input<'mm'> = { meaning: 'diameter of the work', unit: 'mm', over: 0, upTo: 200 }
const ds: Input<'mm'> = { meaning: 'diameter of the grinding wheel', unit: 'mm', over: 0, upTo: 1000 }

export const throughFeed: Formula<{ dr: 'mm'; nr: 'rpm'; a: 'deg' }, 'mm/min'> = formula({
  symbol: 'vf',
  meaning: 'through feed',
  unit: 'mm/min',
  expression: 'pi * dr * nr * sin(a * pi / 180)',
  inputs: { dr, nr, a },
  source: 'Hashimoto, Processes 13 (2025) 1103, and textbooks',
  example: { given: { dr: 300, nr: 30, a: 3 }, gives: 1480 },
  value: ({ dr, nr, a }) => Math.PI * dr * nr * Math.sin((a * Math.PI) / 180),
})

/** Passes through the wheels; the infeed and the stock are both on diameter. */
export const centrelessPasses: Formula<{ z: 'mm'; i: 'mm' }, ''> = formula({
  symbol: 'N',
  meaning: 'passes through the wheels',
  unit: '',
  expression: 'ceil(z / i - 10^-9)',
  inputs: {
    z: { meaning: 'stock on diameter', unit: 'mm', from: 0, upTo: 10 },
    i: { meaning: 'infeed of a pass, on diameter', unit: 'mm', over: 0, upTo: 1 },
  },
  source: 'derived: geometry',
  example: { given: { z: 0.11, i: 0.03 }, gives: 4 },
  value: ({ z, i }) => Math.ceil(z / i - 10 ** -9),
})

export const centrelessWorkSpeed: Formula<{ dr: 'mm'; nr: 'rpm'; a: 'deg' }, 'm/min'> = formula({
  symbol: 'vw',
  meaning: 'work speed',
  unit: 'm/min',
  expression: 'pi * dr * nr * cos(a * pi / 180) / 1000',
  inputs: { dr, nr, a },
  source: 'derived: kinematics',
  example: { given: { dr: 300, nr: 30, a: 3 }, gives: 28.24 },
  value: ({ dr, nr, a }) => (Math.PI * dr * nr * Math.cos((a * Math.PI) / 180)) / 1000,
})

export const pinsPerMinute: Formula<{ vf: 'mm/min'; L: 'mm' }, '1/min'> = formula({
  symbol: 'q',
  meaning: 'pins a minute, a tenth lost between them',
  unit: '1/min',
  expression: '0.9 * vf / L',
  inputs: {
    vf: { meaning: 'through feed', unit: 'mm/min', over: 0, upTo: 20_000 },
    L: { meaning: 'length of a pin', unit: 'mm', over: 0, upTo: 500 },
  },
  source: 'common practice, no source',
  example: { given: { vf: 1480, L: 50 }, gives: 26.64 },
  value: ({ vf, L }) => (0.9 * vf) / L,
})

/** About 7° rounds best; odd lobes stay when the work is set low, even ones and chatter come when it is high. */
export const centreHeight: Formula<{ gamma: 'deg'; ds: 'mm'; dr: 'mm'; dw: 'mm' }, 'mm'> = formula({
  symbol: 'h',
  meaning: "height of the work's centre above the wheels' centres",
  unit: 'mm',
  expression: 'gamma * pi / 180 / (2 * (1 / (ds + dw) + 1 / (dr + dw)))',
  inputs: { gamma: { meaning: 'centre-height angle', unit: 'deg', from: 0, upTo: 15 }, ds, dr, dw },
  source: 'Hashimoto, Processes 13 (2025) 1103, for the angle; derived: geometry, small angles',
  example: { given: { gamma: 7, ds: 500, dr: 300, dw: 16 }, gives: 11.97 },
  value: ({ gamma, ds, dr, dw }) => (gamma * Math.PI) / 180 / (2 * (1 / (ds + dw) + 1 / (dr + dw))),
})

export const centreHeightAngle: Formula<{ h: 'mm'; ds: 'mm'; dr: 'mm'; dw: 'mm' }, 'deg'> = formula({
  symbol: 'gamma',
  meaning: 'centre-height angle',
  unit: 'deg',
  expression: '(asin(2 * h / (ds + dw)) + asin(2 * h / (dr + dw))) * 180 / pi',
  inputs: {
    h: { meaning: "height of the work's centre above the wheels' centres", unit: 'mm', from: 0, upTo: 25 },
    ds: { ...ds, from: 50 },
    dr: { ...dr, from: 50 },
    dw,
  },
  source: 'derived: geometry',
  example: { given: { h: 8, ds: 500, dr: 300, dw: 16 }, gives: 4.679 },
  value: ({ h, ds, dr, dw }) => ((Math.asin((2 * h) / (ds + dw)) + Math.asin((2 * h) / (dr + dw))) * 180) / Math.PI,
})
